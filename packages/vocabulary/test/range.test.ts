import { type Dimension, findUnit, measures, toSI } from '@tailshaft/mechanics';
import { limitsOf, type Range, type ValueKind } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { everyHead, everyRow } from './every-row.js';

/** Forms that hold a number which can be a slip. */
const NUMBERED: readonly ValueKind['form'][] = [
  'quantity',
  'span',
  'point',
  'ratio',
  'per year',
  'bolts',
  'pilot',
  'layout',
  'shaft criterion',
];

const numbered = [...everyRow(), ...everyHead()].filter(([, row]) => NUMBERED.includes(row.kind.form));

describe('the plausible ranges of the vocabulary', () => {
  it.each(numbered)('%s has one, and it can be read', (_, row) => {
    expect(row.range, 'range').toBeDefined();
    for (const [range, dimension] of rangesOf(row.kind, row.range!)) {
      const { low, high } = limitsOf(range, dimension);
      expect(low).toBeLessThan(high);
    }
  });

  it.each(numbered)('%s holds the example', (_, row) => {
    const example = 'example' in row ? String(row.example) : '';
    const [range, dimension] = rangesOf(row.kind, row.range!)[0]!;
    const number = /(-?\d[\d.]*)(?::1)?(?: (\d+)\/(\d+))?\s*(\S+)?/.exec(example);
    const unit = findUnit(number?.[4] ?? '1');
    if (!number || !unit || !measures(unit, dimension)) return;
    const { low, high } = limitsOf(range, dimension);
    const fraction = number[2] ? Number(number[2]) / Number(number[3]) : 0;
    const si = toSI(Number(number[1]) + fraction, unit);
    expect(si, example).toBeGreaterThanOrEqual(low);
    expect(si, example).toBeLessThanOrEqual(high);
  });
});

function rangesOf(kind: ValueKind, range: Range): (readonly [Range, Dimension])[] {
  if (kind.form === 'point')
    return [
      [range, kind.of],
      [range.at!, kind.at],
    ];
  if (kind.form === 'quantity' || kind.form === 'span') return [[range, kind.dimension]];
  if (kind.form === 'ratio') return [[range, 'ratio']];
  if (kind.form === 'bolts' || kind.form === 'pilot') return [[range, 'length']];
  return [[range, kind.form === 'layout' ? 'angle' : 'number']];
}
