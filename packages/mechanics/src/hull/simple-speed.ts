import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { handbook } from '../propeller/sources.js';
import { KNOT } from '../propeller/water.js';
import { FOOT, HORSEPOWER, POUND } from '../units/constants.js';

const CROUCH: Source = {
  author: 'Crouch',
  title: 'planing speed from power and weight',
  clause: 'handbook formula 2-4; two independent public pages agree',
  confidence: 'published',
};

/** Crouch's constant, in knots, horsepower and pounds; from memory of the handbook table. */
export const CROUCH_CONSTANTS: readonly { readonly craft: string; readonly knots: number }[] = [
  { craft: 'average runabouts, cruisers, passenger vessels', knots: 150 },
  { craft: 'high-speed runabouts, very light high-speed cruisers', knots: 190 },
  { craft: 'race boat types', knots: 210 },
  { craft: 'three-point and stepped hydroplanes', knots: 220 },
  { craft: 'racing power catamarans and sea sleds', knots: 230 },
];
/** A constant for other units than knots, horsepower and pounds, times this, is one for those. Exact. */
export const CROUCH_CONVERSION = {
  'miles per hour, hp, lb': 1609.344 / 3600 / KNOT,
  'knots, kW, kg': Math.sqrt(HORSEPOWER / 1000 / POUND),
} as const;
export const CROUCH_CONSTANTS_SOURCE: Source = handbook("2-4, Crouch's constants");

/** Speed over the square root of waterline length, kn/ft^½: the trade's yardstick of how fast is fast. */
export const speedLengthRatio = /* @__PURE__ */ formula({
  name: 'speed-length ratio',
  symbol: 'V/√L',
  dimension: 'number',
  inputs: { vesselSpeed: 'speed', waterlineLength: 'length' },
  units: { vesselSpeed: 'kn', waterlineLength: 'ft' },
  text: 'V / √LWL (kn, ft)',
  symbols: { vesselSpeed: 'V', waterlineLength: 'LWL' },
  source: { title: 'definition of the terms', confidence: 'derived' },
  range: 'Definition.',
  compute: ({ vesselSpeed, waterlineLength }) => vesselSpeed / KNOT / Math.sqrt(waterlineLength / FOOT),
});

/** Planing speed by Crouch; power is that at the propeller, whose efficiency is taken as 0.50 to 0.60. */
export const crouchSpeed = /* @__PURE__ */ formula({
  name: 'planing speed by Crouch',
  symbol: 'V',
  dimension: 'speed',
  inputs: { power: 'power', displacement: 'mass', constant: 'number', waterlineLength: 'length' },
  units: { power: 'hp', displacement: 'lb', waterlineLength: 'ft' },
  unit: 'kn',
  text: 'V = C √(SHP / W) (kn, hp, lb)',
  symbols: { power: 'SHP', displacement: 'W', constant: 'C' },
  source: CROUCH,
  range: [
    { condition: 'constant 150 to 230', met: ({ constant: c }) => c >= 150 && c <= 230 },
    {
      condition:
        'planing: speed-length ratio of the result at least 2.5 (from memory); below it this hull does not plane',
      met: si => crouch(si) / KNOT / Math.sqrt(si.waterlineLength / FOOT) >= 2.5,
    },
  ],
  compute: si => crouch(si),
});

/** Speed at which the wave a displacement hull makes is as long as its waterline. */
export const hullSpeed = /* @__PURE__ */ formula({
  name: 'hull speed',
  symbol: 'Vh',
  dimension: 'speed',
  inputs: { waterlineLength: 'length' },
  units: { waterlineLength: 'ft' },
  unit: 'kn',
  text: 'Vh = 1.34 √LWL (kn, ft)',
  symbols: { waterlineLength: 'LWL' },
  source: { title: 'length of a deep-water wave that travels with the hull', confidence: 'published' },
  range: [
    {
      condition: 'displacement hull; waterline length above zero',
      met: ({ waterlineLength }) => waterlineLength > 0,
    },
  ],
  compute: ({ waterlineLength }) => 1.34 * Math.sqrt(Math.max(0, waterlineLength) / FOOT) * KNOT,
});

