import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');

/** A unit is data of the value (`unit`): whoever searches the written words for it misses `1.75"` and `4 ft 2 in`. */
const SEARCHED = [
  /findUnit\([^)]*\.exec\([^)]*written/,
  /findUnit\([^)]*written[^)]*split/,
  /\bin\\b[^\n]*written/,
];

it('no layer takes the unit of a value from its written words', () => {
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
  expect(found).toEqual([]);
});
