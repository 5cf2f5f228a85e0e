import {
  couplingAlignmentGuides,
  couplingFaceAngle,
  couplingFaceTolerance,
  couplingRunOutGuide,
} from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';
import { DEG, IN } from '../tables/factors.js';

published(couplingFaceTolerance, "engine operator's manual: a 3 in coupling may open 0.003 in", [
  { case: '3 in', inputs: { couplingDiameter: 3 * IN }, gives: 0.003, within: 1e-9, unit: IN },
]);
// arctan(0.001) = 0.0573 deg
published(couplingFaceAngle, 'plane geometry', [
  {
    case: '0.005 in on 5 in',
    inputs: { gapDifference: 0.005 * IN, couplingDiameter: 5 * IN },
    gives: 0.0573,
    within: 0.00005,
    unit: DEG,
  },
]);

it('holds the printed absolute limits', () => {
  expect(couplingAlignmentGuides.map(one => one.most / IN)).toEqual([
    expect.closeTo(0.003, 9),
    expect.closeTo(0.004, 9),
  ]);
  expect(couplingRunOutGuide.source.confidence).toBe('from memory');
});
