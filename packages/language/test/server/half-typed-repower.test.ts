import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Testbed } from './testbed.js';

const example = (path: string) =>
  readFileSync(resolve(import.meta.dirname, '../../../../examples', `${path}.shaft`), 'utf8');
const CATALOGUE = ['engines', 'gears', 'materials', 'couplings'].map(one => example(`catalogue/${one}`));
const TEXT = [...CATALOGUE, example('pilot-cutter/ternhaven').replace(/^import .*$/gm, '')].join('\n');

const RATIO = 'replace gear Alder-63 ratio 2.04:1';
/** What a repower looks like while it is typed: what, where, and where the one diagnostic stands. */
const STATES: readonly (readonly [what: string, from: string | RegExp, to: string, at: string])[] = [
  ['revises without a name', 'revises existing {', 'revises {', 'revises'],
  ['revises a name half typed', 'revises existing {', 'revises exist {', 'exist'],
  ['revises another name', 'revises existing {', 'revises before {', 'before'],
  ['revises half typed', 'revises existing {', 'revis {', 'revis'],
  ['revises misspelt', 'revises existing {', 'revizes existing {', 'revizes'],
  ['the brace of an arrangement missing', 'revises existing {', 'revises existing', 'arrangement'],
  ['the brace of the vessel missing', /(vessel Ternhaven.*) \{/, '$1', 'vessel'],
  ['the brace of a line missing', /(shaftline Port) \{/, '$1', 'shaftline'],
  ['the brace of a part missing', /^( +shaft) \{/m, '$1', 'shaft'],
  ['the brace of the hull missing', /(hull planing) \{/, '$1', 'hull'],
  ['the brace of the criteria missing', /(criteria) \{/, '$1', 'criteria'],
  ['the brace of a ratio missing', /(ratio 2.04:1 exact [\d.:]+) \{/, '$1', 'ratio'],
  ['the brace of an entry missing', /(engine Kittiwake-9 "[^"]*") \{/, '$1', 'engine'],
  ['mirrors without a name', 'mirrors Port', 'mirrors', 'mirrors'],
  ['mirrors a name half typed', 'mirrors Port', 'mirrors Por', 'Por'],
  ['mirrors half typed', 'mirrors Port', 'mirr', 'mirr'],
  ['mirrors misspelt', 'mirrors Port', 'mirors Port', 'mirors'],
  ['a ratio without what it is to', RATIO, RATIO.slice(0, -1), '2.04'],
  ['a ratio without its colon', RATIO, RATIO.slice(0, -2), '2.04'],
  ['a ratio up to its point', RATIO, 'replace gear Alder-63 ratio 2.', '2'],
  ['a ratio not begun', RATIO, 'replace gear Alder-63 ratio', 'ratio'],
  ['the word ratio half typed', RATIO, 'replace gear Alder-63 rat', 'rat'],
  ['an exact ratio half typed', 'exact 2.043:1', 'exact 2.043:', '2.043'],
];

const bed = new Testbed();

/** Code, words that the finding stands on, and message, without its place in the text. */
async function findings(text: string): Promise<string[]> {
  const document = await bed.open(text);
  return (document.diagnostics ?? []).map(({ code, severity, message, range }) => {
    const { start, end } = range;
    const words = document.textDocument.getText({ start, end }).slice(0, 60).split('\n')[0];
    return `${severity} ${code} at ${words}: ${message}`;
  });
}

describe('a repower half typed', () => {
  it.each(STATES)(
    '%s: one diagnostic at the cause, and no other finding comes or goes',
    async (_, from, to, at) => {
      const text = TEXT.replace(from as string, to);
      expect(text).not.toBe(TEXT);
      const before = await findings(TEXT);
      expect(before.length).toBeGreaterThan(1);
      const after = await findings(text);
      expect(before.filter(one => !after.includes(one))).toEqual([]);
      const own = after.filter(one => !before.includes(one));
      expect(own, own.join('\n')).toHaveLength(1);
      expect(own[0]).toMatch(new RegExp(`^1 text/[a-z-]+ at ${at}`));
    },
  );
});
