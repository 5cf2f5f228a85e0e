import type { Dimension, Origin, Value } from '@tailshaft/mechanics';
import type { Engine, Motor } from './engine.js';
import type { Fact, Quantity, Side } from './fact.js';
import type { Gear, Transfer } from './gear.js';
import type { HullCriteria, HullForm } from './hull.js';
import type { Part } from './part.js';
import type { PropellerCriteria } from './propeller.js';
import type { Coupling, Propeller, Shaft } from './shafting.js';
import type { StrengthCriteria } from './strength.js';
import type { Trial } from './trial.js';

/** One engine or motor to one propeller. */
export interface ShaftLine {
  readonly name: string;
  /** `proposed.Port`. */
  readonly path: string;
  readonly arrangement: string;
  readonly origin: Origin;
  readonly nameOrigin: Origin;
  readonly side?: Fact<Side>;
  /** Name of the line it mirrors. */
  readonly mirrors?: string;
  readonly engine?: Engine;
  readonly motor?: Motor;
  readonly gear?: Gear;
  readonly couplings: readonly Coupling[];
  readonly transfers: readonly Transfer[];
  readonly shafts: readonly Shaft[];
  readonly propeller?: Propeller;
  /** All parts in the order that power passes them. */
  readonly chain: readonly Part[];
  /** The same line in the arrangement that this one revises. */
  readonly before?: ShaftLine;
}

export interface Arrangement {
  readonly name: string;
  readonly title?: string;
  readonly path: string;
  readonly origin: Origin;
  readonly nameOrigin: Origin;
  readonly revises?: string;
  readonly before?: Arrangement;
  readonly lines: readonly ShaftLine[];
  /** `reason "..."` given for one-sided, inward-turning or same-hand choices. */
  readonly reasons: readonly Reason[];
}

export interface Reason {
  readonly about: 'same hand' | 'inward turning' | 'unequal ratios';
  readonly text: string;
  readonly origin: Origin;
}

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
  readonly formula: 'small-craft' | 'class';
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

/** `assume gear efficiency 97 % because "..."`. */
export interface Assumption {
  readonly about: string;
  readonly origin: Origin;
  readonly quantity?: Quantity;
  readonly because?: string;
}

/** Requirement as written, with the parts the checks use. */
export interface Requirement {
  readonly origin: Origin;
  readonly written: string;
  /** What it is about: `speed`, `trolling speed`, `propellers turn`, ... */
  readonly about: string;
  readonly bound?: 'at least' | 'at most' | 'is';
  readonly quantity?: Quantity;
  readonly word?: string;
  /** `at idle ahead`, `at full power`. */
  readonly condition?: string;
  readonly note?: string;
}

export interface Acceptance {
  readonly origin: Origin;
  readonly rule: string;
  readonly on: string;
  readonly because?: string;
  readonly by?: string;
  readonly dated?: string;
  readonly until?: string;
}

export interface Revision {
  readonly origin: Origin;
  readonly name: string;
  readonly dated?: string;
  readonly text?: string;
}

export interface Certificate {
  readonly origin: Origin;
  readonly power?: Quantity<'power'>;
  readonly limitedBy?: Fact<string>;
}

/** A quantity whose unit cannot be relied on, as the reader of the text met it. */
export interface UnitConcern {
  readonly kind: 'no unit' | 'ambiguous unit' | 'wrong dimension' | 'unknown unit';
  readonly origin: Origin;
  readonly property: string;
  readonly dimension: Dimension;
  readonly written: string;
  readonly number: number;
  readonly unit?: string;
  /** Replacement texts with what each would mean: `{ text: '300 PS', means: '220.6 kW' }`. */
  readonly choices: readonly { readonly text: string; readonly means: string }[];
}

/** Something the catalogue of a part declares more than once or against itself is reported by rules on entries. */
export interface Vessel {
  readonly name: string;
  readonly title?: string;
  readonly doc?: string;
  readonly origin: Origin;
  readonly nameOrigin: Origin;
  readonly duty?: Duty;
  readonly hull?: Hull;
  readonly certificate?: Certificate;
  readonly arrangements: readonly Arrangement[];
  readonly criteria?: Criteria;
  readonly assumptions: readonly Assumption[];
  readonly requirements: readonly Requirement[];
  readonly acceptances: readonly Acceptance[];
  readonly revisions: readonly Revision[];
  /** Trial sheets, in the order of the text; none where the spec has none. */
  readonly trials?: readonly Trial[];
  readonly unitConcerns: readonly UnitConcern[];
  /** Every quantity as written in the vessel's own text, for checks on units. */
  readonly quantities: readonly {
    readonly property: string;
    readonly value: Value;
    readonly origin: Origin;
  }[];
  /** Every `unknown`, for the sheet. */
  readonly openQuestions: readonly { readonly what: string; readonly origin: Origin }[];
}
