import { formula } from '../core/formula.js';
import type { Value } from '../core/value.js';
import type { Driveline } from './equilibrium.js';
import { shaftSpeedThroughGear } from './equilibrium.js';
import type { OpenWaterCurve } from './open-water.js';
import { type PropellerLoad, propellerLoad } from './propeller-load.js';
import { DEFINITION } from './sources.js';

/** What the propeller would ask at rated speed, against what the engine delivers there. */
export interface RatedLoad extends PropellerLoad {
  readonly shaftSpeed: Value<'rotational speed'>;
  readonly deliveredPower: Value<'power'>;
  /** Power absorbed at rated speed over power delivered: above 1 the engine cannot reach rated speed. */
  readonly demand: Value<'ratio'>;
  readonly reachesRatedSpeed: boolean;
}

export const deliveredPower = /* @__PURE__ */ formula({
  name: 'power delivered to the propeller',
  symbol: 'PD,max',
  dimension: 'power',
  inputs: { enginePower: 'power', efficiency: 'ratio' },
  text: 'PD,max = P η',
  symbols: { enginePower: 'P', efficiency: 'η' },
  source: DEFINITION,
  range: [{ condition: 'efficiency above 0, at most 1', met: ({ efficiency: e }) => e > 0 && e <= 1 }],
  compute: ({ enginePower, efficiency }) => enginePower * efficiency,
});

export const ratedDemand = /* @__PURE__ */ formula({
  name: 'power demand at rated speed',
  symbol: 'PD / PD,max',
  dimension: 'ratio',
  inputs: { absorbed: 'power', delivered: 'power' },
  text: 'demand = PD / PD,max',
  symbols: { absorbed: 'PD', delivered: 'PD,max' },
  source: DEFINITION,
  range: [{ condition: 'delivered power above zero', met: ({ delivered }) => delivered > 0 }],
  compute: ({ absorbed, delivered }) => absorbed / delivered,
});

/** Whether a propeller lets its engine reach rated speed at a known speed of advance. */
export function ratedLoad(
  curve: OpenWaterCurve,
  ratedSpeed: Value<'rotational speed'>,
  ratedPower: Value<'power'>,
  driveline: Driveline,
  speedOfAdvance: Value<'speed'>,
  density: Value<'density'>,
): RatedLoad {
  const shaftSpeed = shaftSpeedThroughGear({ engineSpeed: ratedSpeed, ratio: driveline.ratio });
  const load = propellerLoad(curve, shaftSpeed, speedOfAdvance, density);
  const delivered = deliveredPower({ enginePower: ratedPower, efficiency: driveline.efficiency });
  const demand = ratedDemand({ absorbed: load.power, delivered });
  return { ...load, shaftSpeed, deliveredPower: delivered, demand, reachesRatedSpeed: demand.si <= 1 };
}
