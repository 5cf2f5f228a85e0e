import { given, outsideRange, thickestShaftInTube, wallInTube } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';
import { IN } from '../tables/factors.js';

published(wallInTube, 'worked by hand: 2 in shaft in a 2.25 in tube', [
  {
    case: 'an eighth is left',
    inputs: { tubeBore: 2.25 * IN, shaftDiameter: 2 * IN },
    gives: 0.125,
    within: 1e-9,
    unit: IN,
  },
]);
published(thickestShaftInTube, 'wall of a quarter diameter: 2.25 in takes 1.5 in', [
  {
    case: '2.25 in tube',
    inputs: { tubeBore: 2.25 * IN, wallShare: 0.25 },
    gives: 1.5,
    within: 1e-9,
    unit: IN,
  },
]);

it('flags a shaft that does not pass', () => {
  const wall = wallInTube({
    tubeBore: given('tube', 'D', 'length', 0.05),
    shaftDiameter: given('shaft', 'd', 'length', 0.06),
  });
  expect(wall.si).toBeCloseTo(-0.005, 12);
  expect(outsideRange(wall)).toHaveLength(1);
});
