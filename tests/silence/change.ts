import { compareAdded } from './compare/added.js';
import { compareDoubted } from './compare/doubted.js';
import { comparePushed } from './compare/pushed.js';
import { compareRemoved } from './compare/removed.js';
import { compareSame } from './compare/same.js';
import type { Judged } from './rejudge.js';

/** The ways of saying less, the same, or something doubtful, by the letters of the verdict model. */
export type Letter = 'a' | 'b' | 'c' | 'd' | 'e' | 'f' | 'g' | 'h' | 'i' | 'j';

/** One other text of a spec. */
export interface Change {
  readonly letter: Letter;
  /** What was done, so that it can be found again: `without peak torque of engine Kittiwake-9`. */
  readonly what: string;
  /** The property or kind of thing that it is about: cases of one rule and one such are one entry of the known list. */
  readonly about: string;
  readonly text: string;
  /** Subject of a verdict under its new name. */
  readonly renamed?: (subject: string) => string;
  /** Words of the properties that were taken away. */
  readonly gone?: readonly string[];
  /** Texts with only one half of the change: what they lose already is told of them. */
  readonly halves?: readonly string[];
  /** Where the pushed number stands. */
  readonly at?: number;
  /** It as written: a verdict that says it stands on it. */
  readonly number?: string;
  /** An arrangement that it puts in. */
  readonly adds?: string;
  /** What that one repeats unchanged: nothing fails in the one that does not fail in the other. */
  readonly repeats?: string;
  /** Rules that the change is about, which may say something else. */
  readonly touches?: readonly string[];
}

/** A verdict that got better, or was lost, and should not have. */
export interface Lost {
  readonly rule: string;
  readonly subject: string;
  /** `fails became holds`, `fails became silence`, ... */
  readonly how: string;
}

/** What a change of this letter must not do, and did. Undefined where the other text is none that can be judged. */
export function lostBy(change: Change, before: Judged, after: Judged): readonly Lost[] | undefined {
  switch (change.letter) {
    case 'a':
      return compareRemoved(change, before, after);
    case 'e':
      return compareDoubted(change, before, after);
    case 'i':
      return compareAdded(change, before, after);
    case 'j':
      return comparePushed(change, before, after);
    default:
      return compareSame(change, before, after);
  }
}
