export * from './core/dimension.js';
export * from './core/formula.js';
export * from './core/source.js';
export * from './core/value.js';
export * from './units/index.js';
export * from './working/index.js';
