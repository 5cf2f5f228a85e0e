import type { SeriesName, ToleranceClass } from '@tailshaft/mechanics';
import type { Fact, Quantity } from './fact.js';

export type PropellerMetal =
  | 'bronze'
  | 'manganese bronze'
  | 'nickel-aluminium bronze'
  | 'stainless steel'
  | 'aluminium'
  | 'composite';

/** What a propeller says of its blades, its bore and how it was made, beside hand, blades, diameter and pitch. */
export interface PropellerMake {
  /** Published family of blades that it is taken to belong to. */
  readonly series?: Fact<SeriesName>;
  /** Developed blade area over disc area, where the maker counts that one instead of the expanded area. */
  readonly developedAreaRatio?: Quantity<'ratio'>;
  /** What is stamped on the hub; repairs, damage and new pitch are not. */
  readonly stampedDiameter?: readonly Quantity<'length'>[];
  readonly stampedPitch?: readonly Quantity<'length'>[];
  readonly cup?: Fact<'none' | 'light' | 'medium' | 'heavy'>;
  /** Pitch that loads as the blade with its cup does, from whoever cupped it. */
  readonly effectivePitch?: Quantity<'length'>;
  readonly toleranceClass?: Fact<ToleranceClass>;
  readonly material?: Fact<PropellerMetal>;
  /** Change of diameter per length. */
  readonly boreTaper?: Quantity<'ratio'>;
  readonly boreLargeEnd?: Quantity<'length'>;
  readonly keywayWidth?: Quantity<'length'>;
  readonly hubLength?: Quantity<'length'>;
}

/** How a propeller stands in the vessel. */
export interface PropellerPlace {
  /** Shaft axis to hull, in the plane of the propeller. */
  readonly axisToHull?: Quantity<'length'>;
  readonly tipClearance?: Quantity<'length'>;
  readonly rudderClearance?: Quantity<'length'>;
  /** Blade to the strut, bracket, bossing or skeg ahead of it. */
  readonly strutClearance?: Quantity<'length'>;
  /** Shaft axis below the surface, at the propeller. */
  readonly shaftDepth?: Quantity<'length'>;
  /** Section of the nozzle that it turns in. */
  readonly nozzle?: Fact<NozzleSection>;
  /** Blade tip to nozzle, where it is least. */
  readonly nozzleGap?: Quantity<'length'>;
}

export const NOZZLE_SECTIONS = ['none', 'N19A', 'N37', 'other'] as const;
export type NozzleSection = (typeof NOZZLE_SECTIONS)[number];

export const BLADE_AREA_METHODS = [
  'Keller',
  'Burrill 2.5 %',
  'Burrill 5 %',
  'Burrill 10 %',
  'flat-face 10 %',
  'handbook loading',
] as const;
export type BladeAreaMethod = (typeof BLADE_AREA_METHODS)[number];

/** What the author chose to judge the propeller by. */
export interface PropellerCriteria {
  readonly tipClearance?: Quantity<'ratio'>;
  readonly rudderClearance?: Quantity<'ratio'>;
  readonly strutClearance?: Quantity<'ratio'>;
  readonly nozzleGap?: Quantity<'ratio'>;
  readonly bladeAreaBy?: Fact<BladeAreaMethod>;
  readonly propellerDemandLeast?: Quantity<'ratio'>;
  readonly propellerDemandMost?: Quantity<'ratio'>;
  readonly pitchDifference?: Quantity<'ratio'>;
}
