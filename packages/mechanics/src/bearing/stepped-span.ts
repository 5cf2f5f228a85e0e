import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

/*
 * A span that is stepped whirls between two uniform ones: the Rayleigh quotient ∫EI w″²/∫m′ w² is at least that of the
 * thinnest stiffness with the greatest mass, at most that of the thickest with the least mass, whatever the shape.
 */
const BOUNDS: Source = {
  title: 'Rayleigh quotient of a stepped beam, bounded by uniform ones',
  confidence: 'derived',
};
const RANGE =
  'A bound, not the speed itself: the true speed lies between the two bounds. Which one it is nearer to depends on where the steps are.';
const inputs = {
  whirlingSpeed: 'rotational speed',
  massPerLength: 'mass per length',
  countedMassPerLength: 'mass per length',
} as const;
const symbols = { massPerLength: 'm′', countedMassPerLength: 'm′_c' } as const;

/** The least that a stepped span may whirl at. ω rad/s of the span as thin as its thinnest diameter; m′ kg/m. */
export const steppedSpanWhirlingLeast = /* @__PURE__ */ formula({
  name: 'least whirling speed of a stepped span',
  symbol: 'ω',
  dimension: 'rotational speed',
  inputs,
  text: 'ω = ω_thin √(m′/m′_c)',
  symbols: { ...symbols, whirlingSpeed: 'ω_thin' },
  source: BOUNDS,
  range: RANGE,
  compute: si => si.whirlingSpeed * Math.sqrt(si.massPerLength / si.countedMassPerLength),
});

/** The most that a stepped span may whirl at. ω rad/s of the span as thick as its thickest diameter; m′ kg/m. */
export const steppedSpanWhirlingMost = /* @__PURE__ */ formula({
  name: 'greatest whirling speed of a stepped span',
  symbol: 'ω',
  dimension: 'rotational speed',
  inputs,
  text: 'ω = ω_thick √(m′/m′_c)',
  symbols: { ...symbols, whirlingSpeed: 'ω_thick' },
  source: BOUNDS,
  range: RANGE,
  compute: si => si.whirlingSpeed * Math.sqrt(si.massPerLength / si.countedMassPerLength),
});
