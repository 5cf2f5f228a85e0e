import {
  angleInHand,
  angleLeftOpen,
  angleUnderWay,
  downAngleOfTwo,
  engineAngleNeeded,
  installationAngleGuides,
  shaftAngle,
} from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';
import { DEG } from '../tables/factors.js';

const stack = 'worked by hand: engine 3 deg, gear 10 deg, shaft line 11 deg';
published(shaftAngle, stack, [
  {
    case: 'sum',
    inputs: { engineAngle: 3 * DEG, gearDownAngle: 10 * DEG },
    gives: 13,
    within: 1e-9,
    unit: DEG,
  },
]);
published(angleLeftOpen, stack, [
  {
    case: 'open',
    inputs: { engineAngle: 3 * DEG, gearDownAngle: 10 * DEG, shaftAngle: 11 * DEG },
    gives: 2,
    within: 1e-9,
    unit: DEG,
  },
]);
published(
  downAngleOfTwo,
  'worked by hand: gear 8 deg down, its output forward, behind it a V-drive of 14 deg',
  [
    {
      case: 'two boxes',
      inputs: { first: -8 * DEG, second: 14 * DEG },
      gives: 6,
      within: 1e-9,
      unit: DEG,
    },
  ],
);
published(engineAngleNeeded, stack, [
  {
    case: 'engine to close it',
    inputs: { shaftAngle: 11 * DEG, gearDownAngle: 10 * DEG },
    gives: 1,
    within: 1e-9,
    unit: DEG,
  },
]);
const trim = 'worked by hand: installed 11 deg plus 5 deg trim is 16, limit 15';
published(angleUnderWay, trim, [
  { case: 'under way', inputs: { staticAngle: 11 * DEG, trim: 5 * DEG }, gives: 16, within: 1e-9, unit: DEG },
]);
published(angleInHand, trim, [
  {
    case: 'over the limit',
    inputs: { limit: 15 * DEG, angle: 16 * DEG },
    gives: -1,
    within: 1e-9,
    unit: DEG,
  },
]);

it('keeps every guide that was not read in print marked as such', () => {
  const printed = installationAngleGuides.filter(one => one.source.confidence === 'published');
  expect(printed.map(one => one.what)).toEqual(['down-angle gear output']);
  expect(printed[0]!.from / DEG).toBeCloseTo(7, 12);
  expect(printed[0]!.to / DEG).toBeCloseTo(15, 12);
});
