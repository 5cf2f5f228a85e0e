import { boltTorqueInShear, classFittedBoltByPower, classFittedBoltByShaft } from '@tailshaft/mechanics';
import { published } from '../published.js';
import { KW, MM, MPA, RPM } from '../tables/factors.js';

published(boltTorqueInShear, 'Sadhu Singh, Design of machine elements, example 7.10 turned round', [
  {
    case: '6 bolts of 6.9646 mm',
    inputs: { boltDiameter: 6.9646 * MM, boltCircle: 125 * MM, bolts: 6, allowedShear: 56 * MPA },
    gives: 800,
    within: 0.05,
  },
]);
published(
  classFittedBoltByPower,
  'class worked-sheet form, recomputed: 1000 kW, 350 rpm, 300 mm, 8 bolts, Rm 600',
  [
    {
      case: 'fitted bolts',
      inputs: {
        power: 1000 * KW,
        speed: 350 * RPM,
        boltCircle: 300 * MM,
        bolts: 8,
        tensileStrength: 600 * MPA,
      },
      gives: 22.54,
      within: 0.005,
      unit: MM,
    },
  ],
);
// 0.65 √(120³ · 760 / (8 · 300 · 600)) = 0.65 √912 = 19.630
published(classFittedBoltByShaft, 'IACS UR M34 form (from memory), worked by hand', [
  {
    case: '120 mm shaft, all of 600 MPa',
    inputs: {
      shaftDiameter: 120 * MM,
      shaftTensileStrength: 600 * MPA,
      boltCircle: 300 * MM,
      bolts: 8,
      boltTensileStrength: 600 * MPA,
    },
    gives: 19.63,
    within: 0.005,
    unit: MM,
  },
]);
