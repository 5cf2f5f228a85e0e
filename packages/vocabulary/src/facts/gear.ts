import type { Origin, Value } from '@tailshaft/mechanics';
import type { FLANGE } from '../flange.js';
import type {
  CLUTCH,
  GEAR_PLACE,
  GEAR_RATING,
  GEAR_RATIO,
  INPUT_SHAFT,
  TRAIN,
  TRANSFER_PLACE,
} from '../gear.js';
import type { FactsOf } from '../kinds.js';
import type { INPUT_SHAFTS } from '../words.js';
import type { Damageable } from './damage.js';
import type { Fact, Quantity, SourceNote } from './fact.js';
import type { Part } from './part.js';
import type { RollingThrustBearing } from './torsion.js';
import type { Lock, Mesh } from './values.js';

/** One clutch of a gear (or of one of its ratios). */
export interface Clutch extends FactsOf<typeof CLUTCH> {
  readonly name: string;
  readonly origin: Origin;
  readonly train?: Train;
}

/** Capacity for one duty: torque, power per speed, or power at a speed. */
export interface GearRating extends FactsOf<typeof GEAR_RATING> {
  readonly duty: string;
  /** The same with its place. */
  readonly dutyFact?: Fact<string>;
  readonly origin: Origin;
}

/**
 * Tooth counts: a planetary set by its sun and ring, or meshes with members by name. Members on one shaft go by one name.
 * A row of meshes on fixed shafts goes from its first driver to its last driven wheel; with planets, input and output
 * are said.
 */
export interface Train extends FactsOf<typeof TRAIN> {
  readonly origin: Origin;
  readonly meshes: readonly Fact<Mesh>[];
  /** Members held still; `none` when a set turns as one piece. */
  readonly held: readonly Fact<string>[];
  readonly locked: readonly Fact<Lock>[];
}

/** One of the two input shafts of a gear that joins two engines: the first engine of the text drives the first. */
export interface InputShaft extends FactsOf<typeof INPUT_SHAFT> {
  readonly name: (typeof INPUT_SHAFTS)[number];
  readonly origin: Origin;
  readonly clutches: readonly Clutch[];
  /** What may enter by it while the other is loaded as well. */
  readonly ratings: readonly GearRating[];
}

/** One offered ratio. */
export interface RatioVariant extends FactsOf<typeof GEAR_RATIO> {
  readonly nominal: Value<'ratio'>;
  readonly nominalFact: Quantity<'ratio'>;
  readonly origin: Origin;
  readonly clutches: readonly Clutch[];
  readonly ratings: readonly GearRating[];
  readonly inputs: readonly InputShaft[];
  readonly train?: Train;
}

export interface Flange extends FactsOf<typeof FLANGE> {
  readonly origin: Origin;
}

export interface GearFacts extends FactsOf<typeof GEAR_PLACE> {
  readonly outputFlange?: Flange;
  readonly thrustBearing?: RollingThrustBearing & { readonly origin: Origin };
  readonly ratios: readonly RatioVariant[];
  /** Clutches whose facts hold for every ratio. */
  readonly clutches: readonly Clutch[];
  /** Ratings that hold for every ratio. */
  readonly ratings: readonly GearRating[];
  /** Input shafts of a gear that joins two engines, for every ratio. */
  readonly inputs: readonly InputShaft[];
}

export interface Gear extends Part<'gear'>, GearFacts, Damageable {
  readonly source?: Fact<SourceNote>;
  /** Ratio written in the line. */
  readonly ratioUsed?: Quantity<'ratio'>;
  /** The offered ratio that it names. */
  readonly variant?: RatioVariant;
}

export interface TransferFacts extends FactsOf<typeof TRANSFER_PLACE> {
  readonly train?: Train;
  readonly outputFlange?: Flange;
}

export interface Transfer extends Part<'transfer'>, TransferFacts, Damageable {
  readonly source?: Fact<SourceNote>;
  readonly ratioUsed?: Quantity<'ratio'>;
}
