import { bearingClearance, given, outsideRange, rubberBearingClearance } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';
import { IN } from '../tables/factors.js';

published(bearingClearance, 'definition', [
  {
    case: '1.505 in bore, 1.500 in shaft',
    inputs: { bearingBore: 1.505 * IN, shaftDiameter: 1.5 * IN },
    gives: 0.005,
    within: 1e-9,
    unit: IN,
  },
]);

it('holds the printed limits: 0.003 to 0.007 in for 3/4 to 1 3/4 in', () => {
  expect(rubberBearingClearance.least / IN).toBeCloseTo(0.003, 12);
  expect(rubberBearingClearance.most / IN).toBeCloseTo(0.007, 12);
  expect(rubberBearingClearance.shaftTo / IN).toBeCloseTo(1.75, 12);
});

it('flags a shaft that does not go in', () => {
  const clearance = bearingClearance({
    bearingBore: given('bore', 'D', 'length', 0.04),
    shaftDiameter: given('shaft', 'd', 'length', 0.041),
  });
  expect(clearance.si).toBeLessThan(0);
  expect(outsideRange(clearance)).toHaveLength(1);
});
