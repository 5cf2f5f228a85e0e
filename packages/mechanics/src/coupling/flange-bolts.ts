import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { atLeast, atMost } from '../geometry/rounding-slack.js';

const BOLTS: Source = {
  author: 'Sadhu Singh',
  title: 'Design of machine elements',
  clause: 'rigid flange couplings',
  confidence: 'published',
};
const inShear =
  'Torque carried by shear of the shanks alone, shared evenly: friction of the faces is not counted.';

/** Torque that the bolts of a coupling take in shear. T N·m; d_b, D m; τ Pa; n bolts. */
export const boltTorqueInShear = /* @__PURE__ */ formula({
  name: 'torque of coupling bolts in shear',
  symbol: 'T',
  dimension: 'torque',
  inputs: { boltDiameter: 'length', boltCircle: 'length', bolts: 'number', allowedShear: 'pressure' },
  text: 'T = π n d_b² D τ / 8',
  symbols: { boltDiameter: 'd_b', boltCircle: 'D', bolts: 'n', allowedShear: 'τ' },
  source: { ...BOLTS, confidence: 'derived' },
  range: inShear,
  compute: ({ boltDiameter, boltCircle, bolts, allowedShear }) =>
    (Math.PI * bolts * boltDiameter ** 2 * boltCircle * allowedShear) / 8,
});

/** Fitted bolts of a flange coupling, class form by power. d_s, D m; P W; ω rad/s; Rm Pa of the bolt; z bolts. */
export const classFittedBoltByPower = /* @__PURE__ */ formula({
  name: 'class fitted bolt diameter by power',
  symbol: 'd_s',
  dimension: 'length',
  inputs: {
    power: 'power',
    speed: 'rotational speed',
    boltCircle: 'length',
    bolts: 'number',
    tensileStrength: 'pressure',
  },
  units: { power: 'kW', speed: 'rpm', boltCircle: 'mm', tensileStrength: 'MPa' },
  unit: 'mm',
  text: 'd_s = 16 √(10⁶ P / (n D z R_m)), mm, kW, rpm, MPa',
  symbols: { power: 'P', speed: 'n', boltCircle: 'D', bolts: 'z', tensileStrength: 'R_m' },
  source: {
    title: 'class rules, main shafting',
    clause: 'fitted bolts, one worked sheet',
    confidence: 'published',
  },
  range: 'Fitted (reamed) bolts of steel.',
  compute: ({ power, speed, boltCircle, bolts, tensileStrength }) =>
    16e-3 *
    Math.sqrt(
      (1e6 * ((power / speed) * (Math.PI / 30e3))) / (1e3 * boltCircle * bolts * (tensileStrength / 1e6)),
    ),
});

/** Fitted bolts by IACS UR M34. d_b, d (rule shaft diameter), D m; T shaft and T_b bolt tensile strength Pa; i bolts. */
export const classFittedBoltByShaft = /* @__PURE__ */ formula({
  name: 'class fitted bolt diameter by shaft',
  symbol: 'd_b',
  dimension: 'length',
  inputs: {
    shaftDiameter: 'length',
    shaftTensileStrength: 'pressure',
    boltCircle: 'length',
    bolts: 'number',
    boltTensileStrength: 'pressure',
  },
  units: { shaftDiameter: 'mm', shaftTensileStrength: 'MPa', boltCircle: 'mm', boltTensileStrength: 'MPa' },
  unit: 'mm',
  text: 'd_b = 0.65 √(d³ (T + 160) / (i D T_b)), mm, MPa',
  symbols: {
    shaftDiameter: 'd',
    shaftTensileStrength: 'T',
    boltCircle: 'D',
    bolts: 'i',
    boltTensileStrength: 'T_b',
  },
  source: { title: 'IACS UR M34', clause: 'coupling bolts', year: 1980, confidence: 'from memory' },
  range: [
    {
      condition: 'the bolt is at least as strong as the shaft and at most 1.7 times',
      met: si =>
        atLeast(si.boltTensileStrength, si.shaftTensileStrength) &&
        atMost(si.boltTensileStrength, 1.7 * si.shaftTensileStrength),
    },
  ],
  compute: ({ shaftDiameter, shaftTensileStrength, boltCircle, bolts, boltTensileStrength }) =>
    0.65 *
    Math.sqrt(
      (shaftDiameter ** 3 * (shaftTensileStrength + 160e6)) / (bolts * boltCircle * boltTensileStrength),
    ),
});
