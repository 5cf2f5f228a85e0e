import type { Origin } from '@tailshaft/mechanics';
import type { Fact, Quantity } from './fact.js';

/** One thing that a study varies: `propeller diameter 26 in .. 30 in by 0.5 in`. */
export interface Variation {
  /** What it is of: a part of the lines, or the hull. */
  readonly of: string;
  /** Words of the property; absent where the part itself varies, by its name in the catalogue. */
  readonly property?: string;
  /** The values as a line would write them, in order; `any` where the catalogue or the form of the property gives them. */
  readonly values: readonly string[] | 'any';
}

/** What candidates are ranked by: `speed at full power`. */
export interface Ranking {
  readonly quantity: string;
  readonly condition?: string;
  /** Where the author says which end is the best one. */
  readonly order?: RankOrder;
}

export type RankOrder = 'highest first' | 'lowest first';

/** A search for the best of many candidates for one arrangement, each judged as if it were written there. */
export interface Study {
  readonly origin: Origin;
  readonly name: string;
  /** Name of the arrangement whose parts are varied. */
  readonly studied?: string;
  readonly vary: readonly Fact<Variation>[];
  /** Rules that must hold beside those whose failure is an error. */
  readonly hold: readonly Fact<string>[];
  readonly rank: readonly Fact<Ranking>[];
  /** How many of the best are shown. */
  readonly show?: Quantity<'number'>;
}
