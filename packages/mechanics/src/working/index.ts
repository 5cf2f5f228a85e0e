export { filledFormula } from './filled.js';
export { workingLine, workingMarkdown, workingText } from './render.js';
export { type WorkingStep, workingSteps } from './steps.js';
