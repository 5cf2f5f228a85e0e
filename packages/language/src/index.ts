export * from './project/findings.js';
export * from './project/imports.js';
export * from './project/project.js';
export * from './reading/document.js';
export * from './reading/place.js';
export * from './reading/problem.js';
export * from './services/module.js';
export * from './vocabulary/index.js';
