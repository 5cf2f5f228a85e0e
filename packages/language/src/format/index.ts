export { formatEdits, formatText } from './format-text.js';
export { TailshaftFormatter } from './provider.js';
