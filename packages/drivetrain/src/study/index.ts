export { askedOf, unfolded } from './asked.js';
export { withLoadLines } from './load-lines.js';
export { OWN_RANKINGS, rankingProblem } from './rankable.js';
export * from './result.js';
export {
  type Found,
  limitOf,
  type Progress,
  resultOf,
  type SearchOptions,
  search,
  searched,
} from './search.js';
export { failedByAll, withSetAside } from './set-aside.js';
export * from './words.js';
