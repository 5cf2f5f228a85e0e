import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');

/** What `prose` of mechanics says once, by the code that would say it again. */
const AGAIN: Readonly<Record<string, RegExp>> = {
  'percent, signedPercent': /toFixed\([^`]*\)\} %|\* 100\)?\} %/,
  minusSign: /replace\('-', '−'\)|'−' : '\+'/,
  listed: /\.slice\(0, -1\)\.join\('?, |\.join\(' (?:and|or) '\)/,
  'count, plural': /=== 1 \? '([a-z ]+)' : '\1s'/,
  withArticle: /\[aeiou\]/,
  'capital, uncapital': /charAt\(0\)\.to(?:Upper|Lower)Case|\[0\]!?\.to(?:Upper|Lower)Case/,
  wordsOfKey: /\(\[a-z\]\)\(\[A-Z\]\)|replace\(\/\[A-Z\]\/g/,
  ruleWords: /\.split\('\/'\)\.at\(-1\)!\.replaceAll\('-', ' '\)/,
};

/** Where it is another thing than it looks. */
const OTHERWISE: Readonly<Record<string, string>> = {
  'drivetrain/rules/paper/revision-signed.ts': 'signatures have a comma inside',
  'language/actions/quick-fixes.ts': 'two of several, with a tail behind them',
  'drivetrain/judge/rule-words.ts': 'the words themselves',
  'language/server/hover/figures.ts': 'a ratio to all its digits',
  'language/server/hover/quantities.ts': 'a ratio to all its digits',
};

it('no package says a share, a list, a count or an article by code of its own', () => {
  const found = ['vocabulary', 'drivetrain', 'language', 'sheet', 'cli', 'vscode'].flatMap(name => {
    const source = join(root, 'packages', name, 'src');
    return readdirSync(source, { recursive: true, encoding: 'utf8' })
      .filter(path => path.endsWith('.ts') && !path.includes('generated') && !OTHERWISE[`${name}/${path}`])
      .flatMap(path =>
        readFileSync(join(source, path), 'utf8')
          .split('\n')
          .flatMap(line =>
            Object.entries(AGAIN).flatMap(([once, again]) =>
              again.test(line) ? [`${name}/${path} (${once}): ${line.trim()}`] : [],
            ),
          ),
      );
  });
  expect(found).toEqual([]);
});
