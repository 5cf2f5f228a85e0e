import type { Dimension, Value } from '@tailshaft/mechanics';
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

/** A derived quantity that a requirement can be about. */
export interface NamedQuantity {
  /** As it stands behind `require`. */
  readonly name: string;
  readonly doc: string;
  readonly example: string;
  readonly dimensions: readonly Dimension[];
  /** What may stand behind `at`; the first is meant where nothing does. None: it takes no condition. */
  readonly conditions: readonly string[];
  /** Of each line by itself; of the vessel, the least of its lines; or of all lines together. */
  readonly over: 'line' | 'vessel' | 'sum';
  readonly of: (analysis: LineAnalysis, condition: string | undefined, dimension: Dimension) => Evaluated;
}
