import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const PINNED: Source = {
  title: 'first bending mode of a uniform beam on two supports (Euler-Bernoulli)',
  confidence: 'derived',
};

/** Span at which the shaft whirls at the speed given, solid (bore 0) or hollow. L, d m; ω rad/s; E Pa; ρ kg/m³. */
export const whirlingBearingSpan = /* @__PURE__ */ formula({
  name: 'bearing span that whirls at a speed',
  symbol: 'L',
  dimension: 'length',
  inputs: {
    outsideDiameter: 'length',
    bore: 'length',
    speed: 'rotational speed',
    youngsModulus: 'pressure',
    density: 'density',
  },
  text: 'L = π √(√(E/ρ) √(d_o² + d_i²) / (4 ω))',
  symbols: { outsideDiameter: 'd_o', bore: 'd_i', speed: 'ω', youngsModulus: 'E', density: 'ρ' },
  source: PINNED,
  range: [
    { condition: 'the bore is smaller than the outside diameter', met: si => si.bore < si.outsideDiameter },
  ],
  compute: ({ outsideDiameter, bore, speed, youngsModulus, density }) =>
    Math.PI * Math.sqrt(bendingWaveTerm(outsideDiameter, bore, youngsModulus, density) / speed),
});

/** Speed at which the fitted span whirls. ω rad/s; L, d m; E Pa; ρ kg/m³. */
export const whirlingSpeedOfSpan = /* @__PURE__ */ formula({
  name: 'whirling speed of a bearing span',
  symbol: 'ω_w',
  dimension: 'rotational speed',
  inputs: {
    outsideDiameter: 'length',
    bore: 'length',
    span: 'length',
    youngsModulus: 'pressure',
    density: 'density',
  },
  text: 'ω_w = (π/L)² √(E/ρ) √(d_o² + d_i²) / 4',
  symbols: { outsideDiameter: 'd_o', bore: 'd_i', span: 'L', youngsModulus: 'E', density: 'ρ' },
  source: PINNED,
  range: [
    { condition: 'the bore is smaller than the outside diameter', met: si => si.bore < si.outsideDiameter },
    {
      condition: 'the span is at least 10 diameters, a slender shaft',
      met: si => si.span >= 10 * si.outsideDiameter,
    },
  ],
  compute: ({ outsideDiameter, bore, span, youngsModulus, density }) =>
    (Math.PI / span) ** 2 * bendingWaveTerm(outsideDiameter, bore, youngsModulus, density),
});

/** What is left between running speed and whirling: capacity ÷ demand − 1. ω rad/s. */
export const whirlingMargin = /* @__PURE__ */ formula({
  name: 'margin of whirling speed',
  symbol: 'm',
  dimension: 'ratio',
  inputs: { whirlingSpeed: 'rotational speed', speed: 'rotational speed' },
  text: 'm = ω_w / ω − 1',
  symbols: { whirlingSpeed: 'ω_w', speed: 'ω' },
  source: { title: 'capacity ÷ demand − 1', confidence: 'derived' },
  range: 'The definition of a margin.',
  compute: ({ whirlingSpeed, speed }) => whirlingSpeed / speed - 1,
});

/** √(E I / m′) of a round shaft, m²/s. */
function bendingWaveTerm(
  outsideDiameter: number,
  bore: number,
  youngsModulus: number,
  density: number,
): number {
  if (bore >= outsideDiameter) return Number.NaN;
  return (Math.sqrt(youngsModulus / density) * Math.hypot(outsideDiameter, bore)) / 4;
}
