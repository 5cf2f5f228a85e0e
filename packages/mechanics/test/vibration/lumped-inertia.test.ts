import { given, lumpedInertia } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { halfInertia } from '../../src/vibration/index.js';
import { published } from '../published.js';

published(halfInertia, 'definition: two equal shares of the whole', [
  { case: '0.4 kg·m²', inputs: { J: 0.4 }, gives: 0.2, within: 1e-12 },
]);

const J = (si: number) => given('inertia', 'J', 'moment of inertia', si);

it('adds what turns as one, and keeps a single inertia as it was declared', () => {
  expect(lumpedInertia([J(2), J(0.5), J(0.25)]).si).toBe(2.75);
  const one = J(3);
  expect(lumpedInertia([one])).toBe(one);
  expect(lumpedInertia([])).toMatchObject({ si: 0, assumed: expect.stringContaining('left out') });
});
