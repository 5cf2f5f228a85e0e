import {
  type EngineCurve,
  type EnginePoint,
  engineCurve,
  given,
  motorTorque,
  type Value,
} from '@tailshaft/mechanics';
import { Needs } from '../../judge/needs.js';
import type { ShaftLine, Vessel } from '../../model/vessel.js';
import { type FullLoadPoint, fullLoadPoints, governedSpeed, peakTorquePoint } from '../engine-points.js';
import { torqueAtEngine } from '../joined.js';
import { motorLimits, speedsAlong } from '../motor-limits.js';

/**
 * Torque against speed at full throttle: what is declared of the full-load curve up to rated speed, the rated point
 * itself, and from there straight to nothing at high idle, as a governor has it. A curve that starts at rated speed
 * says nothing of an engine that is pulled below it. The rated point comes with what drives beside the engine; the others get it.
 * A motor by itself gives its torque up from rest, and its power from where that reaches it to its top speed.
 */
export function fullThrottleTable(
  line: ShaftLine,
  vessel: Vessel,
  rated: FullLoadPoint,
): EngineCurve | undefined {
  if (line.motor && !line.engine && !line.joined) return motorTable(line, rated);
  const points = new Map<number, EnginePoint>();
  const add = (speed: Value<'rotational speed'>, torque: Value<'torque'>) => {
    const whole = torqueAtEngine(line, vessel, speed, torque, new Needs());
    if (whole) points.set(speed.si, { speed, torque: whole });
  };
  const peak = peakTorquePoint(line, vessel).value;
  const below = [...fullLoadPoints(line), ...(peak ? [peak] : [])].filter(
    point => point.speed.si < rated.speed.si * (1 - 1e-9),
  );
  for (const point of below) add(point.speed, point.torque);
  points.set(rated.speed.si, rated);
  const governed = governedSpeed(line).value;
  if (governed && governed.si > rated.speed.si * (1 + 1e-9)) {
    add(
      governed,
      given('torque at high idle', 'Qe', 'torque', 0, { assumed: 'no load is left at the governed speed' }),
    );
  }
  const table = engineCurve([...points.values()]);
  return table.applies ? table : undefined;
}

function motorTable(line: ShaftLine, rated: FullLoadPoint): EngineCurve | undefined {
  const limits = motorLimits(line, rated);
  if (!limits) return undefined;
  const speeds = speedsAlong(limits, rated.speed);
  const greatestSpeed = speeds.reduce((one, other) => (other.si > one.si ? other : one), rated.speed);
  const { torque: torqueLimit, power: powerLimit } = limits;
  const table = engineCurve(
    speeds.map(speed => ({ speed, torque: motorTorque({ torqueLimit, powerLimit, greatestSpeed, speed }) })),
  );
  return table.applies ? table : undefined;
}
