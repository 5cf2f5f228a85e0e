import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, it } from 'vitest';

/** What is known to be killed of the formulas, with room for the luck of a sample; the score stands in tests/README.md. */
const LEAST = 60;

it('most mutants of some formulas are seen by their suites; SEED=7 takes others', () => {
  const root = join(import.meta.dirname, '../..');
  const seed = process.env.SEED ?? '1';
  const { stdout, stderr } = spawnSync(
    process.execPath,
    ['tests/mutation/mutate.mjs', 'packages/mechanics/src', '--sample', '4', '--seed', seed],
    { cwd: root, encoding: 'utf8', env: { ...process.env, VITEST: undefined, TAILSHAFT_WHOLE: undefined } },
  );
  console.info(stdout);
  const score = Number(/mutants killed, ([\d.]+) %/.exec(stdout)?.[1]);
  expect(score, stderr).toBeGreaterThan(LEAST);
});
