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
