import {
  classKeyArea,
  keyLengthForWholeShaft,
  keyLengthInCrushing,
  keyLengthInShear,
} from '@tailshaft/mechanics';
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
published(keyLengthForWholeShaft, 'Sadhu Singh, Design of machine elements, examples 7.4 and 7.7', [
  {
    case: '75 mm shaft, key 20 wide',
    inputs: { shaftDiameter: 75 * MM, keyWidth: 20 * MM },
    gives: 110.4,
    within: 0.05,
    unit: MM,
  },
  {
    case: '50 mm shaft, key 15 wide',
    inputs: { shaftDiameter: 50 * MM, keyWidth: 15 * MM },
    gives: 65.45,
    within: 0.005,
    unit: MM,
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
