import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { EmptyFileSystem } from 'langium';
import { describe, expect, it } from 'vitest';
import { times } from '../../../../tests/support/share.js';
import type { Document } from '../../src/generated/ast.js';
import { readInPieces, readWhole } from '../../src/incremental/pieces.js';
import { cutStatements } from '../../src/incremental/statements.js';
import { headOfWholeEntry } from '../../src/incremental/unread-entry.js';
import { type DocumentReading, readDocument } from '../../src/reading/document.js';
import { createTailshaftCore } from '../../src/services/module.js';
import { randomFrom } from '../server/random.js';

const { LangiumParser } = createTailshaftCore(EmptyFileSystem).language.parser;
const URI = 'file:///catalogue.shaft';

const CATALOGUE = ['engines', 'gears', 'materials', 'couplings']
  .map(one =>
    readFileSync(resolve(import.meta.dirname, `../../../../examples/catalogue/${one}.shaft`), 'utf8'),
  )
  .join('\n');

const READ_LATER: readonly (readonly [string, string])[] = [
  ['a name', 'engine Petrel-6 { }'],
  ['a title', 'gear Teal-2 "Marine gear" { ratio 2:1 { } }'],
  ['comments all around', '/// For harbour craft.\n/* { */ // }\nmotor M1 { power 10 kW } // [ {\n/* ] */\n'],
  ['two words of a kind', 'shaft \t material Bronze-2 {\n  yield strength 300 MPa [maker "sheet 4"]\n}\n'],
  ['brackets in a text', 'coupling C7 { bore 1.75" [maker "page ] { 3"] }'],
  ['the quotes of an inch', 'propeller P1{ diameter 28 1/2" pitch 20" }'],
];

const READ_AT_ONCE: readonly (readonly [string, string])[] = [
  ['nothing behind the kind', 'engine'],
  ['no name', 'engine { }'],
  ['no block', 'engine Petrel-6'],
  ['a word of the grammar for a name', 'engine ratio { }'],
  ['something between name and block', 'engine Petrel-6 of { }'],
  ['something behind the block', 'engine Petrel-6 { } }'],
  ['another statement behind it', 'engine Petrel-6 { }\n  criteria { }'],
  ['a block left open', 'engine Petrel-6 { curve {'],
  ['evidence left open', 'engine Petrel-6 { power 10 kW [maker }'],
  ['a block in evidence', 'engine Petrel-6 { power 10 kW [maker { } ] }'],
  ['evidence that was never opened', 'engine Petrel-6 { power 10 kW maker ] }'],
  ['evidence in evidence', 'engine Petrel-6 { power 10 kW [maker [stamped] ] }'],
  ['a comment left open', 'engine Petrel-6 { /* }'],
  ['a long gap and nothing behind it', `${' \n'.repeat(20_000)}criteria`],
  ['a title left open', 'engine Petrel-6 "Old {\n }'],
];

describe('a catalogue entry of which only the head is read', () => {
  it.each(READ_LATER)('is one with %s', (_what, text) => {
    expect(headOfWholeEntry(text)).toEqual(headByParser(text));
  });

  it.each(READ_AT_ONCE)('is none with %s', (_what, text) => {
    expect(headOfWholeEntry(text)).toBeUndefined();
  });

  it('is one wherever it stands in the example catalogue', () => {
    const statements = cutStatements(CATALOGUE)!.map(({ start, end }) => CATALOGUE.slice(start, end));
    const entries = statements.filter(one => /^(?:engine|motor|gear|coupling|shaft material) /m.test(one));
    expect(entries.length).toBeGreaterThan(10);
    for (const one of entries) expect(headOfWholeEntry(one), one).toEqual(headByParser(one));
  });

  it('holds nothing that the parser finds fault with, whatever is typed', () => {
    const seed = 20261127;
    const random = randomFrom(seed);
    const bits = [
      '{',
      '}',
      '[',
      ']',
      '"',
      '\n',
      ' ',
      '/*',
      '*/',
      '// ',
      '1"',
      "'",
      '§',
      '\u0001',
      'gear',
      'A1 ',
    ];
    const statements = cutStatements(CATALOGUE)!.map(({ start, end }) => CATALOGUE.slice(start, end));
    let later = 0;
    for (let round = 0; round < times(150, 20_000); round++) {
      let text = statements[random(statements.length)]!;
      for (let change = 0; change <= random(3); change++) {
        const at = random(text.length);
        text = text.slice(0, at) + bits[random(bits.length)]! + text.slice(at + random(2));
      }
      const head = headOfWholeEntry(text);
      if (!head) continue;
      later += 1;
      expect(head, `seed ${seed}, ${text}`).toEqual(headByParser(text));
    }
    expect(later).toBeGreaterThan(20);
  });

  it('reads, asked late and at another place, what a reading at once gives', () => {
    const parsed: string[] = [];
    const parse = (text: string) => {
      parsed.push(text);
      return LangiumParser.parse(text);
    };
    const moved = `// one line more\n${CATALOGUE}`;
    const first = readInPieces(CATALOGUE, URI, parse, undefined, () => []);
    const names = first.reading.entries.map(one => one.name);
    expect(names.length).toBeGreaterThan(10);
    expect(parsed.length).toBeLessThan(3);
    // One is read before everything moves, one behind it, the others not before they are compared.
    expect(first.reading.entries[2]!.facts.facts.length).toBeGreaterThan(0);
    const second = readInPieces(moved, URI, parse, first, () => []);
    expect(second.reading.entries[5]!.facts.facts.length).toBeGreaterThan(0);
    const third = readInPieces(`\n${moved}`, URI, parse, second, () => []);
    const wanted = readWhole(`\n${moved}`, URI, text => LangiumParser.parse(text));
    expect(places(third.reading)).toEqual(places(wanted.reading));
    expect(third.syntax).toEqual(wanted.syntax);
    expect(third.reading.problems).toEqual(wanted.reading.problems);
  });
});

function places({ entries }: DocumentReading) {
  return entries.map(one => ({
    names: [one.kind, one.name, one.title, one.doc],
    at: [one.namePlace, one.whole].map(({ start, end }) => `${start}-${end}`),
    host: [one.host.start, one.host.end, one.host.headEnd, one.host.block],
    facts: one.facts.facts.map(({ row, words, value }) => [row.field, words, value]),
  }));
}

/** Undefined where the parser finds fault, or something else than one entry. */
function headByParser(text: string) {
  const { value, parserErrors } = LangiumParser.parse(text);
  if (parserErrors.length > 0) return undefined;
  const { entries, vessels, imports, strays } = readDocument(value as Document, URI, text);
  if (entries.length !== 1 || vessels.length + imports.length + strays.length > 0) return undefined;
  const { kind, name, title, namePlace } = entries[0]!;
  return {
    kind,
    name,
    ...(title === undefined ? {} : { title }),
    start: namePlace.start,
    end: namePlace.end,
  };
}
