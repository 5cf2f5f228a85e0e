import type { Verdict } from '@tailshaft/drivetrain';
import type { Place } from '../reading/place.js';
import type { Problem } from '../reading/problem.js';
import type { JudgedVessel } from './project.js';

/** One thing to show at one place of one file: a problem of the text, or a verdict of a rule. */
export interface Finding {
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'information' | 'hint';
  readonly place: Place;
  readonly message: string;
  readonly related: readonly Related[];
  readonly problem?: Problem;
  readonly verdict?: Verdict;
  readonly vessel?: JudgedVessel;
  /** The fact of a catalogue entry that it is about, with what tells it from others: whatever uses it says the same. */
  readonly entryPlace?: Place;
  readonly entryKey?: string;
  /** Findings of the same cause: told under this one, and not beside it. */
  readonly folded?: readonly Finding[];
}

export interface Related {
  readonly place: Place;
  readonly message: string;
}
