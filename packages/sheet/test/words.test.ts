import { type Dimension, given } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { siWords } from '../src/words.js';

it.each([
  ['2.9 m', 'length', 2.9, undefined],
  ['300 kW', 'power', 3e5, undefined],
  ['11.8 t', 'mass', 11_800, undefined],
  ['20 deg', 'angle', (20 * Math.PI) / 180, undefined],
  ['1 3/4 in', 'length', 0.04445, '44.45 mm'],
  ['250 hp', 'power', 186_425, '186.4 kW'],
  ['24 bar', 'pressure', 24e5, '2.4 MPa'],
  ['2300 rpm', 'rotational speed', 240.855, '240.9 rad/s'],
  ['0.72', 'ratio', 0.72, undefined],
] as const)('%s as %s has %s in SI beside it', (written, dimension, si, said) => {
  expect(
    siWords(given('x', 'x', dimension as Dimension, si, { written, unit: written.split(' ')[1]! })),
  ).toBe(said);
});
