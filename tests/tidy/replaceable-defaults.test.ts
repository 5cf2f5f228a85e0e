import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  ASSUMABLE,
  ENTRY_VOCABULARY,
  PLACE_VOCABULARY,
  VESSEL_VOCABULARY,
  type Vocabulary,
} from '@tailshaft/vocabulary';
import { expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');

function wordsIn({ rows, blocks }: Vocabulary): string[] {
  return [...rows.map(one => one.words), ...blocks.flatMap(one => wordsIn(one.block))];
}

it('what a default is to be replaced by can be written', () => {
  const writable = new Set([
    ...[ENTRY_VOCABULARY, PLACE_VOCABULARY, VESSEL_VOCABULARY].flatMap(table =>
      Object.values(table).flatMap(wordsIn),
    ),
    ...ASSUMABLE.map(one => `assume ${one.words}`),
  ]);
  const named = ['mechanics', 'drivetrain'].flatMap(name => {
    const source = join(root, 'packages', name, 'src');
    return readdirSync(source, { recursive: true, encoding: 'utf8' })
      .filter(path => path.endsWith('.ts'))
      .flatMap(path => [...readFileSync(join(source, path), 'utf8').matchAll(/replaceWith: '([^']+)'/g)])
      .map(found => found[1]!);
  });
  expect(named.length).toBeGreaterThan(10);
  expect(named.filter(words => !writable.has(words))).toEqual([]);
});
