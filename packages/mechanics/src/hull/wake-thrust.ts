import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { handbook } from '../propeller/sources.js';
import { STANDARD_GRAVITY } from '../units/constants.js';

const TAYLOR_SINGLE: Source = {
  author: 'Taylor',
  title: 'wake fraction by block coefficient',
  clause: 'a public formula note and a public examination text agree',
  year: 1943,
  confidence: 'published',
};

const BLOCK = [
  {
    condition: 'displacement hull with block coefficient 0.35 to 0.80 (our caution)',
    met: ({ blockCoefficient: c }: { readonly blockCoefficient: number }) => c >= 0.35 && c <= 0.8,
  },
] as const;

export const taylorWakeSingle = /* @__PURE__ */ formula({
  name: 'Taylor wake fraction, single screw',
  symbol: 'w',
  dimension: 'ratio',
  inputs: { blockCoefficient: 'ratio' },
  text: 'w = 0.50 CB - 0.05',
  symbols: { blockCoefficient: 'CB' },
  source: TAYLOR_SINGLE,
  range: BLOCK,
  compute: ({ blockCoefficient: c }) => 0.5 * c - 0.05,
});

/** One note credits Taylor with this; another gives 0.25 CB - 0.05 for the same thing and credits Harvald 1983. */
export const taylorWakeTwin = /* @__PURE__ */ formula({
  name: 'Taylor wake fraction, twin screw',
  symbol: 'w',
  dimension: 'ratio',
  inputs: { blockCoefficient: 'ratio' },
  text: 'w = 0.55 CB - 0.20',
  symbols: { blockCoefficient: 'CB' },
  source: {
    ...TAYLOR_SINGLE,
    clause: 'one public formula note; another credits 0.25 CB - 0.05 to Harvald 1983',
  },
  range: BLOCK,
  compute: ({ blockCoefficient: c }) => 0.55 * c - 0.2,
});

export const handbookWakeSingle = /* @__PURE__ */ formula({
  name: 'wake fraction, handbook, single screw',
  symbol: 'w',
  dimension: 'ratio',
  inputs: { blockCoefficient: 'ratio' },
  text: 'w = 1 - (1.11 - 0.6 CB)',
  symbols: { blockCoefficient: 'CB' },
  source: handbook('6-4, wake factor'),
  range: BLOCK,
  compute: ({ blockCoefficient: c }) => 1 - (1.11 - 0.6 * c),
});

export const handbookWakeTwin = /* @__PURE__ */ formula({
  name: 'wake fraction, handbook, twin screw',
  symbol: 'w',
  dimension: 'ratio',
  inputs: { blockCoefficient: 'ratio' },
  text: 'w = 1 - (1.06 - 0.4 CB)',
  symbols: { blockCoefficient: 'CB' },
  source: handbook('6-4, wake factor'),
  range: BLOCK,
  compute: ({ blockCoefficient: c }) => 1 - (1.06 - 0.4 * c),
});

/** Speed made dimensionless with the volume of the hull; 1.0 and over is on the way to planing. */
export const volumeFroudeNumber = /* @__PURE__ */ formula({
  name: 'volume Froude number',
  symbol: 'Fn∇',
  dimension: 'ratio',
  inputs: { vesselSpeed: 'speed', displacedVolume: 'volume' },
  text: 'Fn∇ = V / √(g ∇^(1/3))',
  symbols: { vesselSpeed: 'V', displacedVolume: '∇' },
  source: { title: 'definition of the terms', confidence: 'derived' },
  range: 'Definition.',
  compute: ({ vesselSpeed, displacedVolume }) =>
    vesselSpeed / Math.sqrt(STANDARD_GRAVITY * Math.cbrt(displacedVolume)),
});

const BLOUNT_FOX: Source = {
  author: 'Blount and Fox',
  title: 'Small-craft power prediction, Marine Technology 13(1), 14-45',
  clause: 'table recalled, low confidence; a default to be replaced by trial or test figures',
  year: 1976,
  confidence: 'from memory',
};

/** Volume Froude number, 1 - w. */
const PLANING_TWIN_WAKE: readonly (readonly [number, number])[] = [
  [0.5, 1.05],
  [1.0, 1.06],
  [1.5, 1.04],
  [2.0, 0.99],
  [2.5, 0.97],
  [3.0, 0.975],
  [3.5, 0.98],
  [4.0, 0.975],
];

const PLANING = [
  {
    condition: 'volume Froude number 0.5 to 4.0',
    met: ({ volumeFroudeNumber: f }: { readonly volumeFroudeNumber: number }) => f >= 0.5 && f <= 4,
  },
] as const;

/** Wake of a planing hull with twin screws on inclined shafts; negative where the flow is faster than the boat. */
export const planingTwinWake = /* @__PURE__ */ formula({
  name: 'wake fraction, planing twin screw',
  symbol: 'w',
  dimension: 'ratio',
  inputs: { volumeFroudeNumber: 'ratio' },
  text: 'w = table value at Fn∇, straight lines between rows',
  terms: 'read from the table of the source',
  source: BLOUNT_FOX,
  range: PLANING,
  compute: ({ volumeFroudeNumber: f }) => 1 - between(PLANING_TWIN_WAKE, f),
});

/** Thrust deduction of the same table, the same at every speed. */
export const PLANING_TWIN_THRUST_DEDUCTION = { value: 0.08, source: BLOUNT_FOX } as const;

/** Resistance of the bare planing hull over that with shafts, brackets and rudders. */
export const planingAppendageEfficiency = /* @__PURE__ */ formula({
  name: 'appendage efficiency, planing twin screw',
  symbol: 'ηA',
  dimension: 'ratio',
  inputs: { volumeFroudeNumber: 'ratio' },
  text: 'ηA = 1 / (0.005 Fn∇² + 1.05)',
  symbols: { volumeFroudeNumber: 'Fn∇' },
  source: BLOUNT_FOX,
  range: PLANING,
  compute: ({ volumeFroudeNumber: f }) => 1 / (0.005 * f * f + 1.05),
});

export const effectivePower = /* @__PURE__ */ formula({
  name: 'effective power',
  symbol: 'PE',
  dimension: 'power',
  inputs: { resistance: 'force', vesselSpeed: 'speed' },
  text: 'PE = R V',
  symbols: { resistance: 'R', vesselSpeed: 'V' },
  source: { title: 'definition of the terms', confidence: 'derived' },
  range: 'Definition.',
  compute: ({ resistance, vesselSpeed }) => resistance * vesselSpeed,
});

/** Table value by straight lines; outside, the nearest row, which the range then flags. */
function between(rows: readonly (readonly [number, number])[], x: number): number {
  const last = rows.length - 1;
  if (x <= rows[0]![0]) return rows[0]![1];
  for (let index = 1; index <= last; index++) {
    const [x1, y1] = rows[index]!;
    const [x0, y0] = rows[index - 1]!;
    if (x <= x1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return rows[last]![1];
}
