import { leadOf, partsOf, STATEMENTS, type Statement } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { KEYWORDS } from '../../src/services/keywords.js';
import { scan } from '../../src/text/scan.js';
import { Specs } from '../edit/specs.js';

const LINE =
  'engine { low idle 650 rpm } coupling { mass 3 kg } shaft { diameter 80 mm } propeller { pitch 24 in }';
const BEFORE = `arrangement existing { shaftline Port { ${LINE} } }`;

/** A text in which a statement of this place stands by itself. */
const around: Readonly<Record<Statement['where'], (text: string) => string>> = {
  anywhere: text => `${text}\nvessel V { }`,
  file: text => text,
  vessel: text =>
    /^arrangement/m.test(text)
      ? `vessel V {\n${text}\n}`
      : `vessel V {\n${text}\narrangement proposed { }\n}`,
  arrangement: text => `vessel V {\narrangement a {\n${text}\n}\n}`,
  line: text =>
    `vessel V {\n${BEFORE}\narrangement proposed revises existing {\nshaftline Port {\n${text}\n}\n}\n}`,
};
/** Names that the examples leave open: no file is beside them. */
const READING = /^text\/(?!unknown-name|import)/;

describe.each(STATEMENTS.map(one => [`${leadOf(one)} in ${one.where}`, one] as const))('%s', (_, one) => {
  it('has an example that is read as it is printed', async () => {
    const text = around[one.where](one.example);
    const { check } = await Specs.read({ 'statement.shaft': text });
    expect(check.problems.filter(found => READING.test(found.code)).map(found => found.message)).toEqual([]);
  });

  it('may be unknown behind each of its clauses', async () => {
    // A study of no arrangement studies nothing, and says so.
    const clause =
      one.word === 'study' ? /$^/g : /\b(because|by|dated|until|of) ("[^"]*"|\d{4}-\d{2}-\d{2}|\w+)/g;
    const clauses = [...one.example.matchAll(clause)].map(found => [found[0], found[1]!] as const);
    for (const [said, word] of clauses.filter(([, begins]) => one.form.includes(` ${begins} <`))) {
      const text = around[one.where](one.example.replace(said, `${word} unknown`));
      const { check } = await Specs.read({ 'statement.shaft': text });
      expect(
        check.problems.map(found => found.message),
        said,
      ).toEqual([]);
    }
  });

  const [head, block = ''] = one.example.split(/(?= \{)/);
  const clauses = [
    ...head!.matchAll(/(?<= )(?:(?:of|on|dated|revises|because|by|until) )(?:"[^"]*"|\S+)|(?<=\w )"[^"]*"$/g),
  ].map(([said]) => said);
  it.runIf(clauses.length > 1)('has clauses that stand in any order', async () => {
    const lead = head!.slice(0, head!.indexOf(clauses[0]!));
    const text = around[one.where](`${lead}${clauses.reverse().join(' ')}${block}`);
    const { check } = await Specs.read({ 'statement.shaft': text });
    expect(check.problems.filter(found => READING.test(found.code)).map(found => found.message)).toEqual([]);
  });

  it('has the words of the grammar in its form', () => {
    if (one.where === 'anywhere') return expect(scan(one.example)).toMatchObject([{ kind: 'comment' }]);
    const words = partsOf(one).flatMap(part => ('word' in part ? part.word.split(' ') : []));
    // The two words of a bound are words of the sentence only.
    for (const word of words.filter(said => !['at', 'least'].includes(said)))
      expect(KEYWORDS.has(word), word).toBe(true);
  });

  it('begins its example as its form does', () => {
    const last = one.example.split('\n').at(-1)!;
    expect(last.startsWith(leadOf(one))).toBe(true);
  });
});

it.each(['arrangement b revises a "later" { }', 'study s of a "which" { vary hull friction 1, 2 }'])(
  'reads %s, with its title behind the name of another',
  async statement => {
    const { check } = await Specs.read({ 'statement.shaft': `vessel V { arrangement a { }\n${statement} }` });
    expect(check.problems.filter(found => /stray|missing/.test(found.code))).toEqual([]);
  },
);
