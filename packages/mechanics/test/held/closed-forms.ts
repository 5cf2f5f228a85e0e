import type { FormulaSpec, RangeRule } from '../../src/core/formula.js';
import { BEVAN_VIBRATIONS } from '../../src/vibration/sources.js';
import { formula } from './held-formula.js';

/** f = √(k/J) / 2π, Hz: one inertia on a shaft whose other end cannot turn. */
export const oneInertiaFrequency = /* @__PURE__ */ formula({
  name: 'torsional natural frequency of one inertia on a held shaft',
  symbol: 'f',
  dimension: 'frequency',
  inputs: { k: 'torsional stiffness', J: 'moment of inertia' },
  text: 'f = √(k / J) / 2π',
  source: BEVAN_VIBRATIONS,
  range: 'the shaft’s own inertia is left out',
  compute: ({ k, J }) => Math.sqrt(k / J) / (2 * Math.PI),
});

/** f = √(k (J₁ + J₂) / (J₁ J₂)) / 2π, Hz: two inertias on a free shaft. */
export const twoInertiaFrequency = /* @__PURE__ */ formula({
  name: 'torsional natural frequency of two inertias',
  symbol: 'f',
  dimension: 'frequency',
  inputs: { k: 'torsional stiffness', J1: 'moment of inertia', J2: 'moment of inertia' },
  text: 'f = √(k (J1 + J2) / (J1 J2)) / 2π',
  source: BEVAN_VIBRATIONS,
  range: [{ condition: 'both inertias are positive', met: ({ J1, J2 }) => J1 > 0 && J2 > 0 }],
  compute: ({ k, J1, J2 }) => Math.sqrt(k / J1 + k / J2) / (2 * Math.PI),
});

/** x = L J₂ / (J₁ + J₂), m from J₁: the place of the shaft that does not move. */
export const twoInertiaNode = /* @__PURE__ */ formula({
  name: 'node between two inertias',
  symbol: 'x',
  dimension: 'length',
  inputs: { L: 'length', J1: 'moment of inertia', J2: 'moment of inertia' },
  text: 'x = L J2 / (J1 + J2)',
  source: BEVAN_VIBRATIONS,
  range: 'a uniform shaft of length L between the inertias',
  compute: ({ L, J1, J2 }) => (L * J2) / (J1 + J2),
});

const THREE = {
  J1: 'moment of inertia',
  J2: 'moment of inertia',
  J3: 'moment of inertia',
  k1: 'torsional stiffness',
  k2: 'torsional stiffness',
} as const;

const positive: RangeRule<typeof THREE> = {
  condition: 'all three inertias are positive',
  met: ({ J1, J2, J3 }) => J1 > 0 && J2 > 0 && J3 > 0,
};

/**
 * Both frequencies of three inertias in a row, Hz, from
 * ω⁴ − ω² (k₁(1/J₁ + 1/J₂) + k₂(1/J₂ + 1/J₃)) + k₁ k₂ (J₁ + J₂ + J₃)/(J₁ J₂ J₃) = 0.
 */
export const threeInertiaFrequency = { lower: three('lower'), upper: three('upper') };

function three(which: 'lower' | 'upper') {
  const spec: FormulaSpec<typeof THREE, 'frequency'> = {
    name: `${which} torsional natural frequency of three inertias`,
    symbol: which === 'lower' ? 'f₁' : 'f₂',
    dimension: 'frequency',
    inputs: THREE,
    text: `ω⁴ − ω² (k1 (1/J1 + 1/J2) + k2 (1/J2 + 1/J3)) + k1 k2 (J1 + J2 + J3)/(J1 J2 J3) = 0; ${which} root, f = ω/2π`,
    terms: `f is the ${which} root of this equation`,
    source: BEVAN_VIBRATIONS,
    range: [positive],
    compute: ({ J1, J2, J3, k1, k2 }) => {
      const sum = k1 / J1 + k1 / J2 + k2 / J2 + k2 / J3;
      const product = (k1 * k2 * (J1 + J2 + J3)) / (J1 * J2 * J3);
      const upper = (sum + Math.sqrt(sum ** 2 - 4 * product)) / 2;
      // The lower root by division: subtraction would lose its digits when the two are far apart.
      return Math.sqrt(which === 'upper' ? upper : product / upper) / (2 * Math.PI);
    },
  };
  return formula(spec);
}
