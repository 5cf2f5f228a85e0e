export * from './input.js';
export * from './page.js';
export * from './panel/index.js';
export * from './style.js';
