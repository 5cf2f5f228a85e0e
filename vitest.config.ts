import { readdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

/** Suites that take a share of what they generate, and the whole of it in the long project. */
const shared = ['packages', 'tests'].flatMap(folder =>
  readdirSync(join(import.meta.dirname, folder), { recursive: true, encoding: 'utf8' })
    .map(path => join(folder, path).replaceAll('\\', '/'))
    .filter(path => path.endsWith('.test.ts') && !path.includes('/node_modules/'))
    .filter(path => /from '[^']*\/support\/share\.js'/.test(readFileSync(path, 'utf8'))),
);
const long = 'tests/**/*.long.test.ts';
const editors = ['tests/workbench/**/*.test.ts', 'tests/clients/**/*.test.ts'];

const common = {
  setupFiles: ['packages/language/scripts/group-by.mjs'],
  // The sources are loaded once for all suites of a worker: no suite may leave anything behind in them.
  isolate: false,
  maxWorkers: Math.min(4, availableParallelism()),
};

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          ...common,
          name: 'unit',
          include: ['packages/*/test/**/*.test.ts', 'tests/**/*.test.ts'],
          exclude: ['**/node_modules/**', ...editors, long],
          testTimeout: 60_000,
        },
      },
      {
        test: {
          ...common,
          name: 'long',
          include: [long, ...shared],
          env: { TAILSHAFT_WHOLE: '1' },
          testTimeout: 600_000,
        },
      },
      {
        test: {
          name: 'editors',
          include: editors,
          globalSetup: ['tests/workbench/large-tools.ts'],
          testTimeout: 180_000,
          hookTimeout: 180_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
