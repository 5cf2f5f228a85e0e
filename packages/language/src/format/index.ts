export { formatEdits, formatText } from './formatText.js';
export { TailshaftFormatter } from './provider.js';
