import {
  given,
  jointHighestSpeed,
  residualAngleInPhase,
  residualAngleOutOfPhase,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jointLowestSpeed, jointSpeedRatio } from '../held/universal-joint.js';
import { published } from '../published.js';
import { DEG } from '../tables/factors.js';

/** Angle, least and greatest ratio, recomputed from the kinematics. */
const table = [
  [5, 0.9962, 1.0038],
  [10, 0.9848, 1.0154],
  [15, 0.9659, 1.0353],
] as const;
published(
  jointLowestSpeed,
  'kinematics of the universal joint',
  table.map(([deg, low]) => ({
    case: `${deg} deg`,
    inputs: { angle: deg * DEG },
    gives: low,
    within: 0.00005,
  })),
);
published(
  jointHighestSpeed,
  'kinematics of the universal joint',
  table.map(([deg, , high]) => ({
    case: `${deg} deg`,
    inputs: { angle: deg * DEG },
    gives: high,
    within: 0.00005,
  })),
);
published(jointSpeedRatio, 'kinematics of the universal joint: extremes a quarter turn apart', [
  { case: '15 deg at 0', inputs: { angle: 15 * DEG, turn: 0 }, gives: 1.0353, within: 0.00005 },
  { case: '15 deg at 90', inputs: { angle: 15 * DEG, turn: 90 * DEG }, gives: 0.9659, within: 0.00005 },
]);
published(residualAngleInPhase, 'equal angles in phase cancel', [
  {
    case: '7 and 7 deg',
    inputs: { firstAngle: 7 * DEG, secondAngle: 7 * DEG },
    gives: 0,
    within: 1e-9,
    unit: DEG,
  },
  {
    case: '7 deg and none',
    inputs: { firstAngle: 7 * DEG, secondAngle: 0 },
    gives: 7,
    within: 1e-9,
    unit: DEG,
  },
]);
// cos² 7° = 0.98515, arccos 9.887°
published(residualAngleOutOfPhase, 'two joints a quarter turn out of phase, worked by hand', [
  {
    case: '7 and 7 deg',
    inputs: { firstAngle: 7 * DEG, secondAngle: 7 * DEG },
    gives: 9.887,
    within: 0.001,
    unit: DEG,
  },
]);

describe('universal joint', () => {
  const angle = (symbol: string, si: number) => given(symbol, symbol, 'angle', si);

  it('turns as far in one revolution as it is driven: its ratio averages 1', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.7, noNaN: true }), beta => {
        const steps = 720;
        let turned = 0;
        for (let i = 0; i < steps; i++)
          turned += jointSpeedRatio({
            angle: angle('β', beta),
            turn: angle('θ', (2 * Math.PI * i) / steps),
          }).si;
        expect(turned / steps).toBeCloseTo(1, 9);
      }),
    );
  });

  it('a pair as kinematics has it: the product of two ratios swings as the residual angle says', () => {
    const acute = fc.double({ min: 0.01, max: 0.6, noNaN: true });
    fc.assert(
      fc.property(acute, acute, (b1, b2) => {
        let highest = 0;
        for (let i = 0; i <= 720; i++) {
          const turn = (Math.PI * i) / 720;
          // The middle shaft turns as tan θ₂ = cos β₁ tan θ₁ where θ is counted from the slow position of joint one.
          const first = jointSpeedRatio({ angle: angle('β', b1), turn: angle('θ', turn) }).si;
          const middle = Math.atan2(Math.sin(turn), Math.cos(turn) * Math.cos(b1));
          const second = Math.cos(b2) / (1 - (Math.sin(b2) * Math.sin(middle)) ** 2);
          highest = Math.max(highest, first * second, 1 / (first * second));
        }
        const residual = residualAngleInPhase({ firstAngle: angle('β₁', b1), secondAngle: angle('β₂', b2) });
        expect(highest).toBeCloseTo(jointHighestSpeed({ angle: residual }).si, 4);
      }),
      { numRuns: 30 },
    );
  });
});
