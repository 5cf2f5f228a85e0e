import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');

/**
 * Unit and number are data of the value (`unit`, `figure`): whoever searches the written words for them misses `1.75"` and
 * `4 ft 2 in`.
 */
const SEARCHED = [
  /\.(?:exec|test)\([^)]*\bwritten\b/,
  /(?:Number|parseFloat|findUnit)\([^)]*\bwritten\b/,
  /\bwritten\b[?!]?\.(?:match|replace|split|slice|startsWith|endsWith|includes|indexOf|search)\(/,
  /\bwritten \?\? ''\)\.(?!length)/,
];

/** Where `written` is the text of a sentence, a word of a setting, or only set in finer type. */
const OTHER_TEXT: Readonly<Record<string, string>> = {
  'language/elaborate/sentence.ts': 'the words of a requirement, read there',
  'language/reading/forms/negative.ts': 'the words without the minus, as a fix writes them',
  'drivetrain/judge/acceptance-policy.ts': 'a duration in the settings',
  'language/reading/dates.ts': 'a date',
  'language/reference/language-reference.ts': 'the page that shows the forms of numbers',
  'language/server/completion/completion.ts': 'the text before the cursor',
  'sheet/words.ts': 'the point of a unit set as a raised one',
};

it('no layer takes the unit or the number of a value from its written words', () => {
  const found = ['drivetrain', 'language', 'sheet', 'cli', 'vscode'].flatMap(name => {
    const source = join(root, 'packages', name, 'src');
    return readdirSync(source, { recursive: true, encoding: 'utf8' })
      .filter(path => path.endsWith('.ts'))
      .flatMap(path => {
        const lines = readFileSync(join(source, path), 'utf8').split('\n');
        return lines
          .filter(line => SEARCHED.some(one => one.test(line)))
          .map(line => `${name}/${path}: ${line.trim()}`);
      });
  });
  const left = found.filter(one => !Object.keys(OTHER_TEXT).some(path => one.startsWith(`${path}:`)));
  expect(left).toEqual([]);
  const needed = Object.keys(OTHER_TEXT).filter(path => !found.some(one => one.startsWith(`${path}:`)));
  expect(needed, 'exceptions that nothing needs').toEqual([]);
});
