import type { Origin, Value } from '@tailshaft/mechanics';
import type { FactsOf } from '../kinds.js';
import type { EXCITATION, ROLLING_THRUST } from '../torsion.js';
import type { Quantity } from './fact.js';

/** One harmonic of a torque: what it swings by, either side of its mean. */
export interface Excitation extends FactsOf<typeof EXCITATION> {
  readonly origin: Origin;
  /** Oscillations per turn of the part that makes it. */
  readonly order: Value<'number'>;
  readonly orderFact?: Quantity<'number'>;
}

/** A rolling bearing that takes the thrust of the propeller. */
export interface RollingThrustBearing extends FactsOf<typeof ROLLING_THRUST> {}
