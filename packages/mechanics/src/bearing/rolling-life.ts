import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { atMost } from '../geometry/rounding-slack.js';

const ISO281: Source = { title: 'ISO 281', clause: 'basic rating life', year: 2007, confidence: 'published' };

/** Exponent of the life equation. */
export const lifeExponent = { ball: 3, roller: 10 / 3 } as const;

const exponentRule = {
  condition: 'the exponent is 3 for ball or 10/3 for roller bearings',
  met: (si: { readonly exponent: number }) => si.exponent === 3 || Math.abs(si.exponent - 10 / 3) < 1e-3,
};

/** Equivalent load of radial and axial loads. P, F_r, F_a N; V 1 when the inner ring turns, 1.2 when the outer does. */
export const equivalentBearingLoad = /* @__PURE__ */ formula({
  name: 'equivalent bearing load',
  symbol: 'P',
  dimension: 'force',
  inputs: {
    radialLoad: 'force',
    axialLoad: 'force',
    radialFactor: 'number',
    axialFactor: 'number',
    ringFactor: 'number',
  },
  text: 'P = X V F_r + Y F_a',
  symbols: { radialLoad: 'F_r', axialLoad: 'F_a', radialFactor: 'X', axialFactor: 'Y', ringFactor: 'V' },
  source: ISO281,
  range: 'X and Y come from the bearing catalogue for this ratio of loads.',
  compute: ({ radialLoad, axialLoad, radialFactor, axialFactor, ringFactor }) =>
    radialFactor * ringFactor * radialLoad + axialFactor * axialLoad,
});

/** Life that 90 % reach, in revolutions. C, P N; p 3 or 10/3. */
export const basicRatingLife = /* @__PURE__ */ formula({
  name: 'basic rating life',
  symbol: 'L₁₀',
  dimension: 'number',
  inputs: { dynamicRating: 'force', equivalentLoad: 'force', exponent: 'number' },
  text: 'L₁₀ = 10⁶ (C/P)^p',
  symbols: { dynamicRating: 'C', equivalentLoad: 'P', exponent: 'p' },
  source: ISO281,
  range: [
    exponentRule,
    {
      condition: 'the load is at most half the dynamic rating',
      met: si => atMost(si.equivalentLoad, 0.5 * si.dynamicRating),
    },
  ],
  compute: ({ dynamicRating, equivalentLoad, exponent }) =>
    1e6 * (dynamicRating / equivalentLoad) ** exponent,
});

/** The life of so many revolutions in time at constant speed. s; L revolutions; ω rad/s. */
export const ratingLifeTime = /* @__PURE__ */ formula({
  name: 'rating life in time',
  symbol: 'L_h',
  dimension: 'time',
  inputs: { revolutions: 'number', speed: 'rotational speed' },
  units: { speed: 'rpm' },
  unit: 'min',
  text: 'L_h = L / n, rpm',
  symbols: { revolutions: 'L', speed: 'n' },
  source: ISO281,
  range: 'Constant speed.',
  compute: ({ revolutions, speed }) => (revolutions * 2 * Math.PI) / speed,
});

/** Running time over some years of duty. s; hours a year; years. */
export const dutyTime = /* @__PURE__ */ formula({
  name: 'running time over years of duty',
  symbol: 't',
  dimension: 'time',
  inputs: { hoursPerYear: 'number', years: 'number' },
  unit: 'h',
  text: 't = h a, hours a year times years',
  symbols: { hoursPerYear: 'h', years: 'a' },
  source: { title: 'Product of hours a year and years', confidence: 'derived' },
  range: [
    {
      condition: 'hours a year from 0 to the 8766 of a year, years not negative',
      met: ({ hoursPerYear, years }) => hoursPerYear >= 0 && hoursPerYear <= 8766 && years >= 0,
    },
  ],
  compute: ({ hoursPerYear, years }) => 3600 * hoursPerYear * years,
});
