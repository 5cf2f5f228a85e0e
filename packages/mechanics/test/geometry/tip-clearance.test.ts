import { axisToHull, given, largestPropeller, tipGap, tipGapNeeded } from '@tailshaft/mechanics';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { published } from '../published.js';
import { DEG, IN } from '../tables/factors.js';

published(tipGapNeeded, 'Gerr, as quoted: 17 % of 20 in is 3.4 in', [
  {
    case: '20 in',
    inputs: { propellerDiameter: 20 * IN, clearanceShare: 0.17 },
    gives: 3.4,
    within: 1e-9,
    unit: IN,
  },
]);
published(tipGap, 'plane geometry', [
  {
    case: '13.4 in over the axis of 20 in',
    inputs: { axisToHull: 13.4 * IN, propellerDiameter: 20 * IN },
    gives: 3.4,
    within: 1e-9,
    unit: IN,
  },
]);
published(largestPropeller, 'Gerr, as quoted, turned round', [
  {
    case: '13.4 in over the axis, 17 %',
    inputs: { axisToHull: 13.4 * IN, clearanceShare: 0.17 },
    gives: 20,
    within: 1e-9,
    unit: IN,
  },
]);
// Level hull: 1/cos 10°. Hull parallel to the shaft (δ = −α): the perpendicular, cos 10°.
published(axisToHull, 'plane geometry', [
  {
    case: 'level hull, shaft down 10 deg',
    inputs: { verticalHeight: 1, shaftAngle: 10 * DEG, hullRise: 0 },
    gives: 1.0154,
    within: 0.00005,
  },
  {
    case: 'hull parallel to the shaft',
    inputs: { verticalHeight: 1, shaftAngle: 10 * DEG, hullRise: -10 * DEG },
    gives: 0.9848,
    within: 0.00005,
  },
]);

it('a larger propeller always leaves less gap, and the largest leaves just the share', () => {
  const length = fc.double({ min: 0.1, max: 3, noNaN: true });
  fc.assert(
    fc.property(length, fc.double({ min: 0, max: 0.4, noNaN: true }), (height, share) => {
      const above = given('axis to hull', 's', 'length', height);
      const largest = largestPropeller({
        axisToHull: above,
        clearanceShare: given('share', 'c/D', 'ratio', share),
      });
      const gap = (D: number) =>
        tipGap({ axisToHull: above, propellerDiameter: given('diameter', 'D', 'length', D) }).si;
      expect(gap(largest.si) / largest.si).toBeCloseTo(share, 9);
      expect(gap(largest.si * 1.01)).toBeLessThan(gap(largest.si));
    }),
  );
});
