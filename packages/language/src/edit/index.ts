export { textEditsFor } from './model-edits.js';
export { problemEdits } from './problem-edits.js';
export { applyEdits, type Replacement, type TextEdit } from './text-edit.js';
