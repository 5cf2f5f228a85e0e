export * from './input.js';
export * from './page.js';
export * from './panel/index.js';
export { SCREENING } from './sections/cautions.js';
export * from './style.js';
