#!/usr/bin/env node
/*
 * What the studies of the examples come to, as the table in examples/README.md: node tests/bench/example-studies.mjs. Counts and
 * the check that rules most candidates out are those of the specs; seconds of the processor and memory are of this machine and
 * stand for the whole command, start included, once for all studies of a spec. Nothing here passes or fails.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const examples = join(root, 'examples');
const bundle = join(root, 'packages/cli/dist/tailshaft.cjs');
const usage = `process.on('exit', () => process.stderr.write('\\n' + JSON.stringify(process.resourceUsage())))`;

console.log(
  '| example | study | candidates | hold | cannot tell | rules out most | processor s | memory MB |',
);
console.log('| --- | --- | ---: | ---: | ---: | --- | ---: | ---: |');
for (const folder of readdirSync(examples).sort()) {
  if (folder === 'mistakes' || folder === 'catalogue' || folder.includes('.')) continue;
  for (const file of readdirSync(join(examples, folder)).filter(one => one.endsWith('.shaft'))) {
    const path = `examples/${folder}/${file}`;
    if (!/^ {2}study /m.test(readFileSync(join(root, path), 'utf8'))) continue;
    const { stdout, stderr } = spawnSync(
      process.execPath,
      ['--import', `data:text/javascript,${usage}`, bundle, 'study', path, '--json', '--today', '2026-03-01'],
      { cwd: root, encoding: 'utf8', maxBuffer: 1 << 28 },
    );
    const used = JSON.parse(stderr.trim().split('\n').at(-1));
    const cost = [((used.userCPUTime + used.systemCPUTime) / 1e6).toFixed(1), Math.round(used.maxRSS / 1024)];
    JSON.parse(stdout).studies.forEach((one, at) => {
      const [most] = one.binding;
      const counts = [one.judged, one.held, one.unknown].map(count => count.toLocaleString('en'));
      const row = [
        `[${folder}](${folder}/${file})`,
        one.study,
        ...counts,
        most ? `\`${most.rule}\`, ${most.failed.toLocaleString('en')}` : '',
        ...(at === 0 ? cost : ['', '']),
      ];
      console.log(`| ${row.join(' | ')} |`);
    });
  }
}
