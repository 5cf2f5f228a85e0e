import type { Value } from '@tailshaft/mechanics';
import type { Clutch } from '../model/gear.js';
import { aside, Kept } from '../model/reads.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { clutchInUse } from './ahead-clutch.js';
import { type Derived, derive } from './derived.js';
import {
  type FullLoadPoint,
  fullLoadPoints,
  governedSpeed,
  idleSpeed,
  peakTorquePoint,
  ratedPoint,
} from './engine-points.js';
import { type HandCheck, handCheck } from './hand.js';
import { vesselOf } from './hull-now.js';
import { idleShaftSpeed, idleVesselSpeed } from './idle.js';
import { type LineLoads, loadsAlong } from './loads.js';
import { type OperatingPoint, operatingPoints } from './operating-points.js';
import { propellerPower } from './propeller-power.js';
import { speedIsAsked } from './propulsion/hull-method.js';
import { type PropulsionResult, propulsionOf } from './propulsion/propulsion.js';
import { atSetPitch, hasPitchRange } from './propulsion/set-pitch.js';
import { type RotationAnalysis, rotationOf } from './rotation.js';
import { type Direction, gearRatio, overallRatio, type StageRatio } from './speeds.js';
import { type Tell, tellerOf } from './telling.js';

/**
 * What follows from the declared facts of one shaft line, each part worked out when first asked for.
 * The getters delegate to one file per subject beside this one.
 */
export class LineAnalysis {
  readonly #kept = new Kept();

  readonly #stated: Vessel;

  constructor(
    readonly line: ShaftLine,
    stated: Vessel,
  ) {
    this.#stated = stated;
  }

  /** With what the hull states of parts that are no longer there marked as such. */
  get vessel(): Vessel {
    return this.#once('vessel', () => vesselOf(this.line, this.#stated));
  }

  /** Which way it turns at every station, ahead and astern. */
  get rotation(): RotationAnalysis {
    return this.#once('rotation', () => rotationOf(this.line));
  }

  /** Whether its propeller drives ahead with the lever ahead. */
  get hand(): HandCheck | undefined {
    return this.#once('hand', () => handCheck(this.line, this.rotation));
  }

  /** The clutch that is engaged for ahead; its `value` is undefined too where the line has no gear. */
  get aheadClutch(): Derived<Clutch> {
    const { gear } = this.line;
    return this.#once('ahead clutch', () => derive(needs => gear && clutchInUse(gear, needs)));
  }

  /** Rated power at the crankshaft. */
  get rated(): Derived<FullLoadPoint> {
    return this.#once('rated', () => ratedPoint(this.line, this.vessel));
  }

  /** Where the engine's torque is greatest. */
  get peakTorque(): Derived<FullLoadPoint> {
    return this.#once('peak torque', () => peakTorquePoint(this.line, this.vessel));
  }

  /** Declared points of the full-load curve, slowest first. */
  get fullLoad(): readonly FullLoadPoint[] {
    return this.#once('full load', () => fullLoadPoints(this.line));
  }

  get idleSpeed(): Derived<Value<'rotational speed'>> {
    return this.#once('idle', () => idleSpeed(this.line));
  }

  /** High idle of the engine, or top speed of the motor. */
  get governedSpeed(): Derived<Value<'rotational speed'>> {
    return this.#once('governed', () => governedSpeed(this.line));
  }

  /** Ratio of the gear in the clutch used in this direction. */
  gearRatio(direction: Direction): Derived<StageRatio> | undefined {
    const { gear } = this.line;
    return gear && this.#once(`gear ratio ${direction}`, () => gearRatio(gear, direction));
  }

  /** Engine speed over propeller shaft speed. */
  overallRatio(direction: Direction): Derived<Value<'ratio'>> {
    return this.#once(`overall ratio ${direction}`, () => overallRatio(this.line, direction));
  }

  get idleShaftSpeed(): Derived<Value<'rotational speed'>> {
    return this.#once('idle shaft speed', () => idleShaftSpeed(this.line));
  }

  /** Estimated speed of the vessel in gear at idle. */
  get idleVesselSpeed(): Derived<Value<'speed'>> {
    return this.#once('idle vessel speed', () => idleVesselSpeed(this.line, this.vessel));
  }

  /** Power that reaches the propeller at rated speed, less a take-off that counts as running. */
  get propellerPower(): Derived<Value<'power'>> {
    return this.#once('propeller power', () => propellerPower(this.line, this.vessel));
  }

  /**
   * How propeller, hull and engine go together; undefined where the spec does not ask for it, or the pitch of the
   * propeller is set under way within a range that nobody says.
   */
  get propulsion(): PropulsionResult | undefined {
    const { line } = this;
    const { propeller } = line;
    if (!propeller || !(line.engine || line.motor) || !speedIsAsked(this.vessel)) return undefined;
    if (hasPitchRange(propeller)) return this.#once('at set pitch', () => atSetPitch(line, this.vessel));
    if (propeller.kind?.value === 'controllable pitch') return undefined;
    return this.#once('propulsion', () => propulsionOf(line, this.vessel));
  }

  /** Speed, torque and power at every part for one full-load point. */
  loads(point: FullLoadPoint, direction: Direction = 'ahead'): LineLoads {
    const { name, speed, power } = point;
    return this.#once(`loads ${name} ${speed.si} ${power.si} ${direction}`, () =>
      loadsAlong(this.line, this.vessel, point, direction),
    );
  }

  /** Speeds at every station for each point that the declared facts give. */
  get operatingPoints(): readonly OperatingPoint[] {
    return this.#once('operating points', () => operatingPoints(this.line, this.vessel));
  }

  /** Says values in the units that this line is written in. */
  get tell(): Tell {
    return aside(() => this.#once('tell', () => tellerOf(this.line)));
  }

  #once<T>(key: string, make: () => T): T {
    return this.#kept.once(key, make);
  }
}
