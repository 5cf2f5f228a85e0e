export * from './boltClass.js';
export * from './boltFriction.js';
export * from './boreFit.js';
export * from './flangeBolts.js';
export * from './flangeFit.js';
