import type { Origin, Value } from '@tailshaft/mechanics';
import type { LAYOUTS, MESH_KINDS, OUTPUT_SENSES, PILOT_KINDS, SEEN } from '../words.js';
import type { Damageable } from './damage.js';
import type { Bolts, Fact, Point, Quantity, Rotation, SourceNote, Span } from './fact.js';
import type { Part } from './part.js';
import type { RollingThrustBearing } from './torsion.js';

/** Output against input: both seen from aft, or each seen at its own end. */
export interface OutputSense {
  readonly word: (typeof OUTPUT_SENSES)[number];
  readonly seen?: (typeof SEEN)[number];
}

/** One clutch of a gear (or of one of its ratios). */
export interface Clutch {
  readonly name: string;
  readonly origin: Origin;
  readonly output?: Fact<OutputSense>;
  /** May it carry full power ahead for as long as the vessel runs. Absent: not stated. */
  readonly ahead?: Fact<'continuous' | 'never'>;
  /** Its own tooth-count ratio, where it differs from the other clutch. */
  readonly exact?: Quantity<'ratio'>;
  readonly faces?: Quantity<'number'>;
  readonly steelPlates?: Quantity<'number'>;
  readonly frictionPlates?: Quantity<'number'>;
  readonly outerDiameter?: Quantity<'length'>;
  readonly innerDiameter?: Quantity<'length'>;
  readonly pistonOuterDiameter?: Quantity<'length'>;
  readonly pistonInnerDiameter?: Quantity<'length'>;
  readonly springForce?: Quantity<'force'>;
  readonly clampForce?: Quantity<'force'>;
  readonly oilPressure?: Quantity<'pressure'>;
  readonly friction?: Quantity<'ratio'>;
  /** Clutch shaft speed over input speed when the clutch sits behind a mesh; 1 when absent. */
  readonly speedFactor?: Quantity<'ratio'>;
  /** Members of the ratio's train that are held still while it is engaged: a brake, or a ring in the housing. */
  readonly holds?: readonly Fact<string>[];
  /** Members of the ratio's train that it locks together. */
  readonly locks?: readonly Fact<Lock>[];
  readonly train?: Train;
}

