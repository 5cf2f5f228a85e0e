import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const BALANCE: Source = { title: 'definition of specific fuel consumption', confidence: 'derived' };

/** Fuel that a power takes, from what a unit of work takes. P W; b kg/J; ρ kg/m³; q m³/s. */
export const fuelBySpecific = /* @__PURE__ */ formula({
  name: 'fuel by specific consumption',
  symbol: 'q',
  dimension: 'volume flow',
  inputs: { power: 'power', specificFuel: 'fuel rate', fuelDensity: 'density' },
  text: 'q = b P / ρ',
  symbols: { power: 'P', specificFuel: 'b', fuelDensity: 'ρ' },
  source: BALANCE,
  range: [{ condition: 'the density is above zero', met: si => si.fuelDensity > 0 }],
  compute: si => (si.specificFuel * si.power) / si.fuelDensity,
});

/** Fuel at part load where only one point is declared: as much for each unit of work as there. */
export const fuelInProportion = /* @__PURE__ */ formula({
  name: 'fuel in proportion to power',
  symbol: 'q',
  dimension: 'volume flow',
  inputs: { power: 'power', declaredFlow: 'volume flow', declaredPower: 'power' },
  text: 'q = q₁ P / P₁',
  symbols: { power: 'P', declaredFlow: 'q₁', declaredPower: 'P₁' },
  source: BALANCE,
  range: [
    {
      condition:
        'the power is at least half of that of the declared point: below, an engine burns more for each unit of work',
      met: si => si.power >= 0.5 * si.declaredPower,
    },
  ],
  compute: si => (si.declaredFlow * si.power) / si.declaredPower,
});

/** Fuel between two declared points: at a speed of the engine it is almost linear in power. */
export const fuelBetween = /* @__PURE__ */ formula({
  name: 'fuel between declared points',
  symbol: 'q',
  dimension: 'volume flow',
  inputs: {
    power: 'power',
    lowerPower: 'power',
    lowerFlow: 'volume flow',
    upperPower: 'power',
    upperFlow: 'volume flow',
  },
  text: 'q = q₁ + (q₂ − q₁) (P − P₁) / (P₂ − P₁)',
  symbols: { power: 'P', lowerPower: 'P₁', lowerFlow: 'q₁', upperPower: 'P₂', upperFlow: 'q₂' },
  source: {
    title: 'fuel of a diesel engine is almost linear in power (Willans line)',
    confidence: 'common practice',
  },
  range: [
    {
      condition: 'the power lies between those of the declared points',
      met: si => si.power >= si.lowerPower && si.power <= si.upperPower,
    },
  ],
  compute: si =>
    si.lowerFlow +
    ((si.upperFlow - si.lowerFlow) * (si.power - si.lowerPower)) / (si.upperPower - si.lowerPower),
});

/** Fuel over a distance at a steady speed. q m³/s; s m; V m/s. */
export const fuelForDistance = /* @__PURE__ */ formula({
  name: 'fuel for a distance',
  symbol: 'F',
  dimension: 'volume',
  inputs: { flow: 'volume flow', distance: 'length', vesselSpeed: 'speed' },
  text: 'F = q s / V',
  symbols: { flow: 'q', distance: 's', vesselSpeed: 'V' },
  source: { title: 'definition', confidence: 'derived' },
  range: [{ condition: 'vessel speed above zero', met: si => si.vesselSpeed > 0 }],
  compute: si => (si.flow * si.distance) / si.vesselSpeed,
});

/** Distance that a tank lasts at a steady speed, to the last drop. */
export const distanceOnTank = /* @__PURE__ */ formula({
  name: 'distance on the usable fuel',
  symbol: 's',
  dimension: 'length',
  inputs: { flow: 'volume flow', usableFuel: 'volume', vesselSpeed: 'speed' },
  text: 's = F V / q',
  symbols: { flow: 'q', usableFuel: 'F', vesselSpeed: 'V' },
  source: { title: 'definition', confidence: 'derived' },
  range: [{ condition: 'the fuel flow is above zero', met: si => si.flow > 0 }],
  compute: si => (si.usableFuel * si.vesselSpeed) / si.flow,
});

/** Usual density of marine diesel at 15 °C, kg/m³. */
export const DIESEL_DENSITY = 840;
export const DIESEL_DENSITY_SOURCE: Source = {
  title: 'EN 590: 820 to 845 kg/m³ at 15 °C',
  confidence: 'from memory',
};

/** Declared consumption may be missed by so much without breach. */
export const FUEL_TOLERANCE = 0.05;
export const FUEL_TOLERANCE_SOURCE: Source = {
  title: 'ISO 3046-1, tolerance of declared specific fuel consumption',
  confidence: 'from memory',
};

/** A mode of a weighted cycle: share of rated speed, share of rated power, and its weight. */
export interface CycleMode {
  readonly speed: number;
  readonly power: number;
  readonly weight: number;
}

/** Test cycles of marine engines. The 91 %, 80 % and 63 % speeds of both lie on the propeller law. */
export const MARINE_CYCLES: readonly {
  readonly name: 'E3' | 'E5';
  readonly means: string;
  readonly modes: readonly CycleMode[];
}[] = [
  {
    name: 'E3',
    means: 'propeller law, heavy-duty engines',
    modes: [
      { speed: 1, power: 1, weight: 0.2 },
      { speed: 0.91, power: 0.75, weight: 0.5 },
      { speed: 0.8, power: 0.5, weight: 0.15 },
      { speed: 0.63, power: 0.25, weight: 0.15 },
    ],
  },
  {
    name: 'E5',
    means: 'propeller law, craft of less than 24 m',
    modes: [
      { speed: 1, power: 1, weight: 0.08 },
      { speed: 0.91, power: 0.75, weight: 0.13 },
      { speed: 0.8, power: 0.5, weight: 0.17 },
      { speed: 0.63, power: 0.25, weight: 0.32 },
      { speed: 0, power: 0, weight: 0.3 },
    ],
  },
];
export const MARINE_CYCLES_SOURCE: Source = {
  title: 'ISO 8178-4, cycles E3 and E5',
  confidence: 'from memory',
};

/** Mean share of rated power of a cycle. */
export function cycleLoad(modes: readonly CycleMode[]): number {
  return modes.reduce((sum, { weight, power }) => sum + weight * power, 0);
}
