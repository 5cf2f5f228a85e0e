import type { RangeResult, Value } from '../core/value.js';
import type { OpenWaterCurve, OpenWaterPoint } from './open-water.js';
import { unmet } from './outcome.js';
import {
  advanceRatio,
  propellerPower,
  propellerThrust,
  propellerTorque,
  shaftThrustInNozzle,
} from './performance.js';

/** What the propeller does at one shaft speed and one speed of advance, with its working. */
export interface PropellerLoad extends OpenWaterPoint {
  /** What drives the vessel: of a propeller in a nozzle, that of both together. */
  readonly thrust: Value<'force'>;
  /** What the shaft and its thrust bearing get: all of it, unless a nozzle hands its part to the hull. */
  readonly shaftThrust: Value<'force'>;
  readonly torque: Value<'torque'>;
  /** Power taken from the shaft. */
  readonly power: Value<'power'>;
  /** Conditions of the series not met here, in words; empty when all hold. */
  readonly outside: readonly string[];
}

/** Thrust, torque and absorbed power of a propeller on a shaft that turns at a known speed in a known flow. */
export function propellerLoad(
  curve: OpenWaterCurve,
  shaftSpeed: Value<'rotational speed'>,
  speedOfAdvance: Value<'speed'>,
  density: Value<'density'>,
): PropellerLoad {
  const diameter = curve.geometry.diameter;
  const point = curve.at(advanceRatio({ speedOfAdvance, shaftSpeed, diameter }));
  const { thrustCoefficient, torqueCoefficient } = point;
  const thrust = propellerThrust({ thrustCoefficient, density, shaftSpeed, diameter });
  const torque = propellerTorque({ torqueCoefficient, density, shaftSpeed, diameter });
  const power = propellerPower({ torque, shaftSpeed });
  const shaftThrust = point.nozzleThrustCoefficient
    ? shaftThrustInNozzle({
        thrustCoefficient,
        nozzleThrustCoefficient: point.nozzleThrustCoefficient,
        density,
        shaftSpeed,
        diameter,
      })
    : thrust;
  return {
    ...point,
    thrust,
    shaftThrust,
    torque,
    power,
    outside: unmet(rangeAt(curve, point.advanceRatio.si)),
  };
}

/** The curve's cautions and whether it covers this advance ratio. */
function rangeAt(curve: OpenWaterCurve, j: number): RangeResult[] {
  const blade = {
    pitchRatio: curve.pitchRatio.si,
    areaRatio: curve.areaRatio.si,
    blades: curve.geometry.blades.si,
  };
  return [...curve.cautions, ...(curve.series.cautionsAt?.(blade, j) ?? []), curve.covers(j)];
}

/** The same on bare numbers, for the loops that look for an equilibrium. */
export function loadNumbers(
  curve: OpenWaterCurve,
  shaftSpeed: number,
  speedOfAdvance: number,
  density: number,
): { thrust: number; torque: number } {
  const diameter = curve.geometry.diameter.si;
  const n = shaftSpeed / (2 * Math.PI);
  const j = speedOfAdvance / (n * diameter);
  const scale = density * n * n * diameter ** 4;
  return {
    thrust: curve.thrustCoefficient(j) * scale,
    torque: curve.torqueCoefficient(j) * scale * diameter,
  };
}
