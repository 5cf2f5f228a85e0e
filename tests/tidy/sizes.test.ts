import { statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

/*
 * What is installed may grow by a rule, not by an accident: a library taken in twice, texts of the rules in the server, a part
 * that a start does not need and that no longer stands apart. Who goes over a limit finds out what grew before raising it.
 */

const LIMITS: Readonly<Record<string, number>> = {
  'packages/vscode/dist/server.js': 1550,
  'packages/vscode/dist/server-asked.js': 164,
  'packages/vscode/dist/server-more.js': 225,
  'packages/vscode/dist/extension.js': 480,
  'packages/cli/dist/program.cjs': 2250,
  'packages/cli/dist/index.mjs': 1620,
};

it.each(Object.entries(LIMITS))('%s is at most %i KB', (path, most) => {
  const size = Math.round(statSync(join(import.meta.dirname, '../..', path)).size / 1024);
  expect(size).toBeLessThanOrEqual(most);
  // A limit that nothing comes near keeps nothing.
  expect(size).toBeGreaterThan(most * 0.8);
});