/** Displacement over length cubed, in the trade's units: heavy hulls are above 300. */
export const displacementLengthRatio = /* @__PURE__ */ formula({
  name: 'displacement-length ratio',
  symbol: 'DL',
  dimension: 'number',
  inputs: { displacement: 'mass', waterlineLength: 'length' },
  units: { displacement: 'lb', waterlineLength: 'ft' },
  text: 'DL = (W / 2240) / (0.01 LWL)³ (lb, ft)',
  symbols: { displacement: 'W', waterlineLength: 'LWL' },
  source: { title: 'definition of the terms', confidence: 'derived' },
  range: 'Definition.',
  compute: si => displacementLength(si),
});

/** The speed-length ratio that power can buy, were there no limit. */
export const displacementSpeedLength = /* @__PURE__ */ formula({
  name: 'speed-length ratio from power, handbook',
  symbol: 'SL',
  dimension: 'number',
  inputs: { displacement: 'mass', power: 'power' },
  units: { displacement: 'lb', power: 'hp' },
  text: 'SL = 10.665 / (W / SHP)^(1/3) (lb, hp)',
  symbols: { displacement: 'W', power: 'SHP' },
  source: handbook('2-1, displacement speed; one published result is met exactly'),
  range: [{ condition: 'power above zero', met: ({ power }) => power > 0 }],
  compute: si => poweredSpeedLength(si),
});

/** Speed of a displacement or semi-displacement hull from its power, never above what its weight allows. */
export const displacementSpeed = /* @__PURE__ */ formula({
  name: 'displacement speed, handbook',
  symbol: 'V',
  dimension: 'speed',
  inputs: { displacement: 'mass', power: 'power', waterlineLength: 'length' },
  units: { displacement: 'lb', power: 'hp', waterlineLength: 'ft' },
  unit: 'kn',
  text: 'V = min(10.665 / (W / SHP)^(1/3), 8.26 / (W / 2240 / (0.01 LWL)³)^0.311) √LWL (kn, lb, hp, ft)',
  symbols: { displacement: 'W', power: 'SHP', waterlineLength: 'LWL' },
  source: handbook('2-1 to 2-3'),
  range: [
    { condition: 'power above zero', met: ({ power }) => power > 0 },
    {
      condition: 'displacement-length ratio 60 to 600',
      met: si => displacementLength(si) >= 60 && displacementLength(si) <= 600,
    },
    {
      condition:
        'power at most what the hull can use; beyond it the speed shown is the cap and the method does not apply',
      met: si => poweredSpeedLength(si) <= 8.26 / displacementLength(si) ** 0.311,
    },
  ],
  compute: si =>
    Math.min(poweredSpeedLength(si), 8.26 / displacementLength(si) ** 0.311) *
    Math.sqrt(si.waterlineLength / FOOT) *
    KNOT,
});

const ADMIRALTY: Source = {
  title: 'Admiralty coefficient',
  clause: 'Stokoe, as cited in a public note, and a public examination text',
  confidence: 'published',
};

/** Coefficient of a trial or sister vessel: displacement in tonnes, speed in knots, power in kW. */
export const admiraltyCoefficient = /* @__PURE__ */ formula({
  name: 'Admiralty coefficient',
  symbol: 'C',
  dimension: 'number',
  inputs: { displacement: 'mass', vesselSpeed: 'speed', power: 'power' },
  units: { displacement: 't', vesselSpeed: 'kn', power: 'kW' },
  text: 'C = Δ^(2/3) V³ / P (t, kn, kW)',
  symbols: { displacement: 'Δ', vesselSpeed: 'V', power: 'P' },
  source: ADMIRALTY,
  range: [{ condition: 'power above zero', met: ({ power }) => power > 0 }],
  compute: ({ displacement, vesselSpeed, power }) =>
    ((displacement / 1000) ** (2 / 3) * (vesselSpeed / KNOT) ** 3) / (power / 1000),
});

function crouch(si: {
  readonly power: number;
  readonly displacement: number;
  readonly constant: number;
}): number {
  return si.constant * Math.sqrt(si.power / HORSEPOWER / (si.displacement / POUND)) * KNOT;
}

function displacementLength(si: { readonly displacement: number; readonly waterlineLength: number }): number {
  return si.displacement / POUND / 2240 / (0.01 * (si.waterlineLength / FOOT)) ** 3;
}

function poweredSpeedLength(si: { readonly displacement: number; readonly power: number }): number {
  return 10.665 / Math.cbrt(si.displacement / POUND / (si.power / HORSEPOWER));
}
