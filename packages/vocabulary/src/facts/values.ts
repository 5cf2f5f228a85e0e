import type { Value } from '@tailshaft/mechanics';
import type { LAYOUTS, MESH_KINDS, OUTPUT_SENSES, PILOT_KINDS, SEEN, SHAFT_FORMULAS } from '../words.js';

/*
 * Values that are made of several words or numbers.
 */

/** Output against input: both seen from aft, or each seen at its own end. */
export interface OutputSense {
  readonly word: (typeof OUTPUT_SENSES)[number];
  readonly seen?: (typeof SEEN)[number];
}

/** `mesh A 23 with B 47` external, or `internal`; `on C` where the member C carries a planet of the mesh. */
export interface Mesh {
  readonly driver: string;
  readonly driverTeeth: number;
  readonly driven: string;
  readonly drivenTeeth: number;
  /** Of a bevel planet, the driver touches its near or its far side. */
  readonly kind: (typeof MESH_KINDS)[number][1];
  readonly carrier?: string;
}

/** Two members that turn as one. */
export interface Lock {
  readonly one: string;
  readonly other: string;
}

/** The locating spigot or recess of a flange. */
export interface Pilot {
  readonly diameter: Value<'length'>;
  readonly kind?: (typeof PILOT_KINDS)[number];
}

export interface GearLayout {
  readonly word: (typeof LAYOUTS)[number];
  readonly downAngle?: Value<'angle'>;
}

/** Which formula judges the shaft, and the factor that the author chose for it. */
export interface ShaftCriterion {
  readonly formula: (typeof SHAFT_FORMULAS)[number][1];
  readonly factor?: Value<'number'>;
  /** Why, in the author's words. */
  readonly reason?: string;
}

/** One thing that a study varies: `propeller diameter 26 in .. 30 in by 0.5 in`. */
export interface Variation {
  /** What it is of: a part of the lines, or the hull. */
  readonly of: string;
  /** Words of the property; absent where the part itself varies, by its name in the catalogue. */
  readonly property?: string;
  /** The values as a line would write them, in order; `any` where the catalogue or the form of the property gives them. */
  readonly values: readonly string[] | 'any';
}

/** What candidates are ranked by: `speed at full power`. */
export interface Ranking {
  readonly quantity: string;
  readonly condition?: string;
  /** Where the author says which end is the best one. */
  readonly order?: RankOrder;
}

export type RankOrder = 'highest first' | 'lowest first';
