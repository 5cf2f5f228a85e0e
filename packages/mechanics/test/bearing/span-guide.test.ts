import {
  classSpanFactors,
  classSpanFast,
  classSpanSlow,
  given,
  lineShaftLoading,
  outsideRange,
  spanDiameterGuide,
  spanInDiameters,
} from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { lineShaftSpan } from '../held/span-guide.js';
import { published } from '../published.js';
import { IN, MM, RPM } from '../tables/factors.js';

published(spanInDiameters, 'worked by hand: 110 in of 1.5 in shaft is 73 1/3 diameters', [
  { case: '110 in', inputs: { span: 110 * IN, diameter: 1.5 * IN }, gives: 220 / 3, within: 1e-9 },
]);
// √100 = 10 and √(100/400) = 0.5 by hand.
published(classSpanSlow, 'class rules, GL and BKI form (from memory), worked by hand', [
  {
    case: '100 mm, white metal',
    inputs: { diameter: 100 * MM, speed: 300 * RPM, slowFactor: 450 },
    gives: 4500,
    within: 1e-6,
    unit: MM,
  },
]);
published(classSpanFast, 'class rules, GL and BKI form, worked by hand', [
  {
    case: '100 mm at 400 rpm, rubber',
    inputs: { diameter: 100 * MM, speed: 400 * RPM, fastFactor: 5200 },
    gives: 2600,
    within: 1e-6,
    unit: MM,
  },
]);
// D^(2/3) of 8 cm is 4; 1500/3000 is 1/2.
published(lineShaftSpan, 'Lingaiah and Iyengar form, D in cm (inferred), worked by hand', [
  {
    case: '80 mm at 1500 rpm, c 1.1',
    inputs: { diameter: 80 * MM, speed: 1500 * RPM, loading: 1.1 },
    gives: 2.2,
    within: 1e-9,
  },
]);

it('the two class forms meet at 350 rpm, as 450·√350 = 8418 and 280·√350 = 5238 say', () => {
  const at = (factor: number) => factor * Math.sqrt(350);
  const [whiteMetal, grease] = classSpanFactors;
  expect(at(whiteMetal!.slow.low)).toBeCloseTo(8418.7, 1);
  expect(Math.abs(at(whiteMetal!.slow.low) / whiteMetal!.fast - 1)).toBeLessThan(0.01);
  expect(at(grease!.slow.low)).toBeCloseTo(5238.3, 1);
  expect(Math.abs(at(grease!.slow.low) / grease!.fast - 1)).toBeLessThan(0.01);
});

it('each class form is flagged on the wrong side of 350 rpm', () => {
  const diameter = given('diameter', 'd', 'length', 0.1);
  const slow = (rpm: number) =>
    classSpanSlow({
      diameter,
      speed: given('speed', 'ω', 'rotational speed', rpm * RPM),
      slowFactor: given('factor', 'K₁', 'number', 450),
    });
  expect(outsideRange(slow(350))).toEqual([]);
  expect(outsideRange(slow(351))).toHaveLength(1);
});

it('the empirical span of a line shaft lies near the 20 to 40 diameters of the guide', () => {
  const span = lineShaftSpan({
    diameter: given('diameter', 'd', 'length', 0.05),
    speed: given('speed', 'ω', 'rotational speed', 1000 * RPM),
    loading: given('loading', 'c', 'number', lineShaftLoading['line shaft or countershaft']),
  });
  expect(span.si / 0.05).toBeGreaterThan(spanDiameterGuide.least);
  expect(span.si / 0.05).toBeLessThan(spanDiameterGuide.most);
});
