import { overhungInfluence } from '../../src/vibration/lateral/overhung-influence.js';
import { formula } from './held-formula.js';

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
 * Panagopulos' version, Hz, with shaft coefficients b⁴/8 + L b³/9 + 7L⁴/360. The coefficients are from memory and
 * unconfirmed; they give a lower frequency than Dunkerley, which is already a lower bound. Shown for comparison only.
 */
export const overhungPanagopulos = /* @__PURE__ */ formula({
  name: 'lateral frequency of an overhung propeller by Panagopulos’ coefficients',
  symbol: 'f',
  dimension: 'frequency',
  inputs: INPUTS,
  text: 'f = √(E I / (Id (b + L/3) + m b² (b + L)/3 + μ (b⁴/8 + L b³/9 + 7 L⁴/360))) / 2π',
  symbols: { L: 'L', b: 'b', E: 'E', I: 'I', m: 'm', Id: 'Id', mu: 'μ' },
  source: {
    author: 'E. P. Panagopulos',
    title: 'Design-stage calculations of torsional, axial, and lateral vibrations of marine shafting',
    confidence: 'from memory',
  },
  range: [{ condition: 'the coefficients are unconfirmed: use for comparison only', met: () => false }],
  compute: ({ L, b, E, I, m, Id, mu }) => {
    const { a11, a22 } = overhungInfluence({ L, b, E, I }, 'pinned');
    const shaft = (mu * (b ** 4 / 8 + (L * b ** 3) / 9 + (7 * L ** 4) / 360)) / (E * I);
    return 1 / (2 * Math.PI * Math.sqrt(a11 * m + a22 * Id + shaft));
  },
});
