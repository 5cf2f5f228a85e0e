#!/usr/bin/env node
/*
 * What a key costs beside two servers that do less, in one run: node tests/bench/peers.mjs [keys] [lines]
 * One has the same grammar and only parses and links, by the services that come with Langium. The other checks the same
 * content as YAML against a schema; it is installed into a folder of its own for the run, and no part of the project.
 * `at work` is the time that the server's own thread ran. The YAML server waits a while after a key by itself, so its
 * clock tells of the wait. Nothing here passes or fails.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { catalogueFiles, specText, writeFiles } from './fleet.mjs';
import { quantile, rounded } from './quantile.mjs';
import { Session } from './session.mjs';
import { SCHEMA, yamlText } from './yaml-content.mjs';

const keys = Number(process.argv[2] ?? 60);
const lines = Number(process.argv[3] ?? 1000);
const made = mkdtempSync(join(tmpdir(), 'tailshaft-peers-'));

const stock = join(made, 'stock-langium.cjs');
await build({
  entryPoints: [resolve(import.meta.dirname, 'stock-langium.ts')],
  outfile: stock,
  bundle: true,
  platform: 'node',
  target: 'node20',
  logLevel: 'error',
});
execFileSync(
  'npm',
  ['install', '--no-audit', '--no-fund', '--silent', '--prefix', made, 'yaml-language-server@1'],
  {
    stdio: 'inherit',
  },
);
const yamlServer = join(made, 'node_modules/yaml-language-server/bin/yaml-language-server');

const spec = specText(lines);
const yaml = yamlText(spec);
const ROWS = [
  { name: 'Tailshaft, all checks', parts: 2000, text: spec },
  {
    name: 'same grammar, parse and link only',
    text: spec,
    peer: { program: [stock, '--stdio'], language: 'tailshaft', versioned: false },
  },
  {
    name: 'same content as YAML, schema',
    text: yaml,
    file: 'fleet.yaml',
    peer: { program: [yamlServer, '--stdio'], language: 'yaml', versioned: false },
  },
];

const rows = [];
for (const one of ROWS) rows.push(await measure(one));
console.table(rows);
rmSync(made, { recursive: true, force: true });

async function measure({ name, parts = 0, text, file = 'fleet.shaft', peer }) {
  const folder = mkdtempSync(join(tmpdir(), 'tailshaft-bench-'));
  writeFiles(folder, { [file]: text, 'schema.json': JSON.stringify(SCHEMA), ...catalogueFiles(parts) });
  const session = new Session(folder, peer);
  try {
    await session.initialize();
    const uri = pathToFileURL(join(folder, file)).href;
    const started = performance.now();
    session.open(uri, text);
    await session.diagnosticsOf(uri, 1);
    const first = performance.now() - started;
    await session.quiet(500);
    const { times, work } = await session.type(uri, text, keys, false);
    return {
      server: name,
      lines: text.split('\n').length,
      'opened ms': Math.round(first),
      'key p50 ms': rounded(quantile(times, 0.5)),
      'key p95 ms': rounded(quantile(times, 0.95)),
      'at work p50 ms': rounded(quantile(work, 0.5)),
      'at work p95 ms': rounded(quantile(work, 0.95)),
      'memory MB': session.memory(),
    };
  } finally {
    await session.end();
    rmSync(folder, { recursive: true, force: true });
  }
}
