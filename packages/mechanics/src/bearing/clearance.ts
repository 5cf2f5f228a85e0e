import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { inch } from '../tables/printed-units.js';

/** Total (diametral) clearance of a shaft in its bearing. c, D, d m. */
export const bearingClearance = /* @__PURE__ */ formula({
  name: 'bearing clearance',
  symbol: 'c',
  dimension: 'length',
  inputs: { bearingBore: 'length', shaftDiameter: 'length' },
  text: 'c = D − d',
  symbols: { bearingBore: 'D', shaftDiameter: 'd' },
  source: { title: 'definition', confidence: 'derived' },
  range: [{ condition: 'bearing bore larger than the shaft', met: si => si.bearingBore > si.shaftDiameter }],
  compute: ({ bearingBore, shaftDiameter }) => bearingBore - shaftDiameter,
});

/** Printed clearance of new rubber strut bearings by shaft size, total. m. */
export const rubberBearingClearance = {
  shaftFrom: inch(0.75),
  shaftTo: inch(1.75),
  least: inch(0.003),
  most: inch(0.007),
  source: {
    title: 'alignment standard citing ABYC P-6',
    clause: 'clearance of rubber strut bearings',
    year: 1978,
    confidence: 'published',
  },
} as const satisfies { shaftFrom: number; shaftTo: number; least: number; most: number; source: Source };
