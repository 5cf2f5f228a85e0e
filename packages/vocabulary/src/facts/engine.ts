import type { Origin } from '@tailshaft/mechanics';
import type { Damageable } from './damage.js';
import type { Fact, Point, Quantity, Rotation, SourceNote } from './fact.js';
import type { Flange } from './gear.js';
import type { Part } from './part.js';
import type { EngineTorsion, RollingThrustBearing } from './torsion.js';

/** One declared rating: `rating medium { power 300 kW at 2300 rpm ... }`. */
export interface EngineRating {
  /** Duty class the rating is for. */
  readonly duty: string;
  /** The same with its place. */
  readonly dutyFact?: Fact<string>;
  readonly origin: Origin;
  readonly power?: Fact<Point<'power', 'rotational speed'>>;
  readonly measuredAt?: Fact<'crankshaft' | 'propeller shaft'>;
  readonly standard?: Fact<string>;
  /** Hours a year that the rating allows. */
  readonly hours?: Quantity<'number'>;
  readonly fullPower?: Fact<string>;
  readonly source?: Fact<SourceNote>;
}

/** An accessory that is built for one rotation. */
export interface Accessory {
  readonly name: string;
  readonly origin: Origin;
  readonly rotation?: Fact<Rotation>;
}

/** What the engine or motor stands on. */
export interface Mounts {
  readonly origin: Origin;
  readonly kind?: Fact<'soft' | 'rigid'>;
  /** Movement of the coupling that they allow. */
  readonly deflection?: Quantity<'length'>;
  /** All mounts together. */
  readonly thrust?: Quantity<'force'>;
  readonly torque?: Quantity<'torque'>;
}

/** Declared facts of an engine, from its catalogue entry and from its place in the line. */
export interface EngineFacts extends EngineTorsion {
  readonly source?: Fact<SourceNote>;
  readonly rotation?: Fact<Rotation>;
  /** The rotation as the data sheet words it, kept beside the author's reading of it. */
  readonly sheetRotation?: Fact<Rotation>;
  readonly fuel?: Fact<'petrol' | 'diesel' | 'gas'>;
  readonly cylinders?: Quantity<'number'>;
  readonly cycle?: Fact<'four-stroke' | 'two-stroke'>;
  readonly aspiration?: Fact<'natural' | 'turbocharged' | 'turbocharged charge-cooled'>;
  readonly mechanicalEfficiency?: Quantity<'ratio'>;
  readonly ratings: readonly EngineRating[];
  readonly lowIdle?: Quantity<'rotational speed'>;
  /** Governed no-load maximum. */
  readonly highIdle?: Quantity<'rotational speed'>;
  readonly peakTorque?: Fact<Point<'torque', 'rotational speed'>>;
  /** Full-load curve, as power or as torque against speed. */
  readonly powerCurve: readonly Fact<Point<'power', 'rotational speed'>>[];
  readonly torqueCurve: readonly Fact<Point<'torque', 'rotational speed'>>[];
  readonly accessories: readonly Accessory[];
  readonly housing?: Fact<string>;
  readonly flywheelSize?: Fact<string>;
  readonly mass?: Quantity<'mass'>;
  readonly inertia?: Quantity<'moment of inertia'>;
  readonly recessDiameter?: Quantity<'length'>;
  readonly length?: Quantity<'length'>;
  readonly width?: Quantity<'length'>;
  readonly height?: Quantity<'length'>;
  /** Distance across between the mounts of the two sides. */
  readonly mountCentres?: Quantity<'length'>;
  readonly installedAngleMax?: Quantity<'angle'>;
  readonly runningAngleMax?: Quantity<'angle'>;
  readonly serial?: Fact<string>;
  /** Fuel burnt at rated power. */
  readonly fuelRate?: Quantity<'volume flow'>;
  // In place
  readonly flywheelFaces?: Fact<'aft' | 'forward'>;
  /** Calculation or maker's statement on torsional vibration of the whole line. */
  readonly torsionalStatement?: Fact<string>;
  /** Crankshaft below the base line, aft end down. */
  readonly angle?: Quantity<'angle'>;
  readonly mounts?: Mounts;
  readonly bedCentres?: Quantity<'length'>;
  readonly spaceLength?: Quantity<'length'>;
  readonly spaceWidth?: Quantity<'length'>;
  readonly spaceHeight?: Quantity<'length'>;
  /** Narrowest way in or out. */
  readonly removalWidth?: Quantity<'length'>;
  readonly removalLength?: Quantity<'length'>;
  /** Centre of mass along the vessel, from its reference, forward positive. */
  readonly position?: Quantity<'length'>;
  /** Output face, from the same forward reference point along the shaft line, aft positive. */
  readonly faceAt?: Quantity<'length'>;
  readonly takeOff?: Quantity<'power'>;
  readonly takeOffState?: Fact<'on' | 'off'>;
  readonly airTemperature?: Quantity<'temperature'>;
  readonly coolantTemperature?: Quantity<'temperature'>;
  readonly airPressure?: Quantity<'pressure'>;
  readonly airHumidity?: Quantity<'ratio'>;
}

export interface Engine extends Part<'engine'>, EngineFacts, Damageable {
  readonly source?: Fact<SourceNote>;
  /** The duty word after `at`. */
  readonly ratedAt?: Fact<string>;
  /** The rating that word names. */
  readonly rating?: EngineRating;
}

/** Declared facts of an electric motor. */
export interface MotorFacts {
  readonly source?: Fact<SourceNote>;
  readonly rotation?: Fact<Rotation>;
  readonly power?: Fact<Point<'power', 'rotational speed'>>;
  readonly peakPower?: Quantity<'power'>;
  readonly torque?: Quantity<'torque'>;
  readonly baseSpeed?: Quantity<'rotational speed'>;
  readonly topSpeed?: Quantity<'rotational speed'>;
  readonly thrustCapacity?: Quantity<'force'>;
  readonly thrustBearing?: RollingThrustBearing & { readonly origin: Origin };
  readonly mass?: Quantity<'mass'>;
  readonly inertia?: Quantity<'moment of inertia'>;
  readonly outputFlange?: Flange;
  readonly installedAngleMax?: Quantity<'angle'>;
  readonly runningAngleMax?: Quantity<'angle'>;
  // In place
  readonly torsionalStatement?: Fact<string>;
  readonly angle?: Quantity<'angle'>;
  readonly mounts?: Mounts;
  readonly position?: Quantity<'length'>;
  readonly faceAt?: Quantity<'length'>;
  /** What a seller or owner says it replaces: `said to equal 40 hp at 1100 rpm`. */
  readonly saidToEqual?: Fact<Point<'power', 'rotational speed'>>;
}

export interface Motor extends Part<'motor'>, MotorFacts, Damageable {
  readonly source?: Fact<SourceNote>;
}
