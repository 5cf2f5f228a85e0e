export * from './clamp-force.js';
export * from './duty.js';
export * from './friction-data.js';
export * from './holding-torque.js';
