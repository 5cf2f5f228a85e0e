import { given, lengthLeftOver, lengthSum, shaftShift, stackLength } from '@tailshaft/mechanics';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { published } from '../published.js';
import { IN } from '../tables/factors.js';

published(lengthSum, 'sum by hand', [
  {
    case: 'three parts',
    inputs: { 'part 1': 0.4, 'part 2': 0.1, 'part 3': 2.05 },
    gives: 2.55,
    within: 1e-12,
  },
]);
published(lengthLeftOver, 'sum by hand', [
  { case: '2.55 m in 2.50 m', inputs: { stack: 2.55, room: 2.5 }, gives: 0.05, within: 1e-12 },
]);
published(shaftShift, 'worked by hand: a gear 1.4 in longer pushes the shaft 1.4 in aft', [
  {
    case: 'engine stays',
    inputs: { before: 12 * IN, after: 13.4 * IN, engineMovedAft: 0 },
    gives: 1.4,
    within: 1e-9,
    unit: IN,
  },
  {
    case: 'engine moved forward as much',
    inputs: { before: 12 * IN, after: 13.4 * IN, engineMovedAft: -1.4 * IN },
    gives: 0,
    within: 1e-9,
    unit: IN,
  },
]);

it('order of parts does not matter, and each part shows in the working', () => {
  const lengths = fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(lengths, all => {
      const parts = all.map((one, i) => given(`part ${i}`, `L${i}`, 'length', one));
      const total = stackLength(parts);
      expect(total.si).toBeCloseTo(stackLength([...parts].reverse()).si, 9);
      expect(total.working!.inputs).toHaveLength(all.length);
    }),
  );
});