/** Capacity for one duty: torque, power per speed, or power at a speed. */
export interface GearRating {
  readonly duty: string;
  /** The same with its place. */
  readonly dutyFact?: Fact<string>;
  readonly origin: Origin;
  readonly powerPerSpeed?: Quantity<'power per speed'>;
  readonly torque?: Quantity<'torque'>;
  readonly power?: Fact<Point<'power', 'rotational speed'>>;
  readonly speeds?: Fact<Span<'rotational speed'>>;
  readonly fuel?: Fact<'petrol' | 'diesel' | 'gas'>;
  readonly direction?: Fact<'ahead' | 'astern'>;
  readonly source?: Fact<SourceNote>;
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

/**
 * Tooth counts: a planetary set by its sun and ring, or meshes with members by name. Members on one shaft go by one name.
 * A row of meshes on fixed shafts goes from its first driver to its last driven wheel; with planets, input and output
 * are said.
 */
export interface Train {
  readonly origin: Origin;
  readonly meshes: readonly Fact<Mesh>[];
  readonly sunTeeth?: Quantity<'number'>;
  readonly ringTeeth?: Quantity<'number'>;
  readonly planetTeeth?: Quantity<'number'>;
  readonly planets?: Quantity<'number'>;
  /** One planet between sun and ring (`single`) or two in series (`double`). */
  readonly planetRow?: Fact<'single' | 'double'>;
  readonly input?: Fact<string>;
  readonly output?: Fact<string>;
  /** Members held still; `none` when a set turns as one piece. */
  readonly held: readonly Fact<string>[];
  readonly locked: readonly Fact<Lock>[];
}

/** One offered ratio. */
export interface RatioVariant {
  readonly nominal: Value<'ratio'>;
  readonly nominalFact: Quantity<'ratio'>;
  readonly origin: Origin;
  readonly exact?: Quantity<'ratio'>;
  readonly clutches: readonly Clutch[];
  readonly ratings: readonly GearRating[];
  readonly train?: Train;
}

export interface Flange {
  readonly origin: Origin;
  readonly outsideDiameter?: Quantity<'length'>;
  readonly boltCircle?: Quantity<'length'>;
  readonly bolts?: Fact<Bolts>;
  readonly pilot?: Fact<Pilot>;
  readonly thickness?: Quantity<'length'>;
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

export interface GearFacts {
  readonly source?: Fact<SourceNote>;
  readonly layout?: Fact<GearLayout>;
  readonly inputRotation?: Fact<Rotation>;
  readonly inputSpeedMax?: Quantity<'rotational speed'>;
  readonly inputSpeedMin?: Quantity<'rotational speed'>;
  readonly inputHousing?: Fact<string>;
  readonly outputFlange?: Flange;
  readonly thrust?: Quantity<'force'>;
  readonly thrustBearing?: RollingThrustBearing & { readonly origin: Origin };
  readonly oilPressure?: Fact<Span<'pressure'>>;
  readonly efficiency?: Quantity<'ratio'>;
  readonly mass?: Quantity<'mass'>;
  readonly ratios: readonly RatioVariant[];
  /** Clutches whose facts hold for every ratio. */
  readonly clutches: readonly Clutch[];
  /** Ratings that hold for every ratio. */
  readonly ratings: readonly GearRating[];
  /** Which clutch a push of the gear's lever engages. */
  readonly pushEngages?: Fact<string>;
  readonly slipDevice?: Fact<'offered' | 'not offered' | 'fitted'>;
  readonly freewheel?: Fact<string>;
  readonly reversing?: Fact<'yes' | 'no'>;
  /** Along the shaft line, input face to output flange. */
  readonly length?: Quantity<'length'>;
  readonly installedAngleMax?: Quantity<'angle'>;
  readonly runningAngleMax?: Quantity<'angle'>;
  readonly splineTeeth?: Quantity<'number'>;
  readonly splinePitch?: Fact<string>;
  /** Turning parts at input speed, and at output speed. */
  readonly inputInertia?: Quantity<'moment of inertia'>;
  readonly outputInertia?: Quantity<'moment of inertia'>;
  // In place
  /** Pump set for this input rotation. */
  readonly pumpIndex?: Fact<Rotation>;
  readonly shiftCable?: Fact<'push for ahead' | 'pull for ahead'>;
  readonly expectedOutput?: Fact<'clockwise' | 'counter-clockwise'>;
  readonly pressureGauge?: Fact<'fitted' | 'not fitted'>;
  readonly temperatureGauge?: Fact<'fitted' | 'not fitted'>;
  readonly oilCooler?: Fact<'fitted' | 'not fitted'>;
  readonly position?: Quantity<'length'>;
}

export interface Gear extends Part<'gear'>, GearFacts, Damageable {
  readonly source?: Fact<SourceNote>;
  /** Ratio written in the line. */
  readonly ratioUsed?: Quantity<'ratio'>;
  /** The offered ratio that it names. */
  readonly variant?: RatioVariant;
  /** Clutch written after `ahead clutch`. */
  readonly aheadClutch?: Fact<string>;
}

export interface TransferFacts {
  readonly source?: Fact<SourceNote>;
  readonly kind?: Fact<'gear V-drive' | 'chain V-drive' | 'belt' | 'chain' | 'gears'>;
  readonly output?: Fact<OutputSense>;
  readonly exact?: Quantity<'ratio'>;
  readonly efficiency?: Quantity<'ratio'>;
  readonly inputSpeedMax?: Quantity<'rotational speed'>;
  readonly torque?: Quantity<'torque'>;
  readonly mass?: Quantity<'mass'>;
  readonly train?: Train;
  readonly thrust?: Quantity<'force'>;
  readonly length?: Quantity<'length'>;
  readonly outputFlange?: Flange;
  readonly position?: Quantity<'length'>;
  /** A transfer that turns the line back, so that what follows is seen from the other end. */
  readonly turnsBack?: Fact<'yes' | 'no'>;
}

export interface Transfer extends Part<'transfer'>, TransferFacts, Damageable {
  readonly source?: Fact<SourceNote>;
  readonly ratioUsed?: Quantity<'ratio'>;
}
