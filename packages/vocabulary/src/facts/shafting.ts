import type { Origin } from '@tailshaft/mechanics';
import type { BEARING, WATER } from '../bearing.js';
import type { FactsOf } from '../kinds.js';
import type { COUPLING, PROPELLER, PROPELLER_PLACE, SHAFT, SHAFT_MATERIAL } from '../shafting.js';
import type { Damageable } from './damage.js';
import type { Fact, Held, SourceNote } from './fact.js';
import type { Part } from './part.js';
import type { BoltedFlange, ShaftKey, ShaftSection } from './strength.js';
import type { Excitation } from './torsion.js';

export interface CouplingFacts extends FactsOf<typeof COUPLING> {
  readonly flange?: BoltedFlange;
}

export interface Coupling extends Part<'coupling'>, CouplingFacts, Damageable {
  readonly source?: Fact<SourceNote>;
}

/** A catalogue grade of shaft bar. */
export interface ShaftMaterial extends FactsOf<typeof SHAFT_MATERIAL> {
  readonly name: string;
  readonly title?: string;
  readonly origin: Origin;
}

export type ShaftMetal = Held<ShaftMaterial['metal']>;

export interface ShaftFacts extends FactsOf<typeof SHAFT>, Damageable {
  /** Lengths of it that have another diameter or bore. */
  readonly sections?: readonly ShaftSection[];
  readonly keys?: readonly ShaftKey[];
  readonly bearings?: readonly Bearing[];
}

export type WaterSupply = (typeof WATER)[number];

/** One support of the shaft. */
export interface Bearing extends FactsOf<typeof BEARING> {
  readonly name: string;
  readonly origin: Origin;
}

export interface Shaft extends Part<'shaft'>, ShaftFacts {
  readonly source?: Fact<SourceNote>;
  readonly grade?: ShaftMaterial;
}

export interface PropellerFacts extends FactsOf<typeof PROPELLER> {
  /** Torques by order of the propeller shaft, at rated power. */
  readonly excitations?: readonly Excitation[];
}

export interface Propeller
  extends Part<'propeller'>,
    PropellerFacts,
    FactsOf<typeof PROPELLER_PLACE>,
    Damageable {
  readonly source?: Fact<SourceNote>;
}
