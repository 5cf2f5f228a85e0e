import { EULER_BERNOULLI } from '../../src/vibration/sources.js';
import { formula } from './held-formula.js';

/**
 * Natural frequency of a uniform span carrying only itself, f = β² / (2π L²) · √(EI/μ), Hz.
 * β frequency number of the end conditions and mode; L span, m; E Young's modulus, Pa; I second moment of
 * area, m⁴; μ mass per length, kg/m.
 */
export const uniformSpanFrequency = /* @__PURE__ */ formula({
  name: 'natural frequency of a uniform span',
  symbol: 'f',
  dimension: 'frequency',
  inputs: {
    beta: 'number',
    L: 'length',
    E: 'pressure',
    I: 'second moment of area',
    mu: 'mass per length',
  },
  text: 'f = β² / (2π L²) · √(E I / μ)',
  symbols: { beta: 'β', L: 'L', E: 'E', I: 'I', mu: 'μ' },
  source: EULER_BERNOULLI,
  range: 'a slender, uniform span: shear and rotary inertia are left out',
  compute: ({ beta, L, E, I, mu }) => (beta ** 2 / (2 * Math.PI * L ** 2)) * Math.sqrt((E * I) / mu),
});
