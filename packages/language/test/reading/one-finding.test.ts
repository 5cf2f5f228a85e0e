import { type Dimension, findUnit, preferredUnit, type Value } from '@tailshaft/mechanics';
import { ENTRY_VOCABULARY, type Row, unitsOfKind, type Vocabulary } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/support/share.js';
import { everyRow, readLine } from './read-line.js';

const rowsOf = (form: string) => everyRow().filter(([, , row]) => row.kind.form === form);
const measured = rowsOf('quantity').filter(
  ([, , row]) => !['number', 'ratio'].includes((row.kind as { dimension: Dimension }).dimension),
);

/** Problems and concerns of a value with an open question behind it, which must stay one. */
function findings(vocabulary: Vocabulary, row: Row, value: string) {
  const next = vocabulary.rows.find(one => one !== row && one.kind.form === 'quantity' && !one.bare);
  const { reading, fact } = readLine(
    vocabulary,
    `${row.words} ${value}${next ? `  ${next.words} unknown` : ''}`,
  );
  if (next) expect(reading.facts.at(-1)?.row.words, `${value}: the property behind it`).toBe(next.words);
  return { fact, told: [...reading.problems, ...reading.concerns], problems: reading.problems };
}

describe('a value that is written otherwise than it is read gives one finding', () => {
  it.each(share(measured, 60))('%s', (_, vocabulary, row) => {
    const unit = unitsOfKind(row.kind)[0]!.symbol;
    for (const number of [
      '1 750',
      "1'750",
      '1_750',
      '1 750 000',
      '~5',
      'abt 5',
      '5 ± 1',
      '5·10^4',
      '.5',
      '5 by 4',
    ])
      expect(findings(vocabulary, row, `${number} ${unit}`).told, `${number} ${unit}`).toHaveLength(1);
  });

  it.each([
    ['1 750', '1750'],
    ['12 750.5', '12750.5'],
    ["1'750", '1750'],
    ['1_750_000', '1750000'],
    ['.75', '0.75'],
    ['-.75', undefined],
  ])('%s is to be written %s', (written, meant) => {
    const [, vocabulary, row] = everyRow().find(([path]) => path === 'engine: low idle')!;
    const { told, problems } = findings(vocabulary, row, `${written} rpm`);
    expect(told).toHaveLength(1);
    if (meant) expect(problems[0]?.choices?.map(one => one.text)).toEqual([meant]);
  });

  it.each(rowsOf('ratio'))('%s', (_, vocabulary, row) => {
    for (const [written, meant] of [
      ['2.04 to 1', '2.04:1'],
      ['2.04 : 1', '2.04:1'],
      ['2.04/1', '2.04:1'],
      ['1 in 12', '1:12'],
      ['1/12', '1:12'],
    ] as const) {
      const { told, problems } = findings(vocabulary, row, written);
      expect(told, written).toHaveLength(1);
      expect(problems[0]!.choices?.map(one => one.text)).toEqual([meant]);
    }
    for (const open of ['unknown:1', 'unknown to 1', '1:unknown']) {
      const { told, fact } = findings(vocabulary, row, open);
      expect(told, open).toEqual([]);
      expect(fact, open).toMatchObject({ value: undefined, open: ['ratio'] });
    }
  });

  it.each(rowsOf('span'))('%s', (_, vocabulary, row) => {
    const unit = unitsOfKind(row.kind)[0]!.symbol;
    for (const between of [' to ', ' - ', '-', '...', ' − '])
      for (const first of between === '-' ? [''] : ['', ` ${unit}`]) {
        const { told, problems } = findings(vocabulary, row, `20${first}${between}24 ${unit}`);
        expect(told, `20${first}${between}24 ${unit}`).toHaveLength(1);
        expect(problems[0]!.choices?.map(one => one.text)).toEqual([`20${first} .. 24 ${unit}`]);
      }
  });

  const points = rowsOf('point').filter(([, , row]) => (row.kind as { of: Dimension }).of !== 'ratio');
  it.each(points)('%s', (_, vocabulary, row) => {
    const [of, at] = [row.kind as { of: Dimension }, row.kind as { at: Dimension }];
    const [y, x] = [preferredUnit(of.of).symbol, preferredUnit(at.at).symbol];
    for (const between of ['@', ' @ ', ' / ']) {
      const { told, problems } = findings(vocabulary, row, `300 ${y}${between}2300 ${x}`);
      expect(told, between).toHaveLength(1);
      expect(problems[0]!.choices?.map(one => one.text)).toEqual([' at ']);
    }
  });
});

it('takes the value of a rating without its words for an open question too', () => {
  const ratio = ENTRY_VOCABULARY.gear!.blocks.find(one => one.field === 'ratios')!.block;
  const { reading } = readLine(ratio, 'rated medium unknown  exact 2.043:1');
  expect(reading.problems).toEqual([]);
  expect(reading.facts.map(one => one.row.words)).toEqual(['exact']);
});

it('offers unknown for a word that is nearly that', () => {
  const { reading } = readLine(ENTRY_VOCABULARY.engine!, 'low idle unkown');
  expect(reading.problems.map(one => one.choices?.[0]?.text)).toEqual(['unknown']);
});

it.each([
  ['rpn', 'rpm'],
  ['rmp', 'rpm'],
  ['RPN', 'rpm'],
])('knows what unit %s is meant to be', (unit, meant) => {
  const { reading } = readLine(ENTRY_VOCABULARY.engine!, `low idle 650 ${unit}`);
  expect(reading.concerns.map(one => one.meant)).toEqual([meant]);
});

it.each([
  ['ins', 'in'],
  ['milimetres', 'mm'],
  ['millimetres', 'mm'],
  ['metres', 'm'],
])('reads or knows the length unit %s', (unit, meant) => {
  const { reading, fact } = readLine(ENTRY_VOCABULARY.engine!, `height 650 ${unit}`);
  const read = (fact?.value as Value | undefined)?.unit;
  expect(read ? findUnit(read)!.symbol : reading.concerns[0]?.meant).toBe(meant);
});
