import { type Dimension, findUnit, formatQuantity, fromSI, unitsOf } from '@tailshaft/mechanics';
import {
  ENTRY_VOCABULARY,
  limitsOf,
  PLACE_VOCABULARY,
  type Range,
  type Row,
  VESSEL_VOCABULARY,
  type Vocabulary,
} from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { everyRow, readLine } from './read-line.js';

const read = readLine;
const engine = (text: string) => read(ENTRY_VOCABULARY.engine!, text);
const gear = (text: string) => read(ENTRY_VOCABULARY.gear!, text);
const place = (text: string) => read(PLACE_VOCABULARY.engine!, text);
const material = (text: string) => read(ENTRY_VOCABULARY['shaft material']!, text);
const propeller = (text: string) => read(PLACE_VOCABULARY.propeller!, text);
const criteria = (text: string) => read(VESSEL_VOCABULARY.criteria!, text);
const hull = (text: string) => read(VESSEL_VOCABULARY.hull!, text);
const clutch = (text: string) => read(block(ENTRY_VOCABULARY.gear!, 'clutches'), text);
const train = (text: string) => read(block(block(ENTRY_VOCABULARY.gear!, 'clutches'), 'train'), text);
const block = (of: Vocabulary, field: string) => of.blocks.find(one => one.field === field)!.block;

describe('a number outside what such a thing can be', () => {
  it.each([
    [gear, 'efficiency 97', '"efficiency 97" is not between 0.6 and 1: did you mean 97 %?', '97 %'],
    [engine, 'mechanical efficiency 85', 'not between 0.5 and 1: did you mean 85 %?', '85 %'],
    [clutch, 'friction 5', 'not between 0.01 and 0.8: did you mean 5 %?', '5 %'],
    [
      material,
      'density 490 kg/m3',
      '"density 490 kg/m3" is not between 1000 kg/m³ and 12000 kg/m³: did you mean 490 lb/ft3?',
      '490 lb/ft3',
    ],
    [place, 'air pressure 10 bar', '"air pressure 10 bar" is not between 0.6 bar and 1.1 bar', undefined],
    [place, 'air pressure 1013 kPa', 'did you mean', '1013 mbar'],
    [propeller, 'diameter 23 mm', 'is not between 80 mm and 12000 mm', '23 in'],
    [propeller, 'area ratio 72', 'did you mean 72 %', '72 %'],
    [criteria, 'gear torque margin at least 10', 'did you mean 10 %?', '10 %'],
    [hull, 'LCB -2', 'did you mean -2 %?', '-2 %'],
    [engine, 'peak torque 1480 N.m at 1500 rad/s', 'did you mean 1500 rpm', '1500 rpm'],
  ] as const)('%o: is told where it stands: %s', (reader, text, said, fix) => {
    const { reading, fact } = reader(text);
    expect(reading.problems.map(one => one.code)).toEqual(['text/out-of-range']);
    const [problem] = reading.problems;
    expect(problem!.message).toContain(said);
    expect(fact?.outOfRange).toBe(problem!.message);
    if (!fix) return;
    const choices = problem!.choices ?? [];
    expect(choices.map(one => one.text)).toContain(fix);
    const one = choices.find(({ text: put }) => put === fix)!;
    const mended = text.slice(0, one.start) + fix + text.slice(one.end);
    expect(reader(mended).reading.problems, mended).toEqual([]);
    expect(reader(mended).fact?.outOfRange).toBeUndefined();
  });

  it.each([
    [engine, 'mass 0 kg'],
    [engine, 'cylinders 0'],
    [propeller, 'diameter 0 mm'],
    [engine, 'peak torque 480 N.m at 0 rpm'],
    [gear, 'oil pressure 0 .. 24 bar'],
  ] as const)('that is nil where nothing can be nil is refused: %#', (reader, text) => {
    const { reading, fact } = reader(text);
    expect(reading.problems.map(one => one.code)).toEqual(['text/number']);
    expect(fact).toBeUndefined();
  });

  it.each([
    [engine, 'cylinders 6.5'],
    [propeller, 'blades 3.5'],
    [train, 'mesh A 23.5 with B 47'],
    [train, 'mesh A 23 with B 47.25'],
    [clutch, 'friction plates 6.000001'],
    [(text: string) => read(block(ENTRY_VOCABULARY.gear!, 'outputFlange'), text), 'bolts 4.5 x 1/2 in'],
  ] as const)('that is a part of what is counted whole: %#', (reader, text) => {
    const { reading, fact } = reader(text);
    expect(reading.problems.map(one => one.code)).toEqual(['text/out-of-range']);
    expect(fact?.outOfRange).toContain('is not a whole number');
  });

  // What is no count of things, and may have a half: factors, and spans in diameters.
  it('every property of a plain number either is counted whole or is one of these', () => {
    const loose = everyQuantity().filter(([, , row, range]) => dimensionOf(row) === 'number' && !range.whole);
    expect([...new Set(loose.map(([, , row]) => row.words))].sort()).toMatchInlineSnapshot(`
      [
        "Crouch constant",
        "class plant factor at least",
        "class shaft factor at least",
        "damping factor",
        "dynamic magnifier",
        "relative damping",
        "span diameters at least",
        "span diameters at most",
        "strand factor",
      ]
    `);
  });

  const rows = everyQuantity();
  it.each(rows)('%s: over and under its range is an error, its ends are not', (_, vocabulary, row, range) => {
    const dimension = (row.kind as { dimension: Dimension }).dimension;
    const { low, high } = limitsOf(range, dimension);
    const unit = unitsOf(dimension)[0] ?? findUnit('1')!;
    const write = (si: number) =>
      `${row.words} ${fromSI(si, unit).toPrecision(12)} ${unit.symbol}`.replace(/ 1$/, '');
    const codes = (si: number) => read(vocabulary, write(si)).reading.problems.map(one => one.code);
    const step = (high - low) / 100;
    expect(codes(high + step), write(high + step)).toEqual(['text/out-of-range']);
    if (low - step > 0 || (low < 0 && row.signed))
      expect(codes(low - Math.min(step, Math.abs(low) / 2)), write(low)).toEqual(['text/out-of-range']);
    if (range.whole) expect(codes(low + 0.5)).toEqual(['text/out-of-range']);
    expect(codes(high), formatQuantity(high, unit)).toEqual([]);
    expect(codes(low), formatQuantity(low, unit)).toEqual([]);
  });
});

const dimensionOf = (row: Row) => (row.kind as { readonly dimension?: Dimension }).dimension;

function everyQuantity(): (readonly [string, Vocabulary, Row, Range])[] {
  return everyRow().flatMap(([path, vocabulary, row]) =>
    row.kind.form === 'quantity' && row.range ? [[path, vocabulary, row, row.range] as const] : [],
  );
}
