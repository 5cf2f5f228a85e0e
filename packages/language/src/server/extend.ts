/*
 * For hosts of the server that answer requests of their own beside the protocol: the editor extension draws the sheet
 * in its server process.
 */
export { onDocument } from './handlers.js';
export { linesOf } from './lines.js';
export {
  OUTLINE,
  type Outline,
  type OutlineCheck,
  type OutlineNode,
  VESSELS,
} from './outline.js';
export { locationOf, rangeOf } from './places.js';
export type { TailshaftServices } from './services.js';
export type { CandidateChoice } from './study-answers.js';
export { asked } from './when-asked.js';
export { wholeWorkspace } from './workspace/whole-workspace.js';
