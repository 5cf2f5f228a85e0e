import { findUnit } from '@tailshaft/mechanics';
import {
  ENTRY_VOCABULARY,
  PLACE_VOCABULARY,
  RELATIONS,
  type Row,
  VESSEL_VOCABULARY,
  type Vocabulary,
} from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { Bench } from '../rejudge.js';
import { changed, passing, saidBy } from './verdicts.js';

const RULE = 'paper/place-against-entry';
const GEAR = '      gear Alder-63 ratio 2.04:1 ahead clutch B';
const SHAFT = /\n {6}shaft \{[^\n]*/.exec(SINGLE_LINE)![0];
const PROPELLER = /\n {6}propeller \{[^\n]*/.exec(SINGLE_LINE)![0];

const shaft = (facts: string) => changed(SINGLE_LINE, [SHAFT, `\n      shaft { ${facts} }`]);
const coupling = (facts: string) =>
  changed(SINGLE_LINE, [GEAR, `${GEAR}\n      coupling { kind rigid  ${facts} }`]);
const gear = (facts: string) =>
  `gear Testbox { source "Test" dated 2025-02-10  ${facts} }\n${changed(SINGLE_LINE, [GEAR, '      gear Testbox ratio 2:1'])}`;

/** A spec with these facts in a block of that title, and some in the part around it. */
const SPECS: Readonly<Record<string, (facts: string, around: string) => string>> = {
  shaft: facts => shaft(facts),
  key: (facts, around) => shaft(`${around}  key propeller { ${facts} }`),
  bearing: facts => shaft(`diameter 65 mm  bearing aft { kind thrust  ${facts} }`),
  damage: (facts, around) => shaft(`${around}  damage bent { ${facts} }`),
  'shaft material': facts =>
    `shaft material Testbar { metal stainless steel  ${facts} }\n${shaft('material Testbar  diameter 65 mm')}`,
  coupling: facts => coupling(facts),
  flange: facts => coupling(`flange { ${facts} }`),
  propeller: facts => changed(SINGLE_LINE, [PROPELLER, `\n      propeller { hand right  ${facts} }`]),
  clutch: facts => gear(`ratio 2:1 { clutch A output same ahead continuous { ${facts} } }`),
  gear: facts => gear(`${facts}  ratio 2:1 { clutch A output same ahead continuous }`),
  train: facts => gear(`ratio 2:1 { clutch A output same ahead continuous\n train { ${facts} } }`),
  engine: facts => changed(SINGLE_LINE, ['{ flywheel aft }', `{ flywheel aft  ${facts} }`]),
  motor: facts => changed(SINGLE_LINE, [GEAR, `      motor { rotation either  ${facts} }\n${GEAR}`]),
  hull: facts =>
    changed(SINGLE_LINE, [
      '  arrangement proposed {',
      `  hull planing { ${facts} }\n  arrangement proposed {`,
    ]),
};

const vocabularies = new Map<string, Vocabulary>();
for (const all of [ENTRY_VOCABULARY, PLACE_VOCABULARY, VESSEL_VOCABULARY])
  for (const one of Object.values(all)) visit(one);
function visit(one: Vocabulary): void {
  const title = one.title.replace(/ in its line$/, '');
  // What a part may say at its place, it may say in its entry, and more; the flange of a coupling says more than others.
  const had = vocabularies.get(title);
  if (!had || one.rows.length > had.rows.length) vocabularies.set(title, one);
  for (const row of one.blocks) visit(row.block);
}
const AROUND: Readonly<Record<string, string>> = { key: 'shaft' };

/** The row that a path of a relation names, and how many blocks out or in it stands. */
function rowAt(title: string, path: string): { row: Row; out: boolean; inside?: string } {
  if (path.startsWith('^')) return { ...rowAt(AROUND[title]!, path.slice(1)), out: true };
  const [first, rest] = path.split('.') as [string, string | undefined];
  const vocabulary = vocabularies.get(title)!;
  if (rest === undefined) return { row: vocabulary.rows.find(one => one.field === first)!, out: false };
  const inner = vocabulary.blocks.find(one => one.field === first)!;
  return { row: inner.block.rows.find(one => one.field === rest)!, out: false, inside: inner.words };
}

const EVERY = Object.entries(RELATIONS).flatMap(([title, all]) =>
  // A second field only matters where the first is smaller: the first is tried.
  all.map(one => [`${title}: ${one.less} is not above ${one.than.join(', ')}`, title, one] as const),
);

const isDay = (row: Row) => row.kind.form === 'date';
const DAYS = EVERY.filter(([, title, { less }]) => isDay(rowAt(title, less).row));
const CASES = EVERY.filter(one => !DAYS.includes(one));

const UNITS: Readonly<Record<string, string>> = {
  length: 'mm',
  pressure: 'MPa',
  angle: 'deg',
  'rotational speed': 'rpm',
  mass: 't',
  power: 'kW',
};
const siOf = (written: string): number => {
  const [, number, unit] = /^(-?[\d.]+) ?(.*)$/.exec(written)!;
  return Number(number) * (unit ? findUnit(unit)!.factor : 1);
};
const dimensionOf = ({ kind }: Row) =>
  'dimension' in kind ? kind.dimension : 'of' in kind && kind.form === 'point' ? kind.of : 'length';

/** The statement of a row with this number in SI. */
function statement(row: Row, si: number): string {
  const unit = UNITS[dimensionOf(row)] ?? '';
  const number = `${Number((si / (unit ? findUnit(unit)!.factor : 1)).toPrecision(6))} ${unit}`.trim();
  const { form } = row.kind;
  if (form === 'span') return `${row.words} ${number} .. ${number}`;
  if (form === 'point') return `${row.words} ${number} at 1500 rpm`;
  if (form === 'bolts') return `${row.words} 4 x ${number}`;
  if (form === 'pilot') return `${row.words} ${number} female`;
  return `${row.words} ${number}`;
}

/** A number for the greater one that leaves room for twice as much of the smaller one. */
function middle(less: Row, than: Row): number {
  const [low, high] = [less, than].map(one => [one.range!.low, one.range!.high].map(siOf)) as [
    number[],
    number[],
  ];
  const from = Math.max(low[0]!, high[0]!, 1e-3);
  const to = Math.min(low[1]! / 2, high[1]!);
  const whole = dimensionOf(less) === 'number';
  return whole ? Math.round(Math.sqrt(from * to)) : Math.sqrt(from * to);
}

describe('figures of one thing that cannot both be true', () => {
  it.each(CASES)('%s: both are figures of one kind', (_, title, { less, than }) => {
    const own = rowAt(title, less).row;
    for (const path of than)
      expect([path, dimensionOf(rowAt(title, path).row)]).toEqual([path, dimensionOf(own)]);
  });

  it.each(CASES)('%s', async (_, title, { less, than, times = 1 }) => {
    const own = rowAt(title, less).row;
    const { row, out, inside } = rowAt(title, than[0]!);
    const si = middle(own, row);
    const spec = (factor: number) => {
      const great = statement(row, si);
      const written = inside ? `${inside} { ${great} }` : great;
      return SPECS[title]!(
        [statement(own, si * factor), ...(out ? [] : [written])].join('  '),
        out ? great : '',
      );
    };
    const bench = new Bench();
    const found = async (factor: number) => {
      const { told, refused } = await bench.judge(spec(factor));
      // Nothing is refused for another reason: both are read.
      expect(refused.filter(text => !text.includes('range'))).toEqual([]);
      return told.filter(each => each.rule === RULE && each.outcome === 'fails').map(each => each.message);
    };
    const words = `${own.words} `;
    expect(
      (await found(1 * Math.min(1, times))).filter(
        text => text.includes(words) && text.includes('more than'),
      ),
    ).toEqual([]);
    expect((await found(2)).join()).toContain(words);
  });
});

describe('days of one thing that cannot both be true', () => {
  it.each(DAYS)('%s', async (_, title, { less, than }) => {
    const { words } = rowAt(title, less).row;
    const other = rowAt(title, than[0]!).row;
    expect(than.map(path => isDay(rowAt(title, path).row))).toEqual(than.map(() => true));
    const found = async (day: string) => {
      const spec = SPECS[title]!(`${words} ${day}  ${other.words} 2025-11-10`, 'diameter 65 mm');
      const said = (await saidBy(RULE, spec)).filter(one => one.outcome === 'fails');
      return said.map(one => one.message);
    };
    expect(await found('2025-11-10')).toEqual([]);
    expect(await found('2025-11-11')).toEqual([expect.stringContaining(`${words} 2025-11-11 is later than`)]);
  });

  it('are there', () => expect(DAYS.length).toBeGreaterThan(1));
});

describe('two points of one curve at one speed', () => {
  it.each([
    ['full-load torque 1400 N.m at 1400 rpm', 'full-load torque 1200 N.m at 1400 rpm', RULE],
    ['full-load power 200 kW at 1400 rpm', 'full-load power 170 kW at 1400 rpm', RULE],
    // 1400 N·m at 1400 rpm are 205.3 kW.
    [
      'full-load torque 1400 N.m at 1400 rpm',
      'full-load power 180 kW at 1400 rpm',
      'capacity/power-and-torque',
    ],
  ])('%s and %s', async (one, other, rule) => {
    const spec = changed(SINGLE_LINE, ['{ flywheel aft }', `{ flywheel aft  ${one}  ${other} }`]);
    const said = await saidBy(rule, spec);
    expect(said.filter(each => each.outcome === 'fails')).toHaveLength(1);
    const alone = changed(SINGLE_LINE, ['{ flywheel aft }', `{ flywheel aft  ${one} }`]);
    expect((await saidBy(rule, alone)).filter(each => each.outcome === 'fails')).toEqual([]);
  });

  it('of the resistance of a hull', async () => {
    const hull = 'hull planing { resistance 10 kN at 12 kn  resistance 14 kN at 12 kn }';
    const spec = changed(SINGLE_LINE, ['  arrangement proposed {', `  ${hull}\n  arrangement proposed {`]);
    expect((await saidBy(RULE, spec)).map(each => each.outcome)).toEqual(['fails']);
  });
});

describe('a date that is still to come', () => {
  // Every test is judged on 1 March 2026.
  it.each([
    ['[measured 2026-03-01]', 0],
    ['[measured 2026-03-02]', 1],
    ['[drawing 2027-01-01]', 1],
  ])('on the evidence of a fact: %s', async (mark, count) => {
    const spec = shaft(`diameter 65 mm ${mark}`);
    const said = (await saidBy(RULE, spec)).filter(one => one.outcome === 'fails');
    expect(said).toHaveLength(count);
  });

  it('on the sheet of a part', async () => {
    const spec = passing(RULE).replace('dated 2025-02-10', 'dated 2026-04-10');
    expect((await saidBy(RULE, spec)).filter(one => one.outcome === 'fails')).toHaveLength(1);
  });
});
