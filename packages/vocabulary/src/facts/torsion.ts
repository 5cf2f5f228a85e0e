import type { Origin, Value } from '@tailshaft/mechanics';
import type { Fact, Point, Quantity, Span } from './fact.js';

/** One harmonic of a torque: what it swings by, either side of its mean. */
export interface Excitation {
  readonly origin: Origin;
  /** Oscillations per turn of the part that makes it. */
  readonly order: Value<'number'>;
  readonly orderFact?: Quantity<'number'>;
  readonly torque?: Quantity<'torque'>;
}

/** What a torsional calculation takes from an engine. */
export interface EngineTorsion {
  /** Torques of all cylinders together, by order of the crankshaft, at full load. */
  readonly excitations?: readonly Excitation[];
  /** Resonance magnifier that the damping of engine and its own damper alone would allow. */
  readonly magnifier?: Quantity<'number'>;
}

/** What a torsional calculation takes from a coupling, beside stiffness and inertia. */
export interface CouplingTorsion {
  /** Resonance magnifier of the coupling alone. */
  readonly magnifier?: Quantity<'number'>;
  /** Energy lost in a cycle over the energy stored. */
  readonly relativeDamping?: Quantity<'number'>;
  /** Vibratory torque that it may carry continuously, either side of the mean. */
  readonly vibratoryTorque?: Quantity<'torque'>;
}

/** What a torsional calculation takes from a propeller, beside its inertia. */
export interface PropellerTorsion {
  /** Torques by order of the propeller shaft, at rated power. */
  readonly excitations?: readonly Excitation[];
  /** Archer’s factor a of C = a Q/N, speed in rpm. */
  readonly dampingFactor?: Quantity<'number'>;
}

/** What a torsional calculation or measurement says of a shaft, at its own speed. */
export interface ShaftTorsion {
  /** Amplitude of vibratory stress, all orders together. */
  readonly vibratoryStresses?: readonly Fact<Point<'pressure', 'rotational speed'>>[];
  /** Speeds that may only be passed, as they stand on the plate. */
  readonly barredRanges?: readonly Fact<Span<'rotational speed'>>[];
}

/** A plain thrust bearing: collars on the shaft that run against pads or rings. */
export interface CollarThrustBearing {
  readonly collars?: Quantity<'number'>;
  readonly collarOutside?: Quantity<'length'>;
  readonly collarInside?: Quantity<'length'>;
  /** Pressure that its lining may carry. */
  readonly collarPressure?: Quantity<'pressure'>;
}

/** A rolling bearing that takes the thrust of the propeller. */
export interface RollingThrustBearing {
  /** Axial dynamic load rating, ISO 281. */
  readonly dynamicRating?: Quantity<'force'>;
  readonly rollingElements?: Fact<'ball' | 'roller'>;
}
