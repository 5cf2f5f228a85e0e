#!/usr/bin/env node
/*
 * How heavy the packed extension is, and how long it lets people wait, in a workbench in a browser and on the extension
 * host of a desktop: node --import ./tests/bench/typescript.mjs tests/bench/extension.mjs [windows] [keys]
 * Every window is a new one; figures are medians. Nothing here passes or fails.
 */
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { startDesktop } from '../workbench/desktop-harness.js';
import { startWorkbench } from '../workbench/harness.js';
import installLargeTools from '../workbench/large-tools.js';
import { exampleFiles, extensionUnderTest, packedVsix, withWrongHand } from '../workbench/subject.js';
import { until } from '../workbench/until.js';
import { catalogueFiles, specText } from './fleet.mjs';
import { quantile, rounded } from './quantile.mjs';

const windows = Number(process.argv[2] ?? 5);
const keys = Number(process.argv[3] ?? 40);
const id = 'tailshaft.tailshaft-drivetrain';

installLargeTools();
const vsix = process.env.TAILSHAFT_EXTENSION ?? packedVsix();
const folder = extensionUnderTest();
const hosts = {
  'browser workbench': files => startWorkbench({ extensionFolder: folder, files }),
  'desktop host': files => startDesktop({ vsix, files }),
};

const examples = exampleFiles();
const largest = Object.keys(examples)
  .filter(path => !/^(catalogue|mistakes)\//.test(path) && /arrangement\s+proposed/.test(examples[path]))
  .sort((one, other) => lines(examples[other]) - lines(examples[one]))[0];
const made = specText(1000);
const specs = [
  { path: largest, files: examples },
  { path: 'fleet.shaft', files: { 'fleet.shaft': made, ...catalogueFiles(2000) } },
];

console.table([
  { file: 'VSIX', kB: kB(vsix) },
  ...['extension.js', 'server.js', 'server-asked.js', 'server-more.js', 'panel.js', 'panel.css'].map(
    name => ({
      file: `dist/${name}`,
      kB: kB(join(folder, 'dist', name)),
    }),
  ),
]);
const rows = [];
for (const [host, start] of Object.entries(hosts))
  for (const { path, files } of specs) rows.push(await measure(host, start, path, files));
console.table(rows);

async function measure(host, start, path, files) {
  const { text, place, right, wrong } = withWrongHand(files[path]);
  const [activation, first, typed] = [[], [], []];
  for (let count = 0; count < windows; count++) {
    const window = await start({ ...files, [path]: text });
    try {
      // Nothing that wants the extension is open yet, and a window has much to do at the start.
      await new Promise(resolve => setTimeout(resolve, 4000));
      await until(
        'the editor to rest',
        () => window.run('test.extension', id),
        active => active === false,
      );
      const activated = await window.run('test.activate', id);
      activation.push(activated);
      first.push(activated + (await window.run('test.untilFindings', path)));
      if (count > 0) continue;
      await window.openFile(path);
      await new Promise(resolve => setTimeout(resolve, 2000));
      // The first keys warm the machine up.
      typed.push(...(await window.run('test.keys', path, place, [wrong, right], keys + 10)).slice(10));
    } finally {
      await window.close();
    }
  }
  return {
    host,
    spec: path,
    lines: lines(text),
    'activation ms': median(activation),
    'activation to first findings ms': median(first),
    'key p50 ms': median(typed),
    'key p95 ms': rounded(quantile(typed, 0.95)),
  };
}

function lines(text) {
  return text.trimEnd().split('\n').length;
}

function kB(path) {
  return Math.round((statSync(path).isFile() ? readFileSync(path).length : 0) / 1000);
}

function median(numbers) {
  return rounded(quantile(numbers, 0.5));
}
