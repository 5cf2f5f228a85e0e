import { formula } from '../core/formula.js';
import { given, type Value } from '../core/value.js';
import { slowestDrivingSpeed } from '../propeller/equilibrium.js';
import type { OpenWaterCurve } from '../propeller/open-water.js';
import { computed, doesNotApply, type Method, type Outcome } from '../propeller/outcome.js';
import { propellerPower, speedOfAdvance } from '../propeller/performance.js';
import { loadNumbers, type PropellerLoad, propellerLoad } from '../propeller/propeller-load.js';
import { firstRoot } from '../propeller/roots.js';
import type { ResistanceCurve } from './resistance-curve.js';
import { effectivePower } from './wake-thrust.js';

/** A hull with its propellers, all shafts alike. */
export interface DrivenVessel {
  readonly resistance: ResistanceCurve;
  readonly curve: OpenWaterCurve;
  readonly screws: Value<'number'>;
  readonly wakeFraction: Value<'ratio'>;
  readonly thrustDeduction: Value<'ratio'>;
  readonly density: Value<'density'>;
  /** Torque in open water over torque behind the hull; 1 unless known. */
  readonly relativeRotativeEfficiency?: Value<'ratio'>;
}

/** Vessel and propellers in balance at one shaft speed; load figures are for one shaft. */
export interface Balance extends PropellerLoad {
  readonly vesselSpeed: Value<'speed'>;
  readonly shaftSpeed: Value<'rotational speed'>;
  readonly speedOfAdvance: Value<'speed'>;
  readonly resistance: Value<'force'>;
  readonly effectivePower: Value<'power'>;
}

const VESSEL_BALANCE: Method = {
  name: 'vessel speed at a shaft speed',
  text: 'the lowest V at which R(V) = Ns (1 - t) KT(J) ρ (ω / 2π)² D⁴, J = 2π V (1 - w) / (ω D)',
  source: { title: 'balance of thrust and resistance', confidence: 'derived' },
};

/** Torque of the propeller behind the hull, where the flow is uneven. */
export const torqueBehindHull = /* @__PURE__ */ formula({
  name: 'propeller torque behind the hull',
  symbol: 'QB',
  dimension: 'torque',
  inputs: { openWaterTorque: 'torque', relativeRotativeEfficiency: 'ratio' },
  text: 'QB = Q0 / ηR',
  symbols: { openWaterTorque: 'Q0', relativeRotativeEfficiency: 'ηR' },
  source: { title: 'definition of the terms', confidence: 'derived' },
  range: [{ condition: 'ηR 0.9 to 1.1', met: ({ relativeRotativeEfficiency: e }) => e >= 0.9 && e <= 1.1 }],
  compute: ({ openWaterTorque, relativeRotativeEfficiency }) => openWaterTorque / relativeRotativeEfficiency,
});

/** Speed the vessel settles at when its shafts turn at a given speed. */
export function balanceAtShaftSpeed(
  vessel: DrivenVessel,
  shaftSpeed: Value<'rotational speed'>,
): Outcome<Balance> {
  const refusal = refuseVessel(vessel) ?? refuseSpeed(shaftSpeed.si);
  if (refusal) return refusal;
  const { resistance, curve, screws, thrustDeduction, wakeFraction, density } = vessel;
  const advance = 1 - wakeFraction.si;
  const pull = screws.si * (1 - thrustDeduction.si);
  const spare = (V: number): number =>
    pull * loadNumbers(curve, shaftSpeed.si, V * advance, density.si).thrust -
    (resistance.numberAt(V) ?? Number.NaN);
  const zeroThrust = shaftSpeed.si / (slowestDrivingSpeed(curve, 1) * advance);
  const high = Math.min(resistance.highest, zeroThrust);
  const low = resistance.lowest;
  if (high <= low || spare(low) < 0) return doesNotApply(below(resistance));
  if (spare(high) > 0) return doesNotApply(above(resistance));
  const V = firstRoot(spare, low, high, 96);
  if (V === undefined) return doesNotApply(below(resistance));
  return describeBalance(vessel, shaftSpeed, V);
}

/** All figures of a balance whose vessel speed is known. */
export function describeBalance(
  vessel: DrivenVessel,
  shaftSpeed: Value<'rotational speed'>,
  V: number,
): Outcome<Balance> {
  const { curve, screws, wakeFraction, thrustDeduction, density } = vessel;
  const { diameter, pitch, blades, areaRatio } = curve.geometry;
  const vesselSpeed = computed('vessel speed', 'V', 'speed', V, VESSEL_BALANCE, [
    shaftSpeed,
    screws,
    wakeFraction,
    thrustDeduction,
    density,
    diameter,
    pitch,
    blades,
    areaRatio,
  ]);
  const resistance = vessel.resistance.valueAt(vesselSpeed);
  if (!resistance) return doesNotApply(below(vessel.resistance));
  const flow = speedOfAdvance({ vesselSpeed, wakeFraction });
  const open = propellerLoad(curve, shaftSpeed, flow, density);
  const torque = torqueBehindHull({
    openWaterTorque: open.torque,
    relativeRotativeEfficiency: rotative(vessel),
  });
  return {
    applies: true,
    ...open,
    torque,
    power: propellerPower({ torque, shaftSpeed }),
    vesselSpeed,
    shaftSpeed,
    speedOfAdvance: flow,
    resistance,
    effectivePower: effectivePower({ resistance, vesselSpeed }),
  };
}

export function rotative(vessel: DrivenVessel): Value<'ratio'> {
  return (
    vessel.relativeRotativeEfficiency ??
    given('relative rotative efficiency', 'ηR', 'ratio', 1, {
      assumed: 'no figure for the flow behind the hull, 1',
    })
  );
}

/** What makes a vessel impossible to balance before any speed is tried. */
export function refuseVessel(vessel: DrivenVessel) {
  const { screws, wakeFraction: w, thrustDeduction: t, density } = vessel;
  if (!(Number.isInteger(screws.si) && screws.si >= 1))
    return doesNotApply('The number of screws must be 1 or more.');
  if (!(w.si > -0.5 && w.si < 0.9))
    return doesNotApply(`A wake fraction of ${w.si} is not possible; it lies between -0.5 and 0.9.`);
  if (!(t.si >= -0.2 && t.si < 0.9))
    return doesNotApply(`A thrust deduction of ${t.si} is not possible; it lies between -0.2 and 0.9.`);
  if (!(density.si > 0 && Number.isFinite(density.si)))
    return doesNotApply('The density of the water must be a positive number.');
  return undefined;
}

function refuseSpeed(shaftSpeed: number) {
  return shaftSpeed > 0 && Number.isFinite(shaftSpeed)
    ? undefined
    : doesNotApply('The shaft must turn before the vessel can be in balance.');
}

function below(curve: ResistanceCurve): string {
  return `The balance lies below ${curve.lowest.toFixed(2)} m/s, where the ${curve.method} says nothing. Give resistance at lower speeds, or a method that covers them.`;
}

function above(curve: ResistanceCurve): string {
  return `The vessel would go faster than ${curve.highest.toFixed(2)} m/s, where the ${curve.method} says nothing. Give resistance at higher speeds, or a method that covers them.`;
}
