import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { atMost } from '../geometry/rounding-slack.js';

const WENTZELL: Source = {
  author: 'T. H. Wentzell',
  title: 'Machine Design',
  clause: 'keys',
  confidence: 'published',
};
const squareGuide =
  'Statics of a straight key; common practice is a width of about a quarter of the shaft diameter.';

/** Key length so that it does not shear. L m; T N·m; τ Pa allowed in shear; b width, d shaft m. */
export const keyLengthInShear = /* @__PURE__ */ formula({
  name: 'key length in shear',
  symbol: 'L',
  dimension: 'length',
  inputs: { torque: 'torque', allowedShear: 'pressure', keyWidth: 'length', shaftDiameter: 'length' },
  text: 'L = 2 T / (τ b d)',
  symbols: { torque: 'T', allowedShear: 'τ', keyWidth: 'b', shaftDiameter: 'd' },
  source: WENTZELL,
  range: squareGuide,
  compute: ({ torque, allowedShear, keyWidth, shaftDiameter }) =>
    (2 * torque) / (allowedShear * keyWidth * shaftDiameter),
});

/** Key length so that its flank does not crush. L m; T N·m; σ Pa allowed in bearing; h height, d shaft m. */
export const keyLengthInCrushing = /* @__PURE__ */ formula({
  name: 'key length in crushing',
  symbol: 'L',
  dimension: 'length',
  inputs: { torque: 'torque', allowedBearing: 'pressure', keyHeight: 'length', shaftDiameter: 'length' },
  text: 'L = 4 T / (σ h d)',
  symbols: { torque: 'T', allowedBearing: 'σ', keyHeight: 'h', shaftDiameter: 'd' },
  source: WENTZELL,
  range: squareGuide,
  compute: ({ torque, allowedBearing, keyHeight, shaftDiameter }) =>
    (4 * torque) / (allowedBearing * keyHeight * shaftDiameter),
});

/** Least shear area of the propeller key by class practice. A m²; d rule diameter, d₁ at mid-length of the key m. */
export const classKeyArea = /* @__PURE__ */ formula({
  name: 'class key area',
  symbol: 'B L',
  dimension: 'area',
  inputs: { ruleDiameter: 'length', diameterAtKey: 'length' },
  text: 'B L = d³ / (2.55 d₁), at least',
  symbols: { ruleDiameter: 'd', diameterAtKey: 'd₁' },
  source: { title: 'class rules for propeller keys', clause: 'shear area', confidence: 'from memory' },
  range: [
    {
      condition: 'shaft diameter at the key at most the rule diameter',
      met: si => atMost(si.diameterAtKey, si.ruleDiameter),
    },
  ],
  compute: ({ ruleDiameter, diameterAtKey }) => ruleDiameter ** 3 / (2.55 * diameterAtKey),
});
