import type { Origin } from '@tailshaft/mechanics';
import type { Fact, Point, Quantity, Rotation, SourceNote } from './fact.js';
import type { Part } from './part.js';

/** One declared rating: `rating medium { power 300 kW at 2300 rpm ... }`. */
export interface EngineRating {
  /** Duty class the rating is for. */
  readonly duty: string;
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

/** Declared facts of an engine, from its catalogue entry and from its place in the line. */
export interface EngineFacts {
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
  readonly serial?: Fact<string>;
  /** Fuel burnt at rated power. */
  readonly fuelRate?: Quantity<'volume flow'>;
  // In place
  readonly flywheelFaces?: Fact<'aft' | 'forward'>;
  readonly takeOff?: Quantity<'power'>;
  readonly takeOffState?: Fact<'on' | 'off'>;
  readonly airTemperature?: Quantity<'temperature'>;
  readonly coolantTemperature?: Quantity<'temperature'>;
  readonly airPressure?: Quantity<'pressure'>;
  readonly airHumidity?: Quantity<'ratio'>;
}

export interface Engine extends Part<'engine'>, EngineFacts {
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
  readonly mass?: Quantity<'mass'>;
  readonly inertia?: Quantity<'moment of inertia'>;
  /** What a seller or owner says it replaces: `said to equal 40 hp at 1100 rpm`. */
  readonly saidToEqual?: Fact<Point<'power', 'rotational speed'>>;
}

export interface Motor extends Part<'motor'>, MotorFacts {
  readonly source?: Fact<SourceNote>;
}
