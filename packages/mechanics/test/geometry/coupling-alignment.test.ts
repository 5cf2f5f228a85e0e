import { couplingAlignmentGuides, couplingRunOutGuide } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { IN } from '../tables/factors.js';

it('holds the printed absolute limits', () => {
  expect(couplingAlignmentGuides.map(one => one.most / IN)).toEqual([
    expect.closeTo(0.003, 9),
    expect.closeTo(0.004, 9),
  ]);
  expect(couplingRunOutGuide.source.confidence).toBe('from memory');
});
