import { STATEMENTS, type Statement } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { KEYWORDS } from '../../src/services/keywords.js';
import { scan } from '../../src/text/scan.js';
import { Specs } from '../edit/specs.js';

const LINE =
  'engine { low idle 650 rpm } coupling { mass 3 kg } shaft { diameter 80 mm } propeller { pitch 24 in }';
const BEFORE = `arrangement existing { shaftline Port { ${LINE} } }`;

/** A text in which a statement of this place stands by itself. */
const around: Readonly<Record<Statement['where'], (text: string) => string>> = {
  file: text => text,
  vessel: text => `vessel V {\n${text}\narrangement proposed { }\n}`,
  arrangement: text => `vessel V {\narrangement a {\n${text}\n}\n}`,
  line: text =>
    `vessel V {\n${BEFORE}\narrangement proposed revises existing {\nshaftline Port {\n${text}\n}\n}\n}`,
};
/** What is missing around an example says nothing of how it is written. */
const READING = /^text\/(?!unknown-name|import)/;

describe('the table of statements', () => {
  it.each(STATEMENTS.map(one => [one.word, one] as const))(
    '%s: the example is read',
    async (_, { where, example }) => {
      const text = around[where](example);
      const { check } = await Specs.read({ 'statement.shaft': text });
      expect(check.problems.filter(one => READING.test(one.code)).map(one => one.message)).toEqual([]);
    },
  );

  it.each(STATEMENTS.map(one => [one.word, one] as const))(
    '%s begins as the grammar has it',
    (word, { parts }) => {
      expect(KEYWORDS.has(word)).toBe(true);
      const words = parts.flatMap(one => ('word' in one ? one.word.split(' ') : []));
      for (const one of words.filter(said => !['at', 'least'].includes(said)))
        expect(KEYWORDS.has(one), one).toBe(true);
      expect(scan(parts.map(one => ('word' in one ? one.word : '')).join(' '))[0]?.text).toBe(word);
    },
  );
});
