import { formula } from '../core/formula.js';
import type { Value } from '../core/value.js';
import { type EngineCurve, engineTorque } from './engine-curve.js';
import type { OpenWaterCurve } from './open-water.js';
import { computed, doesNotApply, type Method, type Outcome } from './outcome.js';
import { loadNumbers, type PropellerLoad, propellerLoad } from './propeller-load.js';
import { lastFall } from './roots.js';
import { DEFINITION } from './sources.js';

/** What stands between the engine and the propeller. */
export interface Driveline {
  /** Engine speed over shaft speed. */
  readonly ratio: Value<'ratio'>;
  /** Power at the propeller over power at the engine. */
  readonly efficiency: Value<'ratio'>;
}

export interface EquilibriumCase {
  readonly curve: OpenWaterCurve;
  readonly engine: EngineCurve;
  readonly driveline: Driveline;
  readonly speedOfAdvance: Value<'speed'>;
  readonly density: Value<'density'>;
}

/** Where engine and propeller agree, at full throttle. */
export interface Equilibrium extends PropellerLoad {
  readonly engineSpeed: Value<'rotational speed'>;
  readonly shaftSpeed: Value<'rotational speed'>;
  /** Torque the engine would give at this speed. */
  readonly torqueAvailable: Value<'torque'>;
  /** Torque asked of the engine over torque it can give. */
  readonly loadFraction: Value<'ratio'>;
  /** True when the engine reaches the end of its table with torque to spare: the table, not the load, stops it. */
  readonly endOfTable: boolean;
}

const ENGINE_PROPELLER_BALANCE: Method = {
  name: 'engine and propeller equilibrium',
  text: 'the highest ωe at which Qe(ωe) i η = KQ(J) ρ (ωe / 2π i)² D⁵, or the end of the engine table',
  source: DEFINITION,
};

export const engineLoadFraction = /* @__PURE__ */ formula({
  name: 'engine load fraction',
  symbol: 'Qe / Qe,max',
  dimension: 'ratio',
  inputs: { propellerTorque: 'torque', torqueAvailable: 'torque', ratio: 'ratio', efficiency: 'ratio' },
  text: 'load = Q / (i η Qe,max)',
  symbols: { propellerTorque: 'Q', torqueAvailable: 'Qe,max', ratio: 'i', efficiency: 'η' },
  source: DEFINITION,
  range: [
    {
      condition: 'engine torque at this speed above zero',
      met: ({ torqueAvailable }) => torqueAvailable > 0,
    },
  ],
  compute: ({ propellerTorque, torqueAvailable, ratio, efficiency }) =>
    propellerTorque / (ratio * efficiency * torqueAvailable),
});

export const shaftSpeedThroughGear = /* @__PURE__ */ formula({
  name: 'propeller shaft speed',
  symbol: 'ωs',
  dimension: 'rotational speed',
  inputs: { engineSpeed: 'rotational speed', ratio: 'ratio' },
  text: 'ωs = ωe / i',
  symbols: { engineSpeed: 'ωe', ratio: 'i' },
  source: DEFINITION,
  range: 'Definition of the reduction ratio.',
  compute: ({ engineSpeed, ratio }) => engineSpeed / ratio,
});

/** Full-throttle equilibrium at a known speed of advance; zero is the bollard. */
export function engineEquilibrium(given: EquilibriumCase): Outcome<Equilibrium> {
  const { curve, engine, driveline, speedOfAdvance, density } = given;
  const refusal = refuse(given);
  if (refusal) return refusal;
  const ratio = driveline.ratio.si;
  const atShaft = ratio * driveline.efficiency.si;
  const spare = (engineSpeed: number): number =>
    (engine.torqueAt(engineSpeed) ?? 0) * atShaft -
    loadNumbers(curve, engineSpeed / ratio, speedOfAdvance.si, density.si).torque;
  const driving = slowestDrivingSpeed(curve, speedOfAdvance.si) * ratio;
  const low = Math.max(engine.lowest, driving);
  if (low >= engine.highest)
    return doesNotApply(
      'At this speed of advance the water turns the propeller faster than the engine can: there is no driving equilibrium.',
    );
  const endOfTable = spare(engine.highest) >= 0;
  const speed = endOfTable ? engine.highest : lastFall(spare, low, engine.highest, 256);
  if (speed === undefined)
    return doesNotApply(
      'At every speed in the engine table the propeller asks for more torque than the engine gives, so the engine could not pull up to any of them. Check pitch, diameter and ratio, or extend the table downwards.',
    );
  return { applies: true, ...describe(given, speed), endOfTable };
}

/** Shaft speed at which the thrust falls to zero in a given flow: below it the water drives the propeller. */
export function slowestDrivingSpeed(curve: OpenWaterCurve, speedOfAdvance: number): number {
  return (2 * Math.PI * Math.max(0, speedOfAdvance)) / (curve.zeroThrust * curve.geometry.diameter.si);
}

function refuse({ driveline, speedOfAdvance, density }: EquilibriumCase) {
  if (!(driveline.ratio.si > 0 && Number.isFinite(driveline.ratio.si)))
    return doesNotApply('The reduction ratio must be a positive number.');
  if (!(driveline.efficiency.si > 0 && driveline.efficiency.si <= 1))
    return doesNotApply('The efficiency of the driveline must be above 0 and at most 1.');
  if (!(speedOfAdvance.si >= 0 && Number.isFinite(speedOfAdvance.si)))
    return doesNotApply('The speed of advance must be zero or more: the series cover driving ahead only.');
  if (!(density.si > 0 && Number.isFinite(density.si)))
    return doesNotApply('The density of the water must be a positive number.');
  return undefined;
}

function describe(given: EquilibriumCase, speed: number): Omit<Equilibrium, 'endOfTable'> {
  const { curve, engine, driveline, speedOfAdvance, density } = given;
  const inputs = [...engine.inputs, driveline.ratio, driveline.efficiency, speedOfAdvance, density];
  const { diameter, pitch, blades, areaRatio } = curve.geometry;
  const engineSpeed = computed(
    'engine speed at equilibrium',
    'ωe',
    'rotational speed',
    speed,
    ENGINE_PROPELLER_BALANCE,
    [...inputs, diameter, pitch, blades, areaRatio],
  );
  const shaftSpeed = shaftSpeedThroughGear({ engineSpeed, ratio: driveline.ratio });
  const load = propellerLoad(curve, shaftSpeed, speedOfAdvance, density);
  const torqueAvailable = engineTorque(engine, engineSpeed)!;
  const loadFraction = engineLoadFraction({
    propellerTorque: load.torque,
    torqueAvailable,
    ratio: driveline.ratio,
    efficiency: driveline.efficiency,
  });
  return { ...load, engineSpeed, shaftSpeed, torqueAvailable, loadFraction };
}
