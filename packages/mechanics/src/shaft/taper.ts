import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const CONE: Source = { title: 'geometry of a cone', confidence: 'derived' };
const CONE_RANGE = 'Taper is change of diameter per length: 1/16, 1/12, 1/10.';

/** Small end of a taper. d_s, d, L m; taper –. */
export const taperSmallEnd = /* @__PURE__ */ formula({
  name: 'small end of a taper',
  symbol: 'd_s',
  dimension: 'length',
  inputs: { largeEnd: 'length', taperLength: 'length', taper: 'ratio' },
  text: 'd_s = d − L t',
  symbols: { largeEnd: 'd', taperLength: 'L', taper: 't' },
  source: { ...CONE, title: 'SAE J755', clause: 'every row of the table', confidence: 'published' },
  range: [
    { condition: 'diameter at the small end above zero', met: si => si.largeEnd > si.taperLength * si.taper },
  ],
  compute: ({ largeEnd, taperLength, taper }) => largeEnd - taperLength * taper,
});

/** Diameter at a distance from the large end. d_x, d, x m; taper –. */
export const diameterOnTaper = /* @__PURE__ */ formula({
  name: 'diameter on a taper',
  symbol: 'd_x',
  dimension: 'length',
  inputs: { largeEnd: 'length', distance: 'length', taper: 'ratio' },
  text: 'd_x = d − x t',
  symbols: { largeEnd: 'd', distance: 'x', taper: 't' },
  source: CONE,
  range: [{ condition: 'diameter there above zero', met: si => si.largeEnd > si.distance * si.taper }],
  compute: ({ largeEnd, distance, taper }) => largeEnd - distance * taper,
});

/** Large end of a taper. d, d_s, L m; taper –. */
export const taperLargeEnd = /* @__PURE__ */ formula({
  name: 'large end of a taper',
  symbol: 'd',
  dimension: 'length',
  inputs: { smallEnd: 'length', taperLength: 'length', taper: 'ratio' },
  text: 'd = d_s + L t',
  symbols: { smallEnd: 'd_s', taperLength: 'L', taper: 't' },
  source: CONE,
  range: CONE_RANGE,
  compute: ({ smallEnd, taperLength, taper }) => smallEnd + taperLength * taper,
});

/**
 * How far forward of the shaft's large end the hub comes to rest: bored large it stands forward of the taper
 * (positive), bored small it stays aft (negative). s, d m; taper –.
 */
export const hubSeatShift = /* @__PURE__ */ formula({
  name: 'shift of a hub on its taper',
  symbol: 's',
  dimension: 'length',
  inputs: { hubLargeEnd: 'length', shaftLargeEnd: 'length', taper: 'ratio' },
  text: 's = (D_hub − d) / t',
  symbols: { hubLargeEnd: 'D_hub', shaftLargeEnd: 'd', taper: 't' },
  source: CONE,
  range: [{ condition: 'both have the same taper, above 0', met: si => si.taper > 0 }],
  compute: ({ hubLargeEnd, shaftLargeEnd, taper }) => (hubLargeEnd - shaftLargeEnd) / taper,
});
