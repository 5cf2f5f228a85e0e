import { couplingDesignTorque, couplingTorqueMargin, given } from '@tailshaft/mechanics';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { published } from '../published.js';
import { LBF_IN } from '../tables/factors.js';

const LBF_FT = 12 * LBF_IN;

published(couplingDesignTorque, 'service factor times torque', [
  {
    case: '790 lbf·ft, factor 1.5',
    inputs: { torque: 790 * LBF_FT, serviceFactor: 1.5 },
    gives: 1185,
    within: 1e-9,
    unit: LBF_FT,
  },
]);
// 700/790 − 1 = −11.4 %
published(couplingTorqueMargin, 'worked by hand: coupling rated 700 lbf·ft, shaft torque 790', [
  {
    case: 'over its rating',
    inputs: { rating: 700 * LBF_FT, designTorque: 790 * LBF_FT },
    gives: -11.4,
    within: 0.05,
    unit: 0.01,
  },
]);

it('more torque or a higher factor, less margin', () => {
  const margin = (T: number, K: number) =>
    couplingTorqueMargin({
      rating: given('rating', 'T_rated', 'torque', 1000),
      designTorque: couplingDesignTorque({
        torque: given('torque', 'T', 'torque', T),
        serviceFactor: given('service factor', 'K', 'number', K),
      }),
    }).si;
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 1e6, noNaN: true }),
      fc.double({ min: 1, max: 5, noNaN: true }),
      (T, K) => {
        expect(margin(T, K)).toBeGreaterThan(margin(T * 1.01, K));
        expect(margin(T, K)).toBeGreaterThan(margin(T, K * 1.01));
      },
    ),
  );
});
