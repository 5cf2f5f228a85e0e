import { formula } from '../core/formula.js';
import { GAWN_KQ, GAWN_KT } from './data/gawn.js';
import { within } from './limits.js';
import { type Cubic, cubicAt, cubicInAdvance } from './polynomial.js';
import { BLOUNT_HUBBLE } from './sources.js';
import { drives } from './zero-thrust.js';

interface BladeNumbers {
  readonly pitchRatio: number;
  readonly areaRatio: number;
  readonly blades: number;
}

export const GAWN_LIMITS = [
  { condition: '3 blades', met: ({ blades }: BladeNumbers) => blades === 3 },
  {
    condition: 'expanded area ratio 0.5 to 1.1',
    met: ({ areaRatio: a }: BladeNumbers) => within(a, 0.5, 1.1),
  },
  {
    condition: 'pitch ratio 0.8 to 1.4',
    met: ({ pitchRatio: p }: BladeNumbers) => within(p, 0.8, 1.4),
  },
] as const;

const DRIVING = {
  condition: 'advance ratio from 0.3 to the point of zero thrust',
  met: (si: BladeNumbers & { readonly advanceRatio: number }) => drives(gawnThrust(si), si.advanceRatio, 0.3),
} as const;

const INPUTS = { advanceRatio: 'ratio', pitchRatio: 'ratio', areaRatio: 'ratio', blades: 'number' } as const;

/** KT of Gawn's three-blade propellers with flat-face segmental sections. */
export const gawnThrustCoefficient = /* @__PURE__ */ formula({
  name: 'Gawn thrust coefficient',
  symbol: 'KT',
  dimension: 'ratio',
  inputs: INPUTS,
  text: 'KT = Σ C J^s (P/D)^t (AE/A0)^u Z^v, 39 terms',
  terms: 'coefficients and powers are those of the published table',
  source: BLOUNT_HUBBLE,
  range: [...GAWN_LIMITS, DRIVING],
  compute: si => cubicAt(gawnThrust(si), si.advanceRatio),
});

/** KQ of the same. */
export const gawnTorqueCoefficient = /* @__PURE__ */ formula({
  name: 'Gawn torque coefficient',
  symbol: 'KQ',
  dimension: 'ratio',
  inputs: INPUTS,
  text: 'KQ = Σ C J^s (P/D)^t (AE/A0)^u Z^v, 47 terms',
  terms: 'coefficients and powers are those of the published table',
  source: BLOUNT_HUBBLE,
  range: [...GAWN_LIMITS, DRIVING],
  compute: si => cubicAt(gawnTorque(si), si.advanceRatio),
});

export function gawnThrust({ pitchRatio, areaRatio, blades }: BladeNumbers): Cubic {
  return cubicInAdvance(GAWN_KT, pitchRatio, areaRatio, blades);
}

export function gawnTorque({ pitchRatio, areaRatio, blades }: BladeNumbers): Cubic {
  return cubicInAdvance(GAWN_KQ, pitchRatio, areaRatio, blades);
}
