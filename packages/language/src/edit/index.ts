export { textEditsFor, textEditsForSpelled } from './model-edits.js';
export { problemEdits } from './problem-edits.js';
export type { SpelledEdit } from './spelled.js';
export { applyEdits, type Replacement, type TextEdit } from './text-edit.js';
