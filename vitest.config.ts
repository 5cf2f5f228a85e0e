import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['packages/*/test/**/*.test.ts', 'tests/**/*.test.ts'],
          exclude: [
            '**/node_modules/**',
            'tests/workbench/**',
            'tests/clients/**',
            'tests/**/*.long.test.ts',
          ],
          setupFiles: ['packages/language/scripts/group-by.mjs'],
          testTimeout: 60_000,
        },
      },
      {
        // What takes minutes: run by `.ci/run`, not by `npm test`.
        test: {
          name: 'long',
          include: ['tests/**/*.long.test.ts'],
          setupFiles: ['packages/language/scripts/group-by.mjs'],
          testTimeout: 180_000,
        },
      },
      {
        test: {
          name: 'editors',
          include: ['tests/workbench/**/*.test.ts', 'tests/clients/**/*.test.ts'],
          globalSetup: ['tests/workbench/large-tools.ts'],
          testTimeout: 180_000,
          hookTimeout: 180_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
