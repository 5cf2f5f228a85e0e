import { STANDARD_GRAVITY } from '../../src/units/constants.js';
import { BEVAN_VIBRATIONS } from '../../src/vibration/sources.js';
import { formula } from './held-formula.js';

const inside = {
  condition: 'the mass sits between the supports',
  met: ({ a, b }: { a: number; b: number }) => a > 0 && b > 0,
};

/** δ = W L³ / (3 E I), m: load W (N) at the free end of a cantilever of length L. */
export const cantileverEndDeflection = /* @__PURE__ */ formula({
  name: 'deflection of a cantilever under an end load',
  symbol: 'δ',
  dimension: 'length',
  inputs: { W: 'force', L: 'length', E: 'pressure', I: 'second moment of area' },
  text: 'δ = W L³ / (3 E I)',
  source: BEVAN_VIBRATIONS,
  range: 'small deflections of a uniform, slender shaft',
  compute: ({ W, L, E, I }) => (W * L ** 3) / (3 * E * I),
});

/** δ = W a² b² / (3 E I (a + b)), m: load W at a from one simple support and b from the other. */
export const pinnedSpanDeflection = /* @__PURE__ */ formula({
  name: 'deflection of a simply supported span under a load',
  symbol: 'δ',
  dimension: 'length',
  inputs: { W: 'force', a: 'length', b: 'length', E: 'pressure', I: 'second moment of area' },
  text: 'δ = W a² b² / (3 E I (a + b))',
  source: BEVAN_VIBRATIONS,
  range: [inside],
  compute: ({ W, a, b, E, I }) => (W * a ** 2 * b ** 2) / (3 * E * I * (a + b)),
});

/** δ = W a³ b³ / (3 E I (a + b)³), m: load W at a and b from two fixed ends. */
export const fixedSpanDeflection = /* @__PURE__ */ formula({
  name: 'deflection of a span fixed at both ends under a load',
  symbol: 'δ',
  dimension: 'length',
  inputs: { W: 'force', a: 'length', b: 'length', E: 'pressure', I: 'second moment of area' },
  text: 'δ = W a³ b³ / (3 E I (a + b)³)',
  source: BEVAN_VIBRATIONS,
  range: [inside],
  compute: ({ W, a, b, E, I }) => (W * a ** 3 * b ** 3) / (3 * E * I * (a + b) ** 3),
});

/** δ = 5 μ g L⁴ / (384 E I), m: greatest sag of a simply supported span under its own weight. */
export const uniformSpanSag = /* @__PURE__ */ formula({
  name: 'sag of a simply supported uniform span',
  symbol: 'δ',
  dimension: 'length',
  inputs: { mu: 'mass per length', L: 'length', E: 'pressure', I: 'second moment of area' },
  text: 'δ = 5 μ g L⁴ / (384 E I)',
  symbols: { mu: 'μ', L: 'L', E: 'E', I: 'I' },
  source: BEVAN_VIBRATIONS,
  range: 'small deflections of a uniform, slender shaft',
  compute: ({ mu, L, E, I }) => (5 * mu * STANDARD_GRAVITY * L ** 4) / (384 * E * I),
});

/** f = √(g/δ) / 2π, Hz: one mass on a massless shaft that sags by δ (m) under it. 0.4985 / √δ. */
export const frequencyFromDeflection = /* @__PURE__ */ formula({
  name: 'natural frequency from static deflection',
  symbol: 'f',
  dimension: 'frequency',
  inputs: { delta: 'length' },
  text: 'f = √(g / δ) / 2π',
  symbols: { delta: 'δ' },
  source: BEVAN_VIBRATIONS,
  range: 'exact for one mass on a massless shaft',
  compute: ({ delta }) => Math.sqrt(STANDARD_GRAVITY / delta) / (2 * Math.PI),
});

/**
 * f = √(1.268 g/δ) / 2π, Hz: a simply supported uniform span with mid-span sag δ (m).
 * The factor is 5π⁴/384 = 1.2683; handbooks print 1.27.
 */
export const frequencyFromUniformSag = /* @__PURE__ */ formula({
  name: 'natural frequency from the sag of a uniform span',
  symbol: 'f',
  dimension: 'frequency',
  inputs: { delta: 'length' },
  text: 'f = √((5π⁴/384) g / δ) / 2π',
  symbols: { delta: 'δ' },
  source: BEVAN_VIBRATIONS,
  range: 'simply supported uniform span',
  compute: ({ delta }) => Math.sqrt((5 * Math.PI ** 4 * STANDARD_GRAVITY) / (384 * delta)) / (2 * Math.PI),
});
