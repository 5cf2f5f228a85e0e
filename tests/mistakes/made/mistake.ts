import type { Spec } from '../spec-model.js';

export type Gravity = 'error' | 'warning' | 'note' | 'open';

/** What the checks have to say of a mistake. */
export interface Told {
  /** Any one of these rules. */
  readonly rules: readonly string[];
  /** At least so grave; `open` is a question. */
  readonly gravity: Gravity;
  /** Parts (or entries, or other blocks) that it may be told at; nothing where the place is not in a part. */
  readonly at?: readonly string[];
}

export interface Mistake {
  readonly number: string;
  /** Which way of making it, where there are several. */
  readonly way?: string;
  /** Only in these kinds of vessel. */
  readonly kinds?: readonly string[];
  /** Only where it is said so: what needs a vessel before, or a part that is kept. */
  readonly forms?: readonly string[];
  /** Makes the mistake; `false` where this vessel has nothing to make it with. */
  make(spec: Spec): unknown;
  readonly told: Told;
}
