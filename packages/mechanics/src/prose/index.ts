export * from './english.js';
export * from './minus.js';
export * from './percent.js';
