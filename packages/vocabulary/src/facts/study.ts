import type { Origin } from '@tailshaft/mechanics';
import type { FactsOf } from '../kinds.js';
import type { STUDY } from '../study.js';
import type { Fact } from './fact.js';
import type { Ranking, Variation } from './values.js';

/** A search for the best of many candidates for one arrangement, each judged as if it were written there. */
export interface Study extends FactsOf<typeof STUDY> {
  readonly origin: Origin;
  readonly name: string;
  /** Name of the arrangement whose parts are varied. */
  readonly studied?: string;
  readonly vary: readonly Fact<Variation>[];
  /** Rules that must hold beside those whose failure is an error. */
  readonly hold: readonly Fact<string>[];
  readonly rank: readonly Fact<Ranking>[];
}
