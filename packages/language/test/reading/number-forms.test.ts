import { findUnit, provenanceOf, toSI, type Unit, type Value } from '@tailshaft/mechanics';
import {
  ENTRY_VOCABULARY,
  PLACE_VOCABULARY,
  type Row,
  unitsOfKind,
  VESSEL_VOCABULARY,
} from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/support/share.js';
import { everyRow, readLine } from './read-line.js';

/** How people write numbers, and what they mean by it. */
const FORMS: readonly (readonly [text: string, number: number])[] = [
  ['4', 4],
  ['1.75', 1.75],
  ['+2.5', 2.5],
  ['3/4', 0.75],
  ['1 3/4', 1.75],
  ['1-3/4', 1.75],
  ['1 3⁄4', 1.75],
  ['¾', 0.75],
  ['1¾', 1.75],
  ['1 ⅞', 1.875],
  ['5e2', 500],
  ['1.5E-1', 0.15],
  ['2e+1', 20],
  ['2e−1', 0.2],
];
const SPACES = [' ', '\u00A0', '\u202F', '\u2009'];

const numbered = everyRow().filter(([, , row]) => ['quantity', 'point', 'span'].includes(row.kind.form));

describe('what people write', () => {
  it.each(share(numbered, 150))(
    '%s is read in every unit that it lists, in every spelling',
    (_, vocabulary, row) => {
      for (const unit of unitsOfKind(row.kind))
        for (const spelling of new Set([unit.symbol, unit.display, ...unit.aliases]))
          back(vocabulary, row, '4', 4, unit, spelling);
    },
  );

  it.each(share(numbered, 150))('%s is read in every form of a number', (_, vocabulary, row) => {
    for (const [text, number] of FORMS) {
      for (const unit of unitsOfKind(row.kind)) back(vocabulary, row, text, number, unit, unit.symbol);
      const unit = unitsOfKind(row.kind)[0]!;
      for (const space of SPACES) back(vocabulary, row, text, number, unit, unit.symbol, space);
    }
  });

  it.each(numbered.filter(([, , row]) => row.signed))(
    '%s is read with a typographic minus',
    (_, vocabulary, row) => {
      const unit = unitsOfKind(row.kind)[0]!;
      back(vocabulary, row, '−3', -3, unit, unit.symbol);
      back(vocabulary, row, '-3', -3, unit, unit.symbol);
    },
  );

  const lengths = numbered.filter(
    ([, , row]) => row.kind.form === 'quantity' && row.kind.dimension === 'length',
  );
  it.each(lengths)('%s is read with marks of feet and inches', (_, vocabulary, row) => {
    for (const [text, inches] of [
      ['1.75"', 1.75],
      ['1 3/4"', 1.75],
      ['1¾″', 1.75],
      ["4'", 48],
      ['4\' 2"', 50],
      ['4\'2"', 50],
      ['4 ft 2 in', 50],
      ['4 ft 2 1/2 in', 50.5],
      ['4′ 2½″', 50.5],
    ] as const) {
      const { reading, fact } = readLine(vocabulary, `${row.words} ${text}`);
      expect(problems(reading), text).toEqual([]);
      const value = fact!.value as Value;
      expect(value.si, text).toBeCloseTo(inches * 0.0254, 12);
      expect(value.written).toBe(text.replace("4'2", "4' 2"));
    }
  });
});

describe('a pressure that says what it counts from', () => {
  it.each([
    ['oil pressure', ENTRY_VOCABULARY.gear!, 'oil pressure 20 .. 24 barg', undefined],
    ['oil pressure', ENTRY_VOCABULARY.gear!, 'oil pressure 290 .. 350 psig', undefined],
    ['air pressure', PLACE_VOCABULARY.engine!, 'air pressure 1.0 bara', undefined],
    ['air pressure', PLACE_VOCABULARY.engine!, 'air pressure 14.5 psia', undefined],
    // 101.325 kPa = 14.695949 psi: NIST SP 811, Appendix B.
    ['air pressure', PLACE_VOCABULARY.engine!, 'air pressure 0 psig', 'Write 14.7 psi'],
    ['oil pressure', ENTRY_VOCABULARY.gear!, 'oil pressure 20 .. 24 bara', 'Write 22.99 bar'],
    ['yield', ENTRY_VOCABULARY['shaft material']!, 'tensile yield 70000 psig', 'Write 70000 psi'],
  ] as const)('%s: %#', (_, vocabulary, text, fix) => {
    const { reading, fact } = readLine(vocabulary, text);
    expect(reading.problems.map(one => one.choices?.[0]?.title)).toEqual(fix ? [fix] : []);
    expect(fact === undefined).toBe(fix !== undefined);
  });
});

