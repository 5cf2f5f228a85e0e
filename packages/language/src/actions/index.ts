export { fixAll } from './fixAll.js';
export type { Offer, TextOf } from './offer.js';
export { quickFixes } from './quickFixes.js';
export { touchesShiftCable } from './shiftCable.js';
