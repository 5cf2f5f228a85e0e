export { type Consequence, consequenceOf } from './consequence.js';
export { fixAll } from './fix-all.js';
export type { Offer, TextOf } from './offer.js';
export { cures, curingAll, type Judge, onceEach, questions } from './quick-fixes.js';
export { touchesShiftCable } from './shift-cable.js';
