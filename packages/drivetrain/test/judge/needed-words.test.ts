import { expect, it } from 'vitest';
import type { Needed } from '../../src/judge/needed.js';
import { neededWords } from '../../src/judge/needed-words.js';

const figure = (quantity: string, now: number, si: number) =>
  ({ quantity, bound: 'at least', written: `${si} mm`, si, now: { si: now } }) as unknown as Needed;

it.each([
  [
    'near and far',
    [figure('diameter', 50, 60), figure('speed', 50, 95)],
    ' This meets it: diameter at least 60 mm.',
  ],
  [
    'two near ones',
    [figure('diameter', 50, 60), figure('speed', 50, 40)],
    ' Any one of these meets it: diameter at least 60 mm; speed at least 40 mm.',
  ],
  [
    'far ones only',
    [figure('speed', 50, 95), figure('pitch', 50, 400)],
    ' This meets it: speed at least 95 mm.',
  ],
  ['one beyond all help', [figure('speed', 50, 166)], ''],
])('names the figures that are near, or else the nearest: %s', (_, needed, words) => {
  expect(neededWords(needed)).toBe(words);
});
