import type { Judged } from '../report/judged.js';
import type { Tally } from '../report/tally.js';

/** What a whole run came to. */
export interface Run {
  readonly tally: Tally;
  readonly today: string;
  /** What could not be read, in a sentence each. */
  readonly failures: readonly string[];
}

/**
 * One form of the answer of check: what it says of each spec is plain data, which another thread may make, and the text
 * follows from all of them, taken in their order.
 */
export interface Form<P = unknown> {
  pieceOf(judged: Judged): P;
  take(piece: P): void;
  text(run: Run): string;
  /** Set where the specs are still looked into at the end. */
  readonly keepsSpecs?: true;
}
