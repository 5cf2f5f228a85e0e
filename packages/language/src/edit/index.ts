export { textEditsFor } from './modelEdits.js';
export { problemEdits } from './problemEdits.js';
export { applyEdits, type Replacement, type TextEdit } from './textEdit.js';
