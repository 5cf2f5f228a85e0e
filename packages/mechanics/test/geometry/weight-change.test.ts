import {
  given,
  massSum,
  momentOfMass,
  momentSum,
  newCentreOfGravity,
  outsideRange,
  totalMass,
  totalMoment,
} from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';

const hand = 'first moments of mass, worked by hand';
published(momentOfMass, hand, [
  { case: '−310 kg at 4 m', inputs: { mass: -310, lever: 4 }, gives: -1240, within: 1e-9 },
]);
published(massSum, hand, [
  { case: 'out 1200, in 890', inputs: { 'mass 1': -1200, 'mass 2': 890 }, gives: -310, within: 1e-9 },
]);
published(momentSum, hand, [
  {
    case: 'out at 4.0 m, in at 3.8 m',
    inputs: { 'moment 1': -4800, 'moment 2': 3382 },
    gives: -1418,
    within: 1e-9,
  },
]);
// (11,800 · 4.2 − 1418) / 11,490 = 4.1899
published(newCentreOfGravity, hand, [
  {
    case: '11.8 t with its centre at 4.2 m',
    inputs: { displacement: 11_800, centreOfGravity: 4.2, massChange: -310, momentChange: -1418 },
    gives: 4.1899,
    within: 0.00005,
  },
]);

it('a part exchanged for an equal one in the same place changes nothing', () => {
  const lever = given('lever', 'x', 'length', 3);
  const out = given('old engine', 'm₁', 'mass', -900);
  const back = given('new engine', 'm₂', 'mass', 900);
  const massChange = totalMass([out, back]);
  const momentChange = totalMoment([momentOfMass({ mass: out, lever }), momentOfMass({ mass: back, lever })]);
  const centre = newCentreOfGravity({
    displacement: given('displacement', 'Δ', 'mass', 12_000),
    centreOfGravity: given('centre', 'x_G', 'length', 4.2),
    massChange,
    momentChange,
  });
  expect(centre.si).toBeCloseTo(4.2, 12);
  expect(outsideRange(centre)).toEqual([]);
});
