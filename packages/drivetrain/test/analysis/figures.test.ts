import { given } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { hullFigures } from '../../src/analysis/figures.js';
import type { Vessel } from '../../src/model/vessel.js';

const fact = (dimension: 'length' | 'mass', si: number) => ({
  value: given('', '', dimension, si),
  written: '',
  origin: {},
});
const vessel = (hull: object) => ({ hull }) as unknown as Vessel;

it('says how heavy a hull is for its length, and how fast its wave', () => {
  const figures = hullFigures(
    vessel({ waterlineLength: fact('length', 10.9), displacement: fact('mass', 11_800) }),
  );
  // By hand: 10.9 m = 35.761 ft, 11.8 t = 26015 lb; 26015/2240 / 0.35761³ = 253.9; 1.34 √35.761 = 8.013 kn.
  expect(figures.map(one => one.label)).toEqual(['displacement-length ratio', 'hull speed']);
  expect(figures[0]!.si).toBeCloseTo(253.9, 1);
  expect(figures[1]!.si * (3600 / 1852)).toBeCloseTo(8.013, 3);
});

it('says nothing where the length is not known', () => {
  expect(hullFigures(vessel({ displacement: fact('mass', 11_800) }))).toEqual([]);
});
