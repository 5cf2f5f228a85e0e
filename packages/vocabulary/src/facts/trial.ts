import type { Origin } from '@tailshaft/mechanics';
import type { FactsOf } from '../kinds.js';
import type { TRIAL, TRIAL_RUN } from '../trial.js';
import type { DOCK_STEP, DRILL } from '../trial-steps.js';
import type { DRILLS } from '../words.js';
import type { Held } from './fact.js';

/** What was read on one shaft line at one point of a trial. */
export interface TrialRun extends FactsOf<typeof TRIAL_RUN> {
  readonly origin: Origin;
  /** Name of the shaft line. */
  readonly line: string;
}

/** One station of one line, tried at the dock at low power. */
export interface DockStep extends FactsOf<typeof DOCK_STEP> {
  readonly origin: Origin;
  /** Name of the shaft line. */
  readonly line: string;
}

/** Something that is run on purpose, so that nobody sees it first in need. */
export interface Drill extends FactsOf<typeof DRILL> {
  readonly origin: Origin;
  readonly what: (typeof DRILLS)[number];
}

export type TrialPoint = Held<TrialRun['at']>;

/** One trial sheet: the state it was run in, and its readings. */
export interface Trial extends FactsOf<typeof TRIAL> {
  readonly origin: Origin;
  readonly name: string;
  /** Name of the arrangement that was tried. */
  readonly of?: string;
  /** ISO date. */
  readonly dated?: string;
  readonly runs: readonly TrialRun[];
  readonly docks?: readonly DockStep[];
  readonly drills?: readonly Drill[];
}
