import type { Dimension, Value } from '@tailshaft/mechanics';
import { type RequirableWords, requirable } from '@tailshaft/vocabulary';
import type { LineAnalysis } from '../../../analysis/line.js';
import type { Missing } from '../../../judge/verdict.js';

/** What a quantity comes to on one line; or what is missing for it, or why no method applies. */
export interface Evaluated {
  readonly value: Value | undefined;
  readonly missing: readonly Missing[];
  readonly refusal?: string;
  /** How it was found, where that weakens it. */
  readonly note?: string;
}

/** A derived quantity that a requirement can be about: its row, and how it is worked out. */
export interface NamedQuantity {
  /** As it stands behind `require`. */
  readonly name: RequirableWords;
  readonly example: string;
  readonly dimensions: readonly Dimension[];
  readonly conditions: readonly string[];
  /** Of each line by itself; of the vessel, the least of its lines; or of all lines together. */
  readonly over: 'line' | 'vessel' | 'sum';
  /** Which end is usually wanted, for a ranking that does not say. */
  readonly better: 'more' | 'less';
  readonly of: (analysis: LineAnalysis, condition: string | undefined, dimension: Dimension) => Evaluated;
}

/** The quantity of this row. */
export function named(
  name: RequirableWords,
  how: Pick<NamedQuantity, 'over' | 'better' | 'of'>,
): NamedQuantity {
  const { example, conditions, ranges } = requirable(name);
  return { name, example, conditions, dimensions: Object.keys(ranges) as Dimension[], ...how };
}
