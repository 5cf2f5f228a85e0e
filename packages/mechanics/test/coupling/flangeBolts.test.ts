import {
  boltDiameterInShear,
  boltTorqueInShear,
  classFittedBoltByPower,
  classFittedBoltByShaft,
  given,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { published } from '../published.js';
import { KW, MM, MPA, RPM } from '../tables/factors.js';

published(boltDiameterInShear, 'Sadhu Singh, Design of machine elements, examples 7.1 and 7.10', [
  {
    case: '20 kW at 240 rpm, peak 1.25, 4 bolts at 75 mm radius, 30 MPa',
    inputs: {
      torque: (1.25 * 20 * KW) / (240 * RPM),
      boltCircle: 150 * MM,
      bolts: 4,
      allowedShear: 30 * MPA,
    },
    gives: 11.86,
    within: 0.005,
    unit: MM,
  },
  {
    case: '800 N·m, 6 bolts on 125 mm, 56 MPa',
    inputs: { torque: 800, boltCircle: 125 * MM, bolts: 6, allowedShear: 56 * MPA },
    gives: 6.96,
    within: 0.005,
    unit: MM,
  },
]);
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

it('more torque asks for thicker bolts, more or stronger bolts for thinner ones', () => {
  const size = (T: number, n: number, tau: number) =>
    boltDiameterInShear({
      torque: given('torque', 'T', 'torque', T),
      boltCircle: given('bolt circle', 'D', 'length', 0.12),
      bolts: given('bolts', 'n', 'number', n),
      allowedShear: given('allowed shear', 'τ', 'pressure', tau),
    }).si;
  fc.assert(
    fc.property(fc.double({ min: 1, max: 1e6, noNaN: true }), fc.integer({ min: 2, max: 24 }), (T, n) => {
      const base = size(T, n, 50e6);
      expect(base).toBeGreaterThan(0);
      expect(size(T * 1.1, n, 50e6)).toBeGreaterThan(base);
      expect(size(T, n + 1, 50e6)).toBeLessThan(base);
      expect(size(T, n, 55e6)).toBeLessThan(base);
    }),
  );
});
