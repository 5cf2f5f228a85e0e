import type { Origin } from '@tailshaft/mechanics';
import type { ACCESSORY, ENGINE_PLACE, ENGINE_RATING, MOTOR_PLACE } from '../engine.js';
import type { MOUNTS } from '../fit.js';
import type { FactsOf } from '../kinds.js';
import type { Damageable } from './damage.js';
import type { Fact, Point, SourceNote } from './fact.js';
import type { Flange } from './gear.js';
import type { Part } from './part.js';
import type { Excitation, RollingThrustBearing } from './torsion.js';

/** One declared rating: `rating medium { power 300 kW at 2300 rpm ... }`. */
export interface EngineRating extends FactsOf<typeof ENGINE_RATING> {
  /** Duty class the rating is for. */
  readonly duty: string;
  /** The same with its place. */
  readonly dutyFact?: Fact<string>;
  readonly origin: Origin;
}

/** An accessory that is built for one rotation. */
export interface Accessory extends FactsOf<typeof ACCESSORY> {
  readonly name: string;
  readonly origin: Origin;
}

/** What the engine or motor stands on. */
export interface Mounts extends FactsOf<typeof MOUNTS> {
  readonly origin: Origin;
}

/** Declared facts of an engine, from its catalogue entry and from its place in the line. */
export interface EngineFacts extends FactsOf<typeof ENGINE_PLACE> {
  readonly ratings: readonly EngineRating[];
  /** Full-load curve, as power or as torque against speed. */
  readonly powerCurve: readonly Fact<Point<'power', 'rotational speed'>>[];
  readonly torqueCurve: readonly Fact<Point<'torque', 'rotational speed'>>[];
  readonly accessories: readonly Accessory[];
  /** Torques of all cylinders together, by order of the crankshaft, at full load. */
  readonly excitations?: readonly Excitation[];
  readonly mounts?: Mounts;
}

export interface Engine extends Part<'engine'>, EngineFacts, Damageable {
  readonly source?: Fact<SourceNote>;
  /** The rating that the word after `at` names. */
  readonly rating?: EngineRating;
}

/** Declared facts of an electric motor. */
export interface MotorFacts extends FactsOf<typeof MOTOR_PLACE> {
  readonly thrustBearing?: RollingThrustBearing & { readonly origin: Origin };
  readonly outputFlange?: Flange;
  readonly mounts?: Mounts;
}

export interface Motor extends Part<'motor'>, MotorFacts, Damageable {
  readonly source?: Fact<SourceNote>;
}
