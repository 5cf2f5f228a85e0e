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
