import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT } from './sources.js';

/** Folders that hold what was installed, built or is written by a tool. */
const NOT_OURS = new Set(['node_modules', 'dist', 'out', 'generated', 'lib']);

function* sources(folder: string): Iterable<string> {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) {
      if (!NOT_OURS.has(entry.name)) yield* sources(path);
    } else if (/\.(ts|mjs)$/.test(entry.name)) yield relative(ROOT, path);
  }
}

test('source files and their folders have names in small letters with hyphens between the words', () => {
  const paths = ['packages', 'tests', '.ci'].flatMap(folder => [...sources(join(ROOT, folder))]);
  expect(paths.length).toBeGreaterThan(500);
  expect(paths.filter(path => !/^[a-z0-9.\-/]+$/.test(path))).toEqual([]);
});
