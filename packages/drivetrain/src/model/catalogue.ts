import type { Origin } from '@tailshaft/mechanics';
import type { EngineFacts, MotorFacts } from './engine.js';
import type { GearFacts, TransferFacts } from './gear.js';
import type { CouplingFacts, PropellerFacts, ShaftMaterial } from './shafting.js';

export interface CatalogueEntry<F> {
  readonly name: string;
  readonly title?: string;
  readonly doc?: string | undefined;
  readonly origin: Origin;
  readonly nameOrigin: Origin;
  readonly facts: F;
}

/** Everything a vessel's text can see: its own entries and those it imports. */
export interface Catalogue {
  readonly engines: readonly CatalogueEntry<EngineFacts>[];
  readonly motors: readonly CatalogueEntry<MotorFacts>[];
  readonly gears: readonly CatalogueEntry<GearFacts>[];
  readonly transfers: readonly CatalogueEntry<TransferFacts>[];
  readonly couplings: readonly CatalogueEntry<CouplingFacts>[];
  readonly materials: readonly ShaftMaterial[];
  readonly propellers: readonly CatalogueEntry<PropellerFacts>[];
}

export const EMPTY_CATALOGUE: Catalogue = {
  engines: [],
  motors: [],
  gears: [],
  transfers: [],
  couplings: [],
  materials: [],
  propellers: [],
};