describe('unknown inside a compound value', () => {
  const rating = ENTRY_VOCABULARY.engine!.blocks.find(one => one.field === 'ratings')!.block;
  const flange = ENTRY_VOCABULARY.gear!.blocks.find(one => one.field === 'outputFlange')!.block;
  const ratio = ENTRY_VOCABULARY.gear!.blocks.find(one => one.field === 'ratios')!.block;
  const train = ratio.blocks.find(one => one.field === 'train')!.block;
  it.each([
    [rating, 'power 350 hp at unknown', ['rotational speed']],
    [rating, 'power unknown at 2300 rpm', ['power']],
    [rating, 'hours unknown per year', ['number']],
    [ENTRY_VOCABULARY.gear!, 'layout down-angle unknown', ['angle']],
    [ENTRY_VOCABULARY.gear!, 'oil pressure unknown .. 24 bar', ['low end']],
    [ENTRY_VOCABULARY.gear!, 'oil pressure 20 .. unknown', ['high end']],
    [ENTRY_VOCABULARY.gear!, 'input rotation clockwise viewed from unknown', ['viewing point']],
    [ENTRY_VOCABULARY.gear!, 'source "Sheet 4" dated unknown', ['date']],
    [ENTRY_VOCABULARY.transfer!, 'output opposite seen from unknown', ['viewing point']],
    [flange, 'bolts 4 x unknown', ['size of the bolts']],
    [flange, 'bolts unknown x 1/2 in', ['number of bolts']],
    [flange, 'pilot unknown female', ['diameter']],
    [flange, 'pilot 63.5 mm unknown', ['male or female']],
    [train, 'mesh A unknown with B 47', ['teeth of A']],
    [VESSEL_VOCABULARY.criteria!, 'shaft diameter by small-craft formula factor unknown', ['factor']],
  ] as const)('%#: %s is one open question', (vocabulary, text, open) => {
    const { reading, fact } = readLine(vocabulary, text);
    expect([...reading.problems, ...reading.concerns]).toEqual([]);
    expect(reading.facts).toHaveLength(1);
    expect(fact?.open).toEqual(open);
    expect(reading.unread).toEqual([]);
  });

  it('keeps what is known of it', () => {
    const { fact } = readLine(rating, 'power 350 hp at unknown');
    expect(fact?.value).toBeUndefined();
    expect(fact!.known!.y).toMatchObject({ written: '350 hp', unit: 'hp' });
  });
});

describe('a decimal comma', () => {
  it.each([
    ['diameter 57,5 mm', ['57.5']],
    ['diameter 1,75"', ['1.75"']],
    ['length 12,000 mm', ['12.000', '12000']],
  ])('%s gets one message, with what it may mean', (text, fixes) => {
    const { reading, fact } = readLine(PLACE_VOCABULARY.shaft!, text);
    expect(reading.problems.map(one => one.code)).toEqual(['text/decimal-comma']);
    expect(reading.concerns).toEqual([]);
    expect(reading.problems[0]!.choices!.map(one => one.text)).toEqual(fixes);
    expect(fact).toBeUndefined();
  });
});

/** A unit of what a point stands at. */
const OTHER_AXIS: Readonly<Record<string, string>> = { speed: 'kn', 'rotational speed': 'rpm', ratio: '%' };

function back(
  vocabulary: Parameters<typeof readLine>[0],
  row: Row,
  text: string,
  number: number,
  unit: Unit,
  spelling: string,
  space = ' ',
): void {
  const one = spelling === '' || spelling === '1' ? text : `${text} ${spelling}`;
  const x = row.kind.form === 'point' ? ` at 4 ${OTHER_AXIS[row.kind.at]}` : '';
  const written = row.kind.form === 'span' ? `${text} .. ${one}` : one + x;
  const line = `${row.words} ${written}`.replace(/ /g, space);
  const { reading, fact } = readLine(vocabulary, line);
  expect([...problems(reading), ...reading.concerns], line).toEqual([]);
  const value = fact?.value as Value & { readonly y: Value; readonly high: Value };
  const got = row.kind.form === 'point' ? value.y : row.kind.form === 'span' ? value.high : value;
  expect(findUnit(got.unit!)?.symbol, line).toBe(unit.symbol);
  expect(got.si / toSI(number, unit), line).toBeCloseTo(1, 9);
  expect(got.figure?.text.replace(/\s/g, ' '), line).toBe(text.replace(/\s/g, ' '));
  expect(provenanceOf(got)).toBe('declared');
}

/** A number may be outside what such a thing can be: that is another test. */
function problems(reading: ReturnType<typeof readLine>['reading']) {
  return reading.problems.filter(one => one.code !== 'text/out-of-range');
}
