#!/usr/bin/env node
/*
 * How long the built command line takes to search ten thousand candidates of the pilot cutter, each judged by every check, and
 * how much memory: node tests/bench/study.mjs. One study in which most fail by a check that costs little, and one in which the
 * gear is given and propeller and shaft vary. Nothing here passes or fails.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const bundle = join(root, 'packages/cli/dist/tailshaft.cjs');
const spec = readFileSync(join(root, 'examples/pilot-cutter/ternhaven.shaft'), 'utf8');
const studies = {
  'any gear': `vary gear any
    vary propeller diameter 26 in .. 29.5 in by 0.5 in
    vary propeller pitch 28 in .. 40 in by 0.5 in
    vary propeller area ratio 0.6 .. 0.8 by 0.05`,
  'one gear': `vary propeller diameter 26 in .. 30.5 in by 0.5 in
    vary propeller pitch 30 in .. 37.6 in by 0.4 in
    vary propeller blades 4, 5
    vary propeller area ratio 0.6 .. 0.8 by 0.05
    vary shaft diameter 2 in, 2 1/8 in, 2 1/4 in, 2 3/8 in, 2 1/2 in`,
};

const folder = mkdtempSync(join(tmpdir(), 'tailshaft-study-'));
cpSync(join(root, 'examples/catalogue'), join(folder, 'catalogue'), { recursive: true });
const usage = `process.on('exit', () => process.stderr.write('\\n' + JSON.stringify(process.resourceUsage())))`;
const rows = [];
for (const [name, varied] of Object.entries(studies)) {
  const own = spec.replace(/ {2}study [^\n]*\{\n(?: {4}[^\n]*\n)* {2}\}\n/, '');
  const end = own.lastIndexOf('}');
  writeFileSync(
    join(folder, 'boat.shaft'),
    `${own.slice(0, end)}
  study bench of proposed {
    ${varied}
    rank by speed at full power
    rank by least margin
  }
}
`.replace('"../catalogue"', '"catalogue"'),
  );
  const began = performance.now();
  const { stdout, stderr } = spawnSync(
    process.execPath,
    [
      '--import',
      `data:text/javascript,${usage}`,
      bundle,
      'study',
      'boat.shaft',
      '--json',
      '--today',
      '2026-03-01',
    ],
    { cwd: folder, encoding: 'utf8', maxBuffer: 1 << 28 },
  );
  const [result] = JSON.parse(stdout).studies;
  const { userCPUTime, systemCPUTime, maxRSS } = JSON.parse(stderr.trim().split('\n').at(-1));
  rows.push({
    study: name,
    candidates: result.judged,
    hold: result.held,
    'binding rule': result.binding[0]?.rule ?? '',
    'wall s': ((performance.now() - began) / 1000).toFixed(1),
    'CPU s': ((userCPUTime + systemCPUTime) / 1e6).toFixed(1),
    'memory MB': Math.round(maxRSS / 1024),
  });
}
console.table(rows);
rmSync(folder, { recursive: true });
