import { type FormulaSpec, formula } from '../../core/formula.js';
import { DUNKERLEY } from '../sources.js';
import { type ForwardEnd, overhungInfluence } from './overhung-influence.js';

const INPUTS = {
  L: 'length',
  b: 'length',
  E: 'pressure',
  I: 'second moment of area',
  m: 'mass',
  Id: 'moment of inertia',
  mu: 'mass per length',
} as const;

/**
 * Lower bound of the lowest lateral frequency of an overhung propeller on a shaft that has mass, Hz:
 * 1/ω² = a11 m + a22 Id + ∫ α(x, x) μ dx, the integral being the shaft's own deflection under a load at each
 * place. It is (b⁴/12 + L b³/9 + L⁴/90)/EI with the forward end pinned, (b⁴/12 + L b³/12 + L⁴/210)/EI with it fixed.
 * L span, b overhang, E, I, μ of the shaft; m mass and Id diametral inertia with entrained water; no gyroscopics.
 */
export const overhungDunkerley = {
  pinned: declare('pinned', 'b⁴/12 + L b³/9 + L⁴/90', 9, 90),
  fixed: declare('fixed', 'b⁴/12 + L b³/12 + L⁴/210', 12, 210),
};

function declare(forward: ForwardEnd, shaftText: string, overhangDivisor: number, spanDivisor: number) {
  const part = forward === 'pinned' ? 3 : 4;
  const spec: FormulaSpec<typeof INPUTS, 'frequency'> = {
    name: `Dunkerley lateral frequency of an overhung propeller, forward end ${forward}`,
    symbol: 'f',
    dimension: 'frequency',
    inputs: INPUTS,
    text: `f = √(E I / (Id (b + L/${part}) + m (b³/3 + b² L/${part}) + μ (${shaftText}))) / 2π`,
    symbols: { mu: 'μ' },
    source: DUNKERLEY,
    range: 'the lowest mode only; the result is a lower bound without gyroscopic moments',
    compute: ({ L, b, E, I, m, Id, mu }) => {
      const { a11, a22 } = overhungInfluence({ L, b, E, I }, forward);
      const shaft = (mu * (b ** 4 / 12 + (L * b ** 3) / overhangDivisor + L ** 4 / spanDivisor)) / (E * I);
      return 1 / (2 * Math.PI * Math.sqrt(a11 * m + a22 * Id + shaft));
    },
  };
  return formula(spec);
}
