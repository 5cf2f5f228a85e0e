export * from './bolt-class.js';
export * from './bolt-friction.js';
export * from './bore-fit.js';
export * from './flange-bolts.js';
export * from './flange-fit.js';
