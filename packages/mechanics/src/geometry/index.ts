export * from './angle-stack.js';
export * from './installation-angles.js';
export * from './interface-difference.js';
export * from './length-stack.js';
export * from './tip-clearance.js';
export * from './tube-bore.js';
export * from './universal-joint.js';
export * from './weight-change.js';
