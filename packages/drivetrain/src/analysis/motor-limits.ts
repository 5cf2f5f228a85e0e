import { given, motorBaseSpeed, renamed, torqueFromPower, type Value } from '@tailshaft/mechanics';
import type { Motor } from '../model/engine.js';
import type { ShaftLine } from '../model/vessel.js';
import type { FullLoadPoint } from './engine-points.js';

/** What bounds a motor that drives by itself: its torque up to a speed, its power from there to the fastest that it may turn. */
export interface MotorLimits {
  readonly motor: Motor;
  readonly torque: Value<'torque'>;
  /** As far as its control lets it go in this mode. */
  readonly power: Value<'power'>;
  /** From here up it can give that power. */
  readonly from: Value<'rotational speed'>;
  readonly top: Value<'rotational speed'> | undefined;
}

/** Nothing where an engine drives, alone or beside it: then the speed that counts is that of the engine. */
export function motorLimits(line: ShaftLine, rated: FullLoadPoint): MotorLimits | undefined {
  const { motor } = line;
  if (!motor || line.engine || line.joined) return undefined;
  const declared = motor.power?.value;
  const torque = renamed(
    motor.torque?.value ??
      (declared ? torqueFromPower({ power: declared.y, speed: declared.x }) : rated.torque),
    'torque of the motor',
    'T_max',
  );
  const power = renamed(rated.power, 'power of the motor', 'P_max');
  const base = motorBaseSpeed({ torqueLimit: torque, powerLimit: power });
  // What is lost in writing torque and speed makes no second speed of one.
  const from =
    Math.abs(base.si / rated.speed.si - 1) < ROUNDED || base.si > rated.speed.si ? rated.speed : base;
  return { motor, torque, power, from, top: motor.topSpeed?.value };
}

const ROUNDED = 0.005;

/** Speeds at which its curve is taken: few where its torque is constant, closer where it falls off. */
export function speedsAlong({ from, top }: MotorLimits, rated: Value<'rotational speed'>) {
  const last = top && Math.max(top.si, rated.si);
  if (!last) return [];
  const falls = Array.from({ length: STEPS + 1 }, (_, step) => from.si * (last / from.si) ** (step / STEPS));
  return [
    ...new Set([from.si * SLOWEST, ...falls.filter(si => si > from.si * (1 + 1e-9)), from.si, rated.si]),
  ].map(si => given('motor speed', 'ω', 'rotational speed', si));
}

const STEPS = 16;
const SLOWEST = 0.02;
