export * from './boreFit.js';
export * from './flangeBolts.js';
export * from './flangeFit.js';
export * from './torqueRating.js';
