import { formula } from '../core/formula.js';
import { B_SERIES_KQ, B_SERIES_KT } from './data/b-series.js';
import { within } from './limits.js';
import { type Cubic, cubicAt, cubicInAdvance } from './polynomial.js';
import { OOSTERVELD } from './sources.js';
import { drives } from './zero-thrust.js';

interface BladeNumbers {
  readonly pitchRatio: number;
  readonly areaRatio: number;
  readonly blades: number;
}

/** Areas that were actually tested for each number of blades; from memory of the series. */
const TESTED_AREA: Readonly<Record<number, readonly [number, number]>> = {
  2: [0.3, 0.3],
  3: [0.35, 0.8],
  4: [0.4, 1.0],
  5: [0.45, 1.05],
  6: [0.5, 0.8],
  7: [0.55, 0.85],
};

/** Limits of the series, shared by both coefficients and by every computation that uses them. */
export const B_SERIES_LIMITS = [
  {
    condition: '2 to 7 blades',
    met: ({ blades: z }: BladeNumbers) => Number.isInteger(z) && z >= 2 && z <= 7,
  },
  {
    condition: 'expanded area ratio 0.30 to 1.05',
    met: ({ areaRatio: a }: BladeNumbers) => within(a, 0.3, 1.05),
  },
  {
    condition: 'pitch ratio 0.5 to 1.4',
    met: ({ pitchRatio: p }: BladeNumbers) => within(p, 0.5, 1.4),
  },
] as const;

/** A warning rather than a limit: the polynomials bridge areas that were not tested for every blade number. */
export const B_SERIES_TESTED_AREA = {
  condition: 'expanded area ratio among those tested for this number of blades (from memory)',
  met: ({ blades, areaRatio }: BladeNumbers) => {
    const tested = TESTED_AREA[blades];
    return tested !== undefined && within(areaRatio, tested[0], tested[1]);
  },
} as const;

const DRIVING = {
  condition: 'advance ratio from 0 to the point of zero thrust',
  met: (si: BladeNumbers & { readonly advanceRatio: number }) => drives(bSeriesThrust(si), si.advanceRatio),
} as const;

const INPUTS = { advanceRatio: 'ratio', pitchRatio: 'ratio', areaRatio: 'ratio', blades: 'number' } as const;

/** KT of a Wageningen B-series propeller in open water at a blade Reynolds number of 2 million. */
export const bSeriesThrustCoefficient = /* @__PURE__ */ formula({
  name: 'B-series thrust coefficient',
  symbol: 'KT',
  dimension: 'ratio',
  inputs: INPUTS,
  text: 'KT = Σ C J^s (P/D)^t (AE/A0)^u Z^v, 39 terms',
  terms: 'coefficients and powers are those of the published table',
  source: OOSTERVELD,
  range: [...B_SERIES_LIMITS, B_SERIES_TESTED_AREA, DRIVING],
  compute: si => cubicAt(bSeriesThrust(si), si.advanceRatio),
});

/** KQ of the same. */
export const bSeriesTorqueCoefficient = /* @__PURE__ */ formula({
  name: 'B-series torque coefficient',
  symbol: 'KQ',
  dimension: 'ratio',
  inputs: INPUTS,
  text: 'KQ = Σ C J^s (P/D)^t (AE/A0)^u Z^v, 47 terms',
  terms: 'coefficients and powers are those of the published table',
  source: OOSTERVELD,
  range: [...B_SERIES_LIMITS, B_SERIES_TESTED_AREA, DRIVING],
  compute: si => cubicAt(bSeriesTorque(si), si.advanceRatio),
});

/** KT as a cubic in J for one propeller. */
export function bSeriesThrust({ pitchRatio, areaRatio, blades }: BladeNumbers): Cubic {
  return cubicInAdvance(B_SERIES_KT, pitchRatio, areaRatio, blades);
}

/** KQ as a cubic in J for one propeller. */
export function bSeriesTorque({ pitchRatio, areaRatio, blades }: BladeNumbers): Cubic {
  return cubicInAdvance(B_SERIES_KQ, pitchRatio, areaRatio, blades);
}
