export * from './input.js';
export * from './page.js';
export * from './style.js';
