import type { Catalogue, Verdict, Vessel } from '@tailshaft/drivetrain';
import type { EntryReading } from '../reading/document.js';
import type { Problem } from '../reading/problem.js';
import type { VesselReading } from '../reading/vessel.js';

/** A vessel of a file with everything judged of it. */
export interface JudgedVessel {
  readonly reading: VesselReading;
  readonly vessel: Vessel;
  readonly catalogue: Catalogue;
  /** The day it was judged on. */
  readonly today: string;
  readonly verdicts: readonly Verdict[];
}

/** A catalogue entry of a file with what its own facts say. */
export interface JudgedEntry {
  readonly reading: EntryReading;
  readonly verdicts: readonly Verdict[];
}

/** Everything that can be said of one file. */
export interface FileCheck {
  readonly uri: string;
  readonly problems: readonly Problem[];
  readonly vessels: readonly JudgedVessel[];
  readonly entries: readonly JudgedEntry[];
}
