import { classKeyArea, keyLengthInCrushing, keyLengthInShear } from '@tailshaft/mechanics';
import { published } from '../published.js';
import { IN, LBF_IN, MM, PSI } from '../tables/factors.js';

const wentzell = 'Wentzell, Machine Design, example 15.1: 180 lbf·in, 1/2 in shaft, 1/8 in key, factor 2.5';
published(keyLengthInShear, wentzell, [
  {
    case: 'shear strength 30,500 psi',
    inputs: {
      torque: 180 * LBF_IN,
      allowedShear: (30_500 / 2.5) * PSI,
      keyWidth: 0.125 * IN,
      shaftDiameter: 0.5 * IN,
    },
    gives: 0.47,
    within: 0.005,
    unit: IN,
  },
]);
published(keyLengthInCrushing, wentzell, [
  {
    case: 'crushing strength 51,000 psi',
    inputs: {
      torque: 180 * LBF_IN,
      allowedBearing: (51_000 / 2.5) * PSI,
      keyHeight: 0.125 * IN,
      shaftDiameter: 0.5 * IN,
    },
    gives: 0.56,
    within: 0.005,
    unit: IN,
  },
]);
// 100³ / (2.55 · 90) = 4357.3 mm²
published(classKeyArea, 'class key rule (from memory), worked by hand', [
  {
    case: '100 mm rule diameter, 90 mm at the key',
    inputs: { ruleDiameter: 100 * MM, diameterAtKey: 90 * MM },
    gives: 4357.3,
    within: 0.05,
    unit: 1e-6,
  },
]);
