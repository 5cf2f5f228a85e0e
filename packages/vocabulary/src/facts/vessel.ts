import type { Origin, Value } from '@tailshaft/mechanics';
import type { SHAFT_FORMULAS } from '../words.js';
import type { Fact, Quantity } from './fact.js';
import type { HullCriteria, HullForm } from './hull.js';
import type { PropellerCriteria } from './propeller.js';
import type { StrengthCriteria } from './strength.js';

export interface Duty {
  readonly origin: Origin;
  readonly class?: Fact<string>;
  /** Hours a year. */
  readonly hours?: Quantity<'number'>;
  readonly passengers?: Fact<'none' | 'carried'>;
  /** Engines stopped under way: sailing, towing, one engine alone. */
  readonly underSail?: Fact<'yes' | 'no'>;
}

export interface Hull extends HullForm {
  readonly origin: Origin;
  readonly form?: Fact<string>;
  readonly waterlineLength?: Quantity<'length'>;
  readonly displacement?: Quantity<'mass'>;
  readonly beam?: Quantity<'length'>;
  readonly draft?: Quantity<'length'>;
  /** Trim by the stern under way. */
  readonly runningTrim?: Quantity<'angle'>;
  readonly lightship?: Quantity<'mass'>;
  /** Along the vessel, from the reference of all positions, forward positive. */
  readonly centreOfGravity?: Quantity<'length'>;
}

/** Which formula judges the shaft, and the factor that the author chose for it. */
export interface ShaftCriterion {
  readonly formula: (typeof SHAFT_FORMULAS)[number][1];
  readonly factor?: Value<'number'>;
  /** Why, in the author's words. */
  readonly reason?: string;
}

/** A named published criterion or limit that the author chose; absent ones have defaults. */
export interface Criteria extends PropellerCriteria, HullCriteria, StrengthCriteria {
  readonly origin: Origin;
  readonly gearTorqueMargin?: Quantity<'ratio'>;
  readonly clutchServiceFactor?: Quantity<'ratio'>;
  readonly tipSpeed?: Quantity<'speed'>;
  readonly ratioDifference?: Quantity<'ratio'>;
  readonly sourceAge?: Quantity<'time'>;
  readonly trialDifference?: Quantity<'ratio'>;
  readonly shaftDiameter?: readonly Fact<ShaftCriterion>[];
  readonly bearingSpanMargin?: Quantity<'ratio'>;
  readonly overhang?: Quantity<'ratio'>;
  readonly shaftAngle?: Quantity<'angle'>;
  readonly angleDifference?: Quantity<'angle'>;
  readonly lengthDifference?: Quantity<'length'>;
  readonly weightChange?: Quantity<'ratio'>;
  readonly balanceChange?: Quantity<'ratio'>;
  /** Rating life wanted of the bearing that takes the thrust. */
  readonly thrustBearingLife?: Quantity<'time'>;
}

export interface Certificate {
  readonly origin: Origin;
  readonly power?: Quantity<'power'>;
  readonly limitedBy?: Fact<string>;
}
