import {
  capital,
  count,
  listed,
  minusSign,
  percent,
  signedPercent,
  uncapital,
  withArticle,
  wordsOfKey,
} from '@tailshaft/mechanics';
import { expect, it } from 'vitest';

it.each([
  [0.31, '31 %', '+31 %'],
  [0.004, '0.4 %', '+0.4 %'],
  [0.05, '5 %', '+5 %'],
  [0.0996, '10 %', '+10 %'],
  [-0.3, '−30 %', '−30 %'],
  [-0.0349, '−3.5 %', '−3.5 %'],
  [-0.0001, '0 %', '0 %'],
  [0.0001, '0 %', '0 %'],
  [0, '0 %', '0 %'],
] as const)('a share of %d is %s, and %s as a change', (share, said, change) => {
  expect(percent(share)).toBe(said);
  expect(signedPercent(share)).toBe(change);
});

it.each([
  [[], ''],
  [['Port'], 'Port'],
  [['Port', 'Starboard'], 'Port and Starboard'],
  [['Port', 'Centre', 'Starboard'], 'Port, Centre and Starboard'],
] as const)('%j is listed as %s', (names, said) => {
  expect(listed(names)).toBe(said);
  expect(listed(names, 'or')).toBe(said.replace(' and ', ' or '));
});

it('counts in one and many', () => {
  expect([0, 1, 2].map(number => count(number, 'check'))).toEqual(['0 checks', '1 check', '2 checks']);
  expect([1, 2].map(number => count(number, 'holds', 'hold'))).toEqual(['1 holds', '2 hold']);
});

it('writes words as they stand in a sentence', () => {
  expect([withArticle('engine'), withArticle('gear')]).toEqual(['an engine', 'a gear']);
  expect([capital('a gear'), uncapital('A gear')]).toEqual(['A gear', 'a gear']);
  expect(wordsOfKey('gearTorqueMargin')).toBe('gear torque margin');
});

it('prints a minus sign before a number and leaves every other hyphen', () => {
  expect(minusSign('-3 mm to -1.5 mm, 2e-9 of 2026-11-27')).toBe('−3 mm to −1.5 mm, 2e-9 of 2026-11-27');
});
