import type { Source } from '../../src/core/source.js';
import { inch, poundPerCubicInch, psi } from '../../src/tables/printed-units.js';
import { formula } from './held-formula.js';

/**
 * The handbook form is exactly the first whirling speed of a plain shaft on two bearings that do not hold its slope
 * (60 π √386.0886 / (8 · 144) = 3.2151, printed 3.21). So at the span it gives, the shaft whirls at the very speed put
 * in: the built-in margin is nil, apart from whatever slope the real bearings hold. Overhung propeller not included.
 */
const HANDBOOK: Source = {
  title: 'small-craft handbook formula of bearing spacing',
  clause: 'three copies',
  confidence: 'published',
};

/** Longest bearing span as the handbook prints it, solid shaft. L, d m; ω rad/s; E Pa; ρ kg/m³. No margin in it. */
export const handbookBearingSpan = /* @__PURE__ */ formula({
  name: 'bearing span, handbook form',
  symbol: 'L',
  dimension: 'length',
  inputs: { diameter: 'length', speed: 'rotational speed', youngsModulus: 'pressure', density: 'density' },
  units: { diameter: 'in', speed: 'rpm', youngsModulus: 'psi', density: 'lb/in3' },
  unit: 'ft',
  text: 'L = √(3.21 D / n) (E/w)^(1/4), ft, in, rpm, psi, lb/in³',
  symbols: { diameter: 'D', speed: 'n', youngsModulus: 'E', density: 'w' },
  source: HANDBOOK,
  range: 'Solid plain shaft between two bearings, no margin in it, propeller overhang not in it.',
  compute: ({ diameter, speed, youngsModulus, density }) =>
    inch(12) *
    Math.sqrt((3.21 * (diameter / inch(1))) / ((speed * 30) / Math.PI)) *
    (youngsModulus / psi(1) / (density / poundPerCubicInch(1))) ** 0.25,
});
