import { overhangGuides, overhangInDiameters, overhangLimit } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';
import { IN } from '../tables/factors.js';

published(overhangInDiameters, 'worked by hand: 5 in beyond the bearing of a 1.25 in shaft', [
  { case: '5 in', inputs: { overhang: 5 * IN, diameter: 1.25 * IN }, gives: 4, within: 1e-12 },
]);
published(overhangLimit, 'ABYC P-6 and SAE J756, as quoted: one diameter', [
  { case: '1.25 in shaft', inputs: { diameter: 1.25 * IN, guide: 1 }, gives: 1.25, within: 1e-12, unit: IN },
]);

it('keeps both quotations, which disagree', () => {
  expect(overhangGuides.map(one => one.diameters)).toEqual([1, 1.5]);
});
