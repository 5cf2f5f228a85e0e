import { IS_RING, KHURMI_CLUTCH } from '../../src/clutch/sources.js';
import { formula } from './held-formula.js';

const RING = { outerRadius: 'length', innerRadius: 'length' } as const;

const LETTERS = { outerRadius: 'r_o', innerRadius: 'r_i', pressure: 'p', clamp: 'F' } as const;

/** Clamp force at which a worn-in face reaches a pressure at its inner edge. F N, p Pa, radii m. */
export const clampFromPressureUniformWear = /* @__PURE__ */ formula({
  name: 'clutch clamp force from lining pressure, uniform wear',
  symbol: 'F',
  dimension: 'force',
  inputs: { pressure: 'pressure', ...RING },
  text: 'F = 2 π p r_i (r_o − r_i)',
  symbols: LETTERS,
  source: KHURMI_CLUTCH,
  range: [IS_RING],
  compute: si => 2 * Math.PI * si.pressure * si.innerRadius * (si.outerRadius - si.innerRadius),
});

/** Inner radius at which a face of given outer radius and lining pressure carries most, uniform wear. */
export const bestInnerRadius = /* @__PURE__ */ formula({
  name: 'inner radius for the largest clutch torque',
  symbol: 'r_i',
  dimension: 'length',
  inputs: { outerRadius: 'length' },
  text: 'r_i = r_o / √3',
  symbols: LETTERS,
  source: { title: 'greatest T of the uniform-wear formula at fixed r_o and p', confidence: 'derived' },
  range: 'Follows by differentiation, for any face under uniform wear.',
  compute: ({ outerRadius }) => outerRadius / Math.sqrt(3),
});
