import type { Value } from '../core/value.js';
import type { EngineCurve } from '../propeller/engine-curve.js';
import { engineTorque } from '../propeller/engine-curve.js';
import { type Driveline, engineLoadFraction, shaftSpeedThroughGear } from '../propeller/equilibrium.js';
import { computed, doesNotApply, type Outcome } from '../propeller/outcome.js';
import { loadNumbers } from '../propeller/propeller-load.js';
import { firstRoot, rootBetween } from '../propeller/roots.js';
import {
  type Balance,
  balanceAtShaftSpeed,
  type DrivenVessel,
  describeBalance,
  refuseVessel,
  rotative,
} from './vessel-balance.js';

/** Vessel, propeller and engine at one point of the engine's range. */
export interface OperatingPoint extends Balance {
  readonly engineSpeed: Value<'rotational speed'>;
  /** Absent where the engine table says nothing at this speed. */
  readonly torqueAvailable: Value<'torque'> | undefined;
  /** Torque asked of the engine over torque it can give; above 1 it cannot hold this point. */
  readonly loadFraction: Value<'ratio'> | undefined;
}

/** Predicted speed and engine load when the engine turns at a given speed. */
export function predictAt(
  vessel: DrivenVessel,
  driveline: Driveline,
  engine: EngineCurve,
  engineSpeed: Value<'rotational speed'>,
): Outcome<OperatingPoint> {
  const refusal = refuseDriveline(driveline);
  if (refusal) return refusal;
  const shaftSpeed = shaftSpeedThroughGear({ engineSpeed, ratio: driveline.ratio });
  const balance = balanceAtShaftSpeed(vessel, shaftSpeed);
  return balance.applies ? withEngine(balance, driveline, engine, engineSpeed) : balance;
}

/**
 * Speed at full throttle: the first speed, going up from rest, at which the engine has no more torque or no more
 * revolutions to give for the thrust that the hull asks.
 */
export function predictTopSpeed(
  vessel: DrivenVessel,
  driveline: Driveline,
  engine: EngineCurve,
): Outcome<OperatingPoint & { readonly endOfTable: boolean }> {
  const refusal = refuseVessel(vessel) ?? refuseDriveline(driveline);
  if (refusal) return refusal;
  const { resistance } = vessel;
  const ratio = driveline.ratio.si;
  const rotativeEfficiency = rotative(vessel).si;
  const margins = (V: number): { torque: number; speed: number; shaftSpeed: number } | undefined => {
    const shaftSpeed = shaftSpeedFor(vessel, V);
    if (shaftSpeed === undefined) return undefined;
    const engineSpeed = shaftSpeed * ratio;
    const clamped = Math.min(engine.highest, Math.max(engine.lowest, engineSpeed));
    const available = (engine.torqueAt(clamped) ?? 0) * ratio * driveline.efficiency.si;
    const flow = V * (1 - vessel.wakeFraction.si);
    const asked = loadNumbers(vessel.curve, shaftSpeed, flow, vessel.density.si).torque / rotativeEfficiency;
    // The gap is scaled by what is asked, so that an engine table ending in zero torque still has a sign.
    return {
      torque: (available - asked) / Math.max(asked, 1e-9),
      speed: 1 - engineSpeed / engine.highest,
      shaftSpeed,
    };
  };
  const spare = (V: number): number => {
    const found = margins(V);
    return found ? Math.min(found.torque, found.speed) : Number.NaN;
  };
  const low = Math.max(resistance.lowest, resistance.highest * 1e-3);
  if (!(spare(low) > 0))
    return doesNotApply(
      `The engine cannot drive this vessel at ${low.toFixed(2)} m/s, the lowest speed at which the ${resistance.method} says anything.`,
    );
  const V = firstRoot(spare, low, resistance.highest, 128);
  if (V === undefined)
    return doesNotApply(
      `At full throttle the vessel would go faster than ${resistance.highest.toFixed(2)} m/s, where the ${resistance.method} says nothing. Give resistance at higher speeds, or a method that covers them.`,
    );
  const at = margins(V)!;
  if (at.shaftSpeed * ratio < engine.lowest)
    return doesNotApply(
      'The balance lies below the lowest speed of the engine table. Extend the table downwards.',
    );
  const engineSpeed = computed(
    'engine speed at full throttle',
    'ωe',
    'rotational speed',
    Math.min(engine.highest, at.shaftSpeed * ratio),
    {
      name: 'vessel, propeller and engine balance',
      text: 'R(V) = Ns (1 - t) T(V, ωe / i) and Q(V, ωe / i) = i η Qe(ωe), or the end of the engine table',
      source: { title: 'balance of thrust, torque and resistance', confidence: 'derived' },
    },
    [...engine.inputs, driveline.ratio, driveline.efficiency, vessel.wakeFraction, vessel.thrustDeduction],
  );
  const shaftSpeed = shaftSpeedThroughGear({ engineSpeed, ratio: driveline.ratio });
  const balance = describeBalance(vessel, shaftSpeed, V);
  if (!balance.applies) return balance;
  return { ...withEngine(balance, driveline, engine, engineSpeed), endOfTable: at.speed <= at.torque };
}

/** Shaft speed at which the propellers give the thrust that a vessel speed asks. */
function shaftSpeedFor(vessel: DrivenVessel, V: number): number | undefined {
  const { curve, screws, thrustDeduction, wakeFraction, density } = vessel;
  const asked = vessel.resistance.numberAt(V);
  if (asked === undefined || !(V > 0) || !Number.isFinite(asked)) return undefined;
  const flow = V * (1 - wakeFraction.si);
  const diameter = curve.geometry.diameter.si;
  const thrust = asked / (screws.si * (1 - thrustDeduction.si));
  // KT / J² does not hold the shaft speed, so J follows from the thrust alone; it falls all the way to J0.
  const loading = thrust / (density.si * flow * flow * diameter * diameter);
  const over = (j: number): number => curve.thrustCoefficient(j) - loading * j * j;
  if (over(0) <= 0) return undefined;
  const j = loading <= 0 ? curve.zeroThrust : rootBetween(over, 0, curve.zeroThrust);
  return (2 * Math.PI * flow) / (j * diameter);
}

function withEngine(
  balance: { readonly applies: true } & Balance,
  driveline: Driveline,
  engine: EngineCurve,
  engineSpeed: Value<'rotational speed'>,
): { readonly applies: true } & OperatingPoint {
  const torqueAvailable = engineTorque(engine, engineSpeed);
  const loadFraction =
    torqueAvailable &&
    engineLoadFraction({
      propellerTorque: balance.torque,
      torqueAvailable,
      ratio: driveline.ratio,
      efficiency: driveline.efficiency,
    });
  return { ...balance, engineSpeed, torqueAvailable, loadFraction };
}

function refuseDriveline({ ratio, efficiency }: Driveline) {
  if (!(ratio.si > 0 && Number.isFinite(ratio.si)))
    return doesNotApply('The reduction ratio must be a positive number.');
  if (!(efficiency.si > 0 && efficiency.si <= 1))
    return doesNotApply('The efficiency of the driveline must be above 0 and at most 1.');
  return undefined;
}
