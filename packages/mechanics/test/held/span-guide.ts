import { formula } from './held-formula.js';

/** Empirical span of line shafts that keeps deflection near 0.8 mm/m. L, d m; ω rad/s; c by loading. */
export const lineShaftSpan = /* @__PURE__ */ formula({
  name: 'bearing span of line shafts, empirical',
  symbol: 'L',
  dimension: 'length',
  inputs: { diameter: 'length', speed: 'rotational speed', loading: 'number' },
  units: { diameter: 'cm', speed: 'rpm' },
  unit: 'm',
  text: 'L = 1500/(n + 1500) c D^(2/3), m, rpm, D in cm',
  symbols: { diameter: 'D', speed: 'n', loading: 'c' },
  source: {
    author: 'K. Lingaiah, B. R. Narayana Iyengar',
    title: 'Machine Design Data Handbook',
    clause: 'distance between bearings; the copy garbles the unit of D, centimetres inferred from magnitude',
    year: 1962,
    confidence: 'from memory',
  },
  range: [{ condition: 'c is one of 0.82, 1.1 or 1.56', met: si => [0.82, 1.1, 1.56].includes(si.loading) }],
  compute: ({ diameter, speed, loading }) =>
    (1500 / ((speed * 30) / Math.PI + 1500)) * loading * (100 * diameter) ** (2 / 3),
});
