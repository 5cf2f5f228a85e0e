export * from './air.js';
export * from './ambient-adjustment.js';
export * from './motor-envelope.js';
export * from './ratio-difference.js';
export * from './take-off.js';
export * from './through-gear.js';
export * from './together.js';
export * from './torque-power.js';
