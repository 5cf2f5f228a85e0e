import type { LineAnalysis } from '../analysis/line.js';
import type { Catalogue, CatalogueEntry } from '../model/catalogue.js';
import type { EngineFacts } from '../model/engine.js';
import type { Fact, SourceNote } from '../model/fact.js';
import type { GearFacts } from '../model/gear.js';
import type { ShaftMaterial } from '../model/shafting.js';
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

/** The quantities of one vessel or catalogue entry as they are written. */
export interface UnitsContext {
  /** Name of the vessel or entry. */
  readonly subject: string;
  readonly concerns: readonly UnitConcern[];
  readonly quantities: Vessel['quantities'];
}

type SourcedFacts = { readonly source?: Fact<SourceNote> };

/** One catalogue entry on its own, whatever uses it. */
export interface EntryContext {
  readonly today: string;
  readonly entry:
    | { readonly kind: 'engine'; readonly entry: CatalogueEntry<EngineFacts> }
    | { readonly kind: 'gear'; readonly entry: CatalogueEntry<GearFacts> }
    | {
        readonly kind: 'shaft material';
        readonly entry: CatalogueEntry<Omit<ShaftMaterial, 'name' | 'origin'>>;
      }
    | {
        readonly kind: 'motor' | 'transfer' | 'coupling' | 'propeller';
        readonly entry: CatalogueEntry<SourcedFacts>;
      };
  readonly unitConcerns: readonly UnitConcern[];
  readonly quantities: Vessel['quantities'];
}
