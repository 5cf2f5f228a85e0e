import { uncoveredIn } from '../analysis/uncovered.js';
import type { Vessel } from '../model/vessel.js';
import type { Resting } from './settle.js';

/** Whether facts contradict each other: then only all verdicts together tell what fails. */
export function isDisputed(said: readonly Resting[]): boolean {
  return said.some(({ verdict }) => verdict.disputes !== undefined || verdict.outweighs !== undefined);
}

/** What the checks do not cover fails by none of them. */
export function isUncovered({ arrangements }: Vessel): boolean {
  return arrangements.some(({ lines }) => lines.some(line => line.modes || uncoveredIn(line).length > 0));
}
