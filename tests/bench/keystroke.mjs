#!/usr/bin/env node
/*
 * How long after a key the diagnostics are there: node tests/bench/keystroke.mjs [keys]
 * Every row is a new server process that is spoken to over stdio, as an editor does. Nothing here passes or fails.
 * `at work` is the time that the server's own thread ran, which a busy machine does not lengthen (Linux only).
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { catalogueFiles, specText, writeFiles } from './fleet.mjs';
import { quantile, rounded } from './quantile.mjs';
import { Session } from './session.mjs';

const keys = Number(process.argv[2] ?? 100);

const CASES = [
  { lines: 100, parts: 20 },
  { lines: 1000, parts: 20 },
  { lines: 1000, parts: 2000 },
  { lines: 1000, parts: 2000, others: 1000 },
  { lines: 1000, parts: 2000, asking: true },
  { lines: 5000, parts: 2000 },
];

const only = process.env.BENCH_ROW;
const rows = [];
for (const [index, one] of CASES.entries())
  if (!only || Number(only) === index) rows.push(await measure(one));
console.table(rows);

async function measure({ lines, parts, others = 0, asking = false }) {
  const folder = mkdtempSync(join(tmpdir(), 'tailshaft-bench-'));
  const text = specText(lines);
  const files = { 'fleet.shaft': text, ...catalogueFiles(parts) };
  // Specs that have nothing to do with the one that is edited: their own folder, their own small catalogue.
  const small = catalogueFiles(20)['catalogue/part-000.shaft'];
  if (others > 0) files['others/catalogue/parts.shaft'] = small;
  for (let count = 0; count < others; count++) files[`others/vessel-${count}.shaft`] = specText(60, count);
  writeFiles(folder, files);
  const session = new Session(folder);
  try {
    const started = performance.now();
    await session.initialize();
    const uri = pathToFileURL(join(folder, 'fleet.shaft')).href;
    session.open(uri, text);
    await session.diagnosticsOf(uri, 1);
    const first = performance.now() - started;
    const firstWork = session.atWork();
    // The rest of the workspace is read in the background: keys are measured after that, as in a day's work.
    await session.quiet(asking || others > 0 ? 3000 : 500);
    const { times, work } = await session.type(uri, text, keys, asking);
    return {
      lines: text.split('\n').length,
      'catalogue parts': parts,
      'other specs': others,
      'client asks too': asking ? 'yes' : '',
      'first diagnostics ms': Math.round(first),
      'at work ms': Math.round(firstWork),
      'key p50 ms': rounded(quantile(times, 0.5)),
      'key p95 ms': rounded(quantile(times, 0.95)),
      'key max ms': rounded(Math.max(...times)),
      'at work p50 ms': rounded(quantile(work, 0.5)),
      'at work p95 ms': rounded(quantile(work, 0.95)),
      'memory MB': session.memory(),
    };
  } finally {
    await session.end();
    rmSync(folder, { recursive: true, force: true });
  }
}
