export { filledFormula, filledResult } from './filled.js';
export { resultOf, workingLine, workingMarkdown, workingText } from './render.js';
export { type WorkingStep, workingSteps } from './steps.js';
