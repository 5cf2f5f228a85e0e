import { figureOf, given, lastDigit, powerLessTakeOff, provenanceOf } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';

describe('a number as it was written', () => {
  it.each([
    ['300', { text: '300', decimals: 0, digits: 3 }, 0],
    ['2.04', { text: '2.04', decimals: 2, digits: 3 }, 0.01],
    ['−0.120', { text: '−0.120', decimals: 3, digits: 3 }, 0.001],
    ['5e4', { text: '5e4', decimals: 0, digits: 1 }, 0],
    ['1 3/4', { text: '1 3/4' }, 0],
  ])('%s', (text, figure, last) => {
    expect(figureOf(text)).toEqual(figure);
    expect(lastDigit(figureOf(text))).toBeCloseTo(last, 12);
  });

  it('knows what a ratio is to', () => {
    expect(figureOf('2.04', 1)).toEqual({ text: '2.04', decimals: 2, digits: 3, to: 1 });
  });
});

it('knows of every value how it came to be', () => {
  const power = given('power', 'P', 'power', 300e3, { written: '300 kW', origin: {} });
  const takeOff = given('take-off', 'P', 'power', 0, { assumed: 'none is declared' });
  expect([power, takeOff, powerLessTakeOff({ power, takeOff })].map(provenanceOf)).toEqual([
    'declared',
    'default',
    'computed',
  ]);
  expect(provenanceOf(given('limit', 'k', 'number', 2))).toBe('constant');
});
