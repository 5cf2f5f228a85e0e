import type { LineAnalysis } from '../analysis/line.js';
import type { Catalogue, CatalogueEntry } from '../model/catalogue.js';
import type { EngineFacts } from '../model/engine.js';
import type { GearFacts } from '../model/gear.js';
import type { Arrangement, ShaftLine, UnitConcern, Vessel } from '../model/vessel.js';

/** What every check may look at. */
export interface Context {
  readonly vessel: Vessel;
  readonly catalogue: Catalogue;
  /** ISO date that ages and expiries are judged on. */
  readonly today: string;
  readonly analysisOf: (line: ShaftLine) => LineAnalysis;
}

export interface ArrangementContext extends Context {
  readonly arrangement: Arrangement;
}

export interface LineContext extends ArrangementContext {
  readonly line: ShaftLine;
  readonly analysis: LineAnalysis;
}

/** One catalogue entry on its own, whatever uses it. */
export interface EntryContext {
  readonly today: string;
  readonly entry:
    | { readonly kind: 'engine'; readonly entry: CatalogueEntry<EngineFacts> }
    | { readonly kind: 'gear'; readonly entry: CatalogueEntry<GearFacts> }
    | {
        readonly kind: 'motor' | 'transfer' | 'coupling' | 'shaft material' | 'propeller';
        readonly entry: Omit<CatalogueEntry<unknown>, 'facts'> & {
          readonly facts: {
            readonly source?: import('../model/fact.js').Fact<import('../model/fact.js').SourceNote>;
          };
        };
      };
  readonly unitConcerns: readonly UnitConcern[];
}
