import { boltStrengthOf, boltTorqueByFriction } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';
import { MM } from '../tables/factors.js';

// 0.15 · 8 · 60 000 · 0.17 / 2 = 6120
published(boltTorqueByFriction, 'statics of friction, worked by hand', [
  {
    case: '8 bolts of 60 kN on 170 mm, friction 0.15',
    inputs: { friction: 0.15, bolts: 8, preload: 60e3, boltCircle: 170 * MM },
    gives: 6120,
    within: 0.5,
  },
]);

/** ISO 898-1, nominal figures of its table of mechanical properties; ISO 3506-1, 0.2 % yield (from memory). */
it.each([
  ['4.6', 400, 240],
  ['5.6', 500, 300],
  ['8.8', 800, 640],
  ['10.9', 1000, 900],
  ['12.9', 1200, 1080],
  ['A2-70', 700, 450],
  ['A4-80', 800, 600],
] as const)('class %s: %i MPa strength, %i MPa yield', (name, strength, tensileYield) => {
  const bolt = boltStrengthOf(name)!;
  expect(bolt.tensileStrength / 1e6).toBeCloseTo(strength, 9);
  expect(bolt.tensileYield / 1e6).toBeCloseTo(tensileYield, 9);
});

it.each(['', '8', '8.9', 'A5-70', 'A4-75', 'grade 5'])('"%s" is no class it knows', name => {
  expect(boltStrengthOf(name)).toBeUndefined();
});
