export * from './change.js';
export * from './compare.js';
export * from './entries.js';
export { factChangeWords } from './facts.js';
export * from './markdown.js';
export * from './sections.js';
export type { Judged } from './side.js';
export { outcomeWords } from './verdict-moves.js';
