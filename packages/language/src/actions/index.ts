export { type Consequence, consequenceOf } from './consequence.js';
export { fixAll } from './fixAll.js';
export type { Offer, TextOf } from './offer.js';
export { cures, type Judge, questions } from './quickFixes.js';
export { touchesShiftCable } from './shiftCable.js';
