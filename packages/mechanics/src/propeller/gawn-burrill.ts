import { formula } from '../core/formula.js';
import { GAWN_BURRILL_KQ, GAWN_BURRILL_KT, type KcaTerm } from './data/gawn-burrill.js';
import { within } from './limits.js';
import { type Cubic, cubicAt, cubicInAdvance, type Term } from './polynomial.js';
import { RADOJCIC } from './sources.js';
import { drives } from './zero-thrust.js';

interface BladeNumbers {
  readonly pitchRatio: number;
  readonly developedAreaRatio: number;
  readonly blades: number;
}

export const GAWN_BURRILL_LIMITS = [
  { condition: '3 blades', met: ({ blades }: BladeNumbers) => blades === 3 },
  {
    condition: 'developed area ratio 0.5 to 1.1',
    met: ({ developedAreaRatio: a }: BladeNumbers) => within(a, 0.5, 1.1),
  },
  {
    condition: 'pitch ratio 0.8 to 1.8',
    met: ({ pitchRatio: p }: BladeNumbers) => within(p, 0.8, 1.8),
  },
] as const;

const DRIVING = {
  condition: 'advance ratio from 0.3 to the point of zero thrust',
  met: (si: BladeNumbers & { readonly advanceRatio: number }) =>
    drives(gawnBurrillThrust(si), si.advanceRatio, 0.3),
} as const;

const INPUTS = {
  advanceRatio: 'ratio',
  pitchRatio: 'ratio',
  developedAreaRatio: 'ratio',
  blades: 'number',
} as const;

/** KT of the Gawn-Burrill KCA propellers: three blades, flat faces, without cavitation. */
export const gawnBurrillThrustCoefficient = /* @__PURE__ */ formula({
  name: 'Gawn-Burrill thrust coefficient',
  symbol: 'KT',
  dimension: 'ratio',
  inputs: INPUTS,
  text: 'KT = Σ C 10^e (AD/A0)^x (P/D)^y J^z, 16 terms',
  terms: 'coefficients and powers are those of the published table',
  source: RADOJCIC,
  range: [...GAWN_BURRILL_LIMITS, DRIVING],
  compute: si => cubicAt(gawnBurrillThrust(si), si.advanceRatio),
});

/** KQ of the same. */
export const gawnBurrillTorqueCoefficient = /* @__PURE__ */ formula({
  name: 'Gawn-Burrill torque coefficient',
  symbol: 'KQ',
  dimension: 'ratio',
  inputs: INPUTS,
  text: 'KQ = Σ C 10^e (AD/A0)^x (P/D)^y J^z, 17 terms',
  terms: 'coefficients and powers are those of the published table',
  source: RADOJCIC,
  range: [...GAWN_BURRILL_LIMITS, DRIVING],
  compute: si => cubicAt(gawnBurrillTorque(si), si.advanceRatio),
});

const THRUST_TERMS = GAWN_BURRILL_KT.map(asTerm);
const TORQUE_TERMS = GAWN_BURRILL_KQ.map(asTerm);

export function gawnBurrillThrust({ pitchRatio, developedAreaRatio }: BladeNumbers): Cubic {
  return cubicInAdvance(THRUST_TERMS, pitchRatio, developedAreaRatio, 1);
}

export function gawnBurrillTorque({ pitchRatio, developedAreaRatio }: BladeNumbers): Cubic {
  return cubicInAdvance(TORQUE_TERMS, pitchRatio, developedAreaRatio, 1);
}

/** The KCA table written in the columns of the other series; the number of blades plays no part in it. */
function asTerm([c, e, x, y, z]: KcaTerm): Term {
  return [c * 10 ** e, z, y, x, 0];
}
