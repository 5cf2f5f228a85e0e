import { collarPressure, collarsNeeded, given } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';
import { KW, MM, MPA } from '../tables/factors.js';

const _radius = 1e-3 * (2 / 3) * ((200 ** 3 - 125 ** 3) / (200 ** 2 - 125 ** 2));
const example20 = 'Khurmi and Gupta, Theory of Machines, example 10.20: 150 kN, 400/250 mm, μ 0.05, 105 rpm';
published(collarsNeeded, example20, [
  {
    case: '0.35 N/mm²',
    inputs: { thrust: 150e3, pressure: 0.35 * MPA, outsideDiameter: 0.4, insideDiameter: 0.25 },
    gives: 6,
    within: 0,
  },
]);
const example21 =
  'Khurmi and Gupta, Theory of Machines, example 10.21: 200 kN, 75 rpm, 300 mm inside, μ 0.05, 16 kW';
published(collarsNeeded, example21, [
  {
    case: '0.3 N/mm²',
    inputs: { thrust: 200e3, pressure: 0.3 * MPA, outsideDiameter: 0.498, insideDiameter: 0.3 },
    gives: 6,
    within: 0,
  },
]);

// Not printed by the book: 150 000 N on six rings of 76 576 mm², by hand; its six collars are for 0.35 N/mm².
published(collarPressure, example20, [
  {
    case: 'six collars of 400 and 250 mm under 150 kN',
    inputs: { thrust: 150 * KW, collars: 6, outsideDiameter: 400 * MM, insideDiameter: 250 * MM },
    gives: 0.3265,
    within: 5e-5,
    unit: MPA,
  },
]);

it('is at most what the number of collars was found for, and more with one collar less', () => {
  const at = (collars: number) =>
    collarPressure({
      thrust: given('F', 'F', 'force', 150e3),
      collars: given('n', 'n', 'number', collars),
      outsideDiameter: given('D', 'D', 'length', 0.4),
      insideDiameter: given('d', 'd', 'length', 0.25),
    }).si;
  expect(at(6)).toBeLessThanOrEqual(0.35e6);
  expect(at(5)).toBeGreaterThan(0.35e6);
});
