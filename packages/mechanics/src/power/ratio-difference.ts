import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const DEFINITION: Source = {
  title: 'definition of the ratio, input speed over output speed',
  confidence: 'derived',
};
const LETTERS = { assumed: 'i_1', actual: 'i_2', exponent: 'n' } as const;
const NOT_ZERO = {
  condition: 'both ratios are above zero',
  met: (si: { readonly assumed: number; readonly actual: number }) => si.assumed > 0 && si.actual > 0,
};

/**
 * How much faster the shaft turns at one engine speed when the ratio is `actual` and not `assumed`:
 * exact against nominal, one clutch against the other, port against starboard.
 */
export const speedDifference = /* @__PURE__ */ formula({
  name: 'shaft speed difference of two ratios',
  symbol: 'Δn',
  dimension: 'ratio',
  inputs: { assumed: 'ratio', actual: 'ratio' },
  text: 'Δn = i_1 / i_2 − 1',
  symbols: LETTERS,
  source: DEFINITION,
  range: [NOT_ZERO],
  compute: ({ assumed, actual }) => assumed / actual - 1,
});

/** How much more power one propeller asks at one engine speed for the same change; exponent 3 unless better is known. */
export const powerDifference = /* @__PURE__ */ formula({
  name: 'propeller power difference of two ratios',
  symbol: 'ΔP',
  dimension: 'ratio',
  inputs: { assumed: 'ratio', actual: 'ratio', exponent: 'ratio' },
  text: 'ΔP = (i_1 / i_2)^n − 1',
  symbols: LETTERS,
  source: { title: 'propeller law for fixed pitch', confidence: 'published' },
  range: [
    NOT_ZERO,
    { condition: 'exponent 2.2 to 3', met: ({ exponent }) => exponent >= 2.2 && exponent <= 3 },
  ],
  compute: ({ assumed, actual, exponent }) => (assumed / actual) ** exponent - 1,
});

/** Ratio that keeps a shaft at its old speed behind another engine. */
export const ratioForSpeed = /* @__PURE__ */ formula({
  name: 'ratio for a shaft speed',
  symbol: 'i',
  dimension: 'ratio',
  inputs: { engineSpeed: 'rotational speed', shaftSpeed: 'rotational speed' },
  text: 'i = n_e / n_s',
  symbols: { engineSpeed: 'n_e', shaftSpeed: 'n_s' },
  source: DEFINITION,
  range: [{ condition: 'shaft speed above zero', met: ({ shaftSpeed }) => shaftSpeed > 0 }],
  compute: ({ engineSpeed, shaftSpeed }) => engineSpeed / shaftSpeed,
});
