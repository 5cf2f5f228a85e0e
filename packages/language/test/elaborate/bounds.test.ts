import { type Dimension, fromSI, given, naturalUnit } from '@tailshaft/mechanics';
import { ASSUMABLE, limitsOf, type Range, REQUIRABLE } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { Specs } from '../edit/specs.js';

const bounded: readonly (readonly [string, Dimension, Range])[] = [
  ...REQUIRABLE.flatMap(({ words, ranges }) =>
    Object.entries(ranges).map(
      ([dimension, range]) => [`require ${words} at most`, dimension as Dimension, range] as const,
    ),
  ),
  ...ASSUMABLE.map(({ words, dimension, range }) => [`assume ${words}`, dimension, range] as const),
];

describe.each(bounded)('%s, as %s', (words, dimension, range) => {
  const limits = limitsOf(range, dimension);
  const unit = naturalUnit(given('', '', dimension, limits.high));
  const written = (si: number) =>
    `${Number(fromSI(si, unit).toPrecision(6))}${unit.symbol === '1' ? '' : ` ${unit.symbol}`}`;

  it('takes what lies in its range', async () => {
    expect(await said(`${words} ${written((limits.low + limits.high) / 2)}`)).toEqual([]);
  });

  it.each([limits.high * 1.5, limits.low - 0.5 * Math.abs(limits.low || limits.high)])(
    'says that %f (SI) lies outside',
    async si => {
      const found = await said(`${words} ${written(si)}`);
      expect(found).toHaveLength(1);
      expect(found[0]).toMatch(/^text\/out-of-range: .* is not between /);
    },
  );
});

async function said(sentence: string): Promise<string[]> {
  const because = sentence.startsWith('assume') ? ' because "sheet"' : '';
  const { check } = await Specs.read({
    's.shaft': `vessel V {\n${sentence}${because}\narrangement a { }\n}`,
  });
  return check.problems.map(one => `${one.code}: ${one.message}`);
}
