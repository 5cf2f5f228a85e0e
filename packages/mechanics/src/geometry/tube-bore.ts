import { formula } from '../core/formula.js';

const SLEEVE = { title: 'geometry of a shaft in its tube', confidence: 'derived' } as const;

/** Room for a bearing wall between shaft and tube, on each side. w, D, d m. Negative: the shaft does not pass. */
export const wallInTube = /* @__PURE__ */ formula({
  name: 'bearing wall left in the tube',
  symbol: 'w',
  dimension: 'length',
  inputs: { tubeBore: 'length', shaftDiameter: 'length' },
  text: 'w = (D − d) / 2',
  symbols: { tubeBore: 'D', shaftDiameter: 'd' },
  source: SLEEVE,
  range: [{ condition: 'tube bore larger than the shaft', met: si => si.tubeBore > si.shaftDiameter }],
  compute: ({ tubeBore, shaftDiameter }) => (tubeBore - shaftDiameter) / 2,
});

/** Thickest shaft that a tube takes with a bearing wall of a share of the shaft. d, D m; share 1/4 for struts. */
export const thickestShaftInTube = /* @__PURE__ */ formula({
  name: 'thickest shaft for the tube',
  symbol: 'd_max',
  dimension: 'length',
  inputs: { tubeBore: 'length', wallShare: 'ratio' },
  text: 'd_max = D / (1 + 2 w/d)',
  symbols: { tubeBore: 'D', wallShare: 'w/d' },
  source: SLEEVE,
  range: [{ condition: 'the wall share is not negative', met: si => si.wallShare >= 0 }],
  compute: ({ tubeBore, wallShare }) => tubeBore / (1 + 2 * wallShare),
});
