#!/usr/bin/env node
/*
 * What one short run of the command line costs: node tests/bench/check.mjs [runs] [another tailshaft.cjs ...]
 * Each program checks one vessel, without and with the code that an earlier run compiled; medians, taken in turns, so that
 * what else the machine does falls on all of them. Nothing here passes or fails.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const runs = Number(process.argv[2] ?? 15);
const programs = [join(root, 'packages/cli/dist/tailshaft.cjs'), ...process.argv.slice(3)];
const spec = join(root, 'examples/pilot-cutter/ternhaven.shaft');
const cache = mkdtempSync(join(tmpdir(), 'tailshaft-bench-'));

const cases = [
  ['node, nothing', ['--eval', ''], ''],
  ...programs.flatMap(program => [
    [`${program} --version`, [program, '--version'], cache],
    [`${program} check, nothing kept`, [program, 'check', spec], ''],
    [`${program} check`, [program, 'check', spec], cache],
  ]),
].map(([name, words, kept]) => ({ name: name.replace(`${root}/`, ''), words, kept, clock: [], work: [] }));

for (let run = -1; run < runs; run++) for (const one of cases) measure(one, run >= 0);
rmSync(cache, { recursive: true, force: true });
console.table(
  cases.map(({ name, clock, work }) => ({
    run: name,
    'clock ms': median(clock),
    'processor ms': median(work),
  })),
);

/** The first run of each fills the cache and is not counted. */
function measure({ words, kept, clock, work }, counts) {
  const before = childTime();
  const started = performance.now();
  spawnSync(process.execPath, words, { env: { ...process.env, TAILSHAFT_CACHE: kept } });
  if (!counts) return;
  clock.push(performance.now() - started);
  work.push(childTime() - before);
}

/** What processes that were waited for have used, in steps of 10 ms; Linux alone tells. */
function childTime() {
  try {
    const stat = readFileSync('/proc/self/stat', 'utf8').split(') ')[1].split(' ');
    return (Number(stat[13]) + Number(stat[14])) * 10;
  } catch {
    return Number.NaN;
  }
}

function median(numbers) {
  return Math.round([...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)]);
}
