import { formula } from '../core/formula.js';
import { B_SERIES_KQ_REYNOLDS, B_SERIES_KT_REYNOLDS } from './data/b-series.js';
import { type Cubic, cubicAt, reynoldsCubic } from './polynomial.js';
import { OOSTERVELD } from './sources.js';

interface BladeNumbers {
  readonly pitchRatio: number;
  readonly areaRatio: number;
  readonly blades: number;
}

/** Between these the correction holds. */
export const REYNOLDS_LIMIT = {
  condition: 'blade Reynolds number 2e6 to 2e9 (upper limit from memory)',
  met: ({ reynoldsNumber: r }: { readonly reynoldsNumber: number }) => r >= 2e6 && r <= 2e9,
} as const;

/** Chord of a B-series blade at three quarters of the radius. */
export const bladeChord = /* @__PURE__ */ formula({
  name: 'blade chord at three quarters of the radius',
  symbol: 'c0.75',
  dimension: 'length',
  inputs: { areaRatio: 'ratio', diameter: 'length', blades: 'number' },
  text: 'c0.75 = 2.073 (AE/A0) D / Z',
  symbols: { areaRatio: 'AE/A0', diameter: 'D', blades: 'Z' },
  source: {
    author: 'Holtrop and Mennen',
    title: 'An approximate power prediction method, International Shipbuilding Progress 29',
    year: 1982,
    confidence: 'published',
  },
  range: [{ condition: '2 to 7 blades', met: ({ blades: z }) => Number.isInteger(z) && z >= 2 && z <= 7 }],
  compute: ({ areaRatio, diameter, blades }) => (2.073 * areaRatio * diameter) / blades,
});

/** Reynolds number of the blade section at three quarters of the radius. */
export const bladeReynoldsNumber = /* @__PURE__ */ formula({
  name: 'blade Reynolds number',
  symbol: 'Rn',
  dimension: 'number',
  inputs: {
    chord: 'length',
    speedOfAdvance: 'speed',
    shaftSpeed: 'rotational speed',
    diameter: 'length',
    viscosity: 'kinematic viscosity',
  },
  text: 'Rn = c0.75 √(VA² + (0.75 ω D / 2)²) / ν',
  symbols: { chord: 'c0.75', speedOfAdvance: 'VA', shaftSpeed: 'ω', diameter: 'D', viscosity: 'ν' },
  source: OOSTERVELD,
  range: 'Definition of the Reynolds number of a blade section.',
  compute: ({ chord, speedOfAdvance, shaftSpeed, diameter, viscosity }) =>
    (chord * Math.hypot(speedOfAdvance, 0.375 * shaftSpeed * diameter)) / viscosity,
});

const INPUTS = {
  advanceRatio: 'ratio',
  pitchRatio: 'ratio',
  areaRatio: 'ratio',
  blades: 'number',
  reynoldsNumber: 'number',
} as const;

/** What to add to KT at 2e6 for another blade Reynolds number. */
export const thrustReynoldsCorrection = /* @__PURE__ */ formula({
  name: 'B-series Reynolds correction of the thrust coefficient',
  symbol: 'ΔKT',
  dimension: 'ratio',
  inputs: INPUTS,
  text: 'ΔKT = Σ C J^s (P/D)^t (AE/A0)^u Z^v L^w, L = log10 Rn - 0.301, 9 terms',
  terms: 'coefficients and powers are those of the published table',
  source: OOSTERVELD,
  range: [REYNOLDS_LIMIT],
  compute: si => cubicAt(thrustCorrectionCubic(si, si.reynoldsNumber), si.advanceRatio),
});

/** What to add to KQ at 2e6. */
export const torqueReynoldsCorrection = /* @__PURE__ */ formula({
  name: 'B-series Reynolds correction of the torque coefficient',
  symbol: 'ΔKQ',
  dimension: 'ratio',
  inputs: INPUTS,
  text: 'ΔKQ = Σ C J^s (P/D)^t (AE/A0)^u Z^v L^w, L = log10 Rn - 0.301, 13 terms',
  terms: 'coefficients and powers are those of the published table',
  source: OOSTERVELD,
  range: [REYNOLDS_LIMIT],
  compute: si => cubicAt(torqueCorrectionCubic(si, si.reynoldsNumber), si.advanceRatio),
});

export function thrustCorrectionCubic(blade: BladeNumbers, reynoldsNumber: number): Cubic {
  const { pitchRatio, areaRatio, blades } = blade;
  return reynoldsCubic(
    B_SERIES_KT_REYNOLDS,
    pitchRatio,
    areaRatio,
    blades,
    Math.log10(reynoldsNumber) - 0.301,
  );
}

export function torqueCorrectionCubic(blade: BladeNumbers, reynoldsNumber: number): Cubic {
  const { pitchRatio, areaRatio, blades } = blade;
  return reynoldsCubic(
    B_SERIES_KQ_REYNOLDS,
    pitchRatio,
    areaRatio,
    blades,
    Math.log10(reynoldsNumber) - 0.301,
  );
}
