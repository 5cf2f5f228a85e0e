import type { Origin } from '@tailshaft/mechanics';
import type { Fact, Hand, Quantity, SourceNote } from './fact.js';
import type { Flange } from './gear.js';
import type { Part } from './part.js';

export interface CouplingFacts {
  readonly source?: Fact<SourceNote>;
  readonly kind?: Fact<'rigid' | 'flexible' | 'damper' | 'joint'>;
  readonly torque?: Quantity<'torque'>;
  readonly mass?: Quantity<'mass'>;
  readonly flange?: Flange;
}

export interface Coupling extends Part<'coupling'>, CouplingFacts {
  readonly source?: Fact<SourceNote>;
}

/** A catalogue grade of shaft bar. */
export interface ShaftMaterial {
  readonly name: string;
  readonly title?: string;
  readonly origin: Origin;
  readonly source?: Fact<SourceNote>;
  readonly torsionalYield?: Quantity<'pressure'>;
  readonly tensileYield?: Quantity<'pressure'>;
  readonly tensileStrength?: Quantity<'pressure'>;
  readonly youngsModulus?: Quantity<'pressure'>;
  readonly shearModulus?: Quantity<'pressure'>;
  readonly density?: Quantity<'density'>;
}

export interface ShaftFacts {
  readonly source?: Fact<SourceNote>;
  readonly material?: Fact<string>;
  readonly diameter?: Quantity<'length'>;
  readonly boreDiameter?: Quantity<'length'>;
  readonly length?: Quantity<'length'>;
}

export interface Shaft extends Part<'shaft'>, ShaftFacts {
  readonly source?: Fact<SourceNote>;
  readonly grade?: ShaftMaterial;
}

export interface PropellerFacts {
  readonly source?: Fact<SourceNote>;
  readonly kind?: Fact<'fixed' | 'folding' | 'feathering' | 'controllable pitch'>;
  readonly hand?: Fact<Hand>;
  /** For propellers that can be assembled for either hand: how it is set. */
  readonly handSetting?: Fact<Hand>;
  readonly blades?: Quantity<'number'>;
  readonly diameter?: Quantity<'length'>;
  readonly pitch?: Quantity<'length'>;
  readonly areaRatio?: Quantity<'ratio'>;
  readonly mass?: Quantity<'mass'>;
  readonly inertia?: Quantity<'moment of inertia'>;
}

export interface Propeller extends Part<'propeller'>, PropellerFacts {
  readonly source?: Fact<SourceNote>;
}
