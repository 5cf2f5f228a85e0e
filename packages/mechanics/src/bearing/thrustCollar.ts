import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const KHURMI: Source = {
  author: 'R. S. Khurmi, J. K. Gupta',
  title: 'Theory of Machines',
  clause: 'ch. 10, flat collar bearings',
  confidence: 'published',
};

const collar = {
  condition: 'the collar is larger outside than inside',
  met: (si: { readonly outsideDiameter: number; readonly insideDiameter: number }) =>
    si.outsideDiameter > si.insideDiameter,
};
const rings = { outsideDiameter: 'length', insideDiameter: 'length' } as const;

/** Radius at which friction acts, uniform pressure. r_m m; D, d m. */
export const collarFrictionRadius = /* @__PURE__ */ formula({
  name: 'friction radius of a thrust collar, uniform pressure',
  symbol: 'r_m',
  dimension: 'length',
  inputs: rings,
  text: 'r_m = (D³ − d³) / (3 (D² − d²))',
  symbols: { outsideDiameter: 'D', insideDiameter: 'd' },
  source: KHURMI,
  range: [collar],
  compute: ({ outsideDiameter: D, insideDiameter: d }) =>
    D > d ? (D ** 3 - d ** 3) / (D ** 2 - d ** 2) / 3 : Number.NaN,
});

/** Friction power of thrust collars, whatever their number. W; F N; ω rad/s; r_m m; μ –. */
export const collarFrictionPower = /* @__PURE__ */ formula({
  name: 'friction power of thrust collars',
  symbol: 'P_f',
  dimension: 'power',
  inputs: { thrust: 'force', friction: 'number', speed: 'rotational speed', frictionRadius: 'length' },
  text: 'P_f = μ F ω r_m',
  symbols: { thrust: 'F', friction: 'μ', speed: 'ω', frictionRadius: 'r_m' },
  source: KHURMI,
  range: 'Coulomb friction.',
  compute: ({ thrust, friction, speed, frictionRadius }) => friction * thrust * speed * frictionRadius,
});

/** Pressure on collars that share a thrust evenly. p Pa; F N; D, d m. */
export const collarPressure = /* @__PURE__ */ formula({
  name: 'pressure on thrust collars',
  symbol: 'p',
  dimension: 'pressure',
  inputs: { thrust: 'force', collars: 'number', ...rings },
  text: 'p = 4 F / (n π (D² − d²))',
  symbols: { thrust: 'F', collars: 'n', outsideDiameter: 'D', insideDiameter: 'd' },
  source: KHURMI,
  range: [collar, { condition: 'there is at least one collar', met: si => si.collars >= 1 }],
  compute: ({ thrust, collars, outsideDiameter, insideDiameter }) =>
    outsideDiameter > insideDiameter
      ? (4 * thrust) / (collars * Math.PI * (outsideDiameter ** 2 - insideDiameter ** 2))
      : Number.NaN,
});

/** Collars needed for a pressure, whole number. –; F N; p Pa; D, d m. */
export const collarsNeeded = /* @__PURE__ */ formula({
  name: 'thrust collars needed',
  symbol: 'n',
  dimension: 'number',
  inputs: { thrust: 'force', pressure: 'pressure', ...rings },
  text: 'n = ⌈4 F / (p π (D² − d²))⌉',
  symbols: { thrust: 'F', pressure: 'p', outsideDiameter: 'D', insideDiameter: 'd' },
  source: KHURMI,
  range: [collar],
  compute: ({ thrust, pressure, outsideDiameter, insideDiameter }) =>
    outsideDiameter > insideDiameter
      ? Math.ceil((4 * thrust) / (pressure * Math.PI * (outsideDiameter ** 2 - insideDiameter ** 2)))
      : Number.NaN,
});

/** Outside diameter that gives a friction radius, uniform pressure. D, d, r_m m. */
export const collarOutsideDiameter = /* @__PURE__ */ formula({
  name: 'outside diameter of a thrust collar for its friction radius',
  symbol: 'D',
  dimension: 'length',
  inputs: { frictionRadius: 'length', insideDiameter: 'length' },
  text: 'R² + (r − 3/2 r_m) R + r² − 3/2 r_m r = 0',
  terms: 'R is the root of this equation; R and r are half the diameters',
  source: { ...KHURMI, confidence: 'derived' },
  range: [
    {
      condition: 'the friction radius is larger than the inside radius',
      met: si => si.frictionRadius > si.insideDiameter / 2,
    },
  ],
  compute: ({ frictionRadius, insideDiameter }) => {
    const r = insideDiameter / 2;
    const half = (1.5 * frictionRadius - r) / 2;
    const outside = half + Math.sqrt(half ** 2 + 1.5 * frictionRadius * r - r ** 2);
    return outside > r ? 2 * outside : Number.NaN;
  },
});
