import type { Judged } from '../report/judged.js';
import type { Tally } from '../report/tally.js';

/** What a whole run came to. */
export interface Run {
  readonly tally: Tally;
  readonly today: string;
  /** What could not be read, in a sentence each. */
  readonly failures: readonly string[];
}

/** One form of the answer of check: specs are added one by one, and the text follows from all of them. */
export interface Form {
  add(judged: Judged): void;
  text(run: Run): string;
  /** Set where the specs are still looked into at the end. */
  readonly keepsSpecs?: true;
}
