export * from './clearance.js';
export * from './overhang.js';
export * from './rolling-life.js';
export * from './span-guide.js';
export * from './stepped-span.js';
export * from './stern-bearing.js';
export * from './thrust-collar.js';
export * from './whirling-span.js';
