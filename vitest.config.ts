import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['packages/*/test/**/*.test.ts', 'tests/**/*.test.ts'],
          exclude: ['**/node_modules/**', 'tests/workbench/**', 'tests/clients/**'],
          setupFiles: ['packages/language/scripts/group-by.mjs'],
          testTimeout: 60_000,
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
