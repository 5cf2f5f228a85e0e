import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { runInNewContext } from 'node:vm';
import Ajv from 'ajv/dist/2020.js';
import { buildSync } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { changed, SINGLE_LINE, TWIN_LINES } from '../../packages/drivetrain/src/rules/example-specs.js';
import { builtBefore, folders, put, tailshaft } from '../cli/run.js';
import { examplesFolder } from '../support/examples.js';

builtBefore();
const root = resolve(import.meta.dirname, '../..');
const folder = folders();
const today = '2026-03-01';

/** An empty folder in which the package is installed, with what it hands out and nothing else. */
function installed(files: Readonly<Record<string, string>> = {}): string {
  const cwd = folder({ 'package.json': '{ "private": true, "type": "module" }', ...files });
  for (const name of ['package.json', 'dist/index.mjs', 'dist/index.d.ts', 'schema'])
    cpSync(join(root, 'packages/cli', name), join(cwd, 'node_modules/tailshaft', name), { recursive: true });
  return cwd;
}

/** Runs a module in such a folder, and gives what it prints. */
function printed(script: string, files: Readonly<Record<string, string>> = {}): string {
  const cwd = installed({ 'try.mjs': `import * as tailshaft from 'tailshaft';\n${script}`, ...files });
  const { stdout, stderr } = spawnSync(process.execPath, ['try.mjs'], {
    cwd,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  expect(stderr).toBe('');
  return stdout;
}

const examples = readdirSync(examplesFolder, { recursive: true, encoding: 'utf8' })
  .map(one => one.replaceAll('\\', '/'))
  .filter(one => one.endsWith('.shaft') && !one.startsWith('mistakes'));
const texts = Object.fromEntries(examples.map(one => [one, readFileSync(join(examplesFolder, one), 'utf8')]));

describe('the package, imported from an empty folder', () => {
  it('gives of every example what the command line gives, by its schema', () => {
    const answers = JSON.parse(
      printed(
        `import { readFileSync } from 'node:fs';
         const texts = JSON.parse(readFileSync('texts.json', 'utf8'));
         const answers = {};
         for (const path of Object.keys(texts))
           answers[path] = await tailshaft.check(texts[path], texts, { path, today: '${today}' });
         console.log(JSON.stringify({ answers, schemas: tailshaft.schemas }));`,
        { 'texts.json': JSON.stringify(texts) },
      ),
    );
    const { schemas } = answers;
    const valid = new Ajv({ strict: false }).compile(schemas.check);
    expect(examples.length).toBeGreaterThan(10);
    for (const path of examples) {
      const { version: _ours, ...ours } = answers.answers[path];
      expect(valid(ours), JSON.stringify(valid.errors)).toBe(false);
      expect(valid(answers.answers[path]), JSON.stringify(valid.errors)).toBe(true);
      const answer = tailshaft(`check ${path} --json --root . --today ${today}`, { cwd: examplesFolder });
      const { version: _theirs, ...theirs } = JSON.parse(answer.stdout);
      expect(ours, path).toEqual(theirs);
    }
    expect(schemas.compare).toEqual(
      JSON.parse(readFileSync(join(root, 'packages/cli/schema/compare.schema.json'), 'utf8')),
    );
  });

  it('compares, formats, and takes who may accept what', () => {
    const wrong = changed(TWIN_LINES, ['hand left', 'hand right']);
    const out = JSON.parse(
      printed(
        `import { readFileSync } from 'node:fs';
         const { right, wrong, accepted } = JSON.parse(readFileSync('texts.json', 'utf8'));
         const options = { today: '${today}' };
         const count = async more => (await tailshaft.check(accepted, {}, { ...options, ...more })).summary.accepted;
         console.log(JSON.stringify({
           moved: await tailshaft.compare({ text: right }, { text: wrong }, options),
           same: await tailshaft.compare({ text: right }, { text: right.replaceAll('\\n', '\\n\\n') }, options),
           formatted: tailshaft.format(right.replaceAll(/^ +/gm, '')) === tailshaft.format(right),
           accepted: await count({}),
           byOther: await count({ acceptedBy: 'shafting/ class surveyor' }),
         }));`,
        {
          'texts.json': JSON.stringify({
            right: TWIN_LINES,
            wrong,
            accepted: changed(
              TWIN_LINES,
              ['diameter 65 mm', 'diameter 40 mm'],
              [
                '  arrangement proposed',
                '  accept shafting/diameter on proposed.Port because "trial" by "surveyor" dated 2026-01-10 until 2027-01-01\n  arrangement proposed',
              ],
            ),
          }),
        },
      ),
    );
    expect(out.moved.levels).toContain('newly fails');
    expect(out.same.vessels).toEqual([]);
    expect(out.formatted).toBe(true);
    expect(out.accepted).toBe(1);
    expect(out.byOther).toBe(0);
  });

  it('rejects a day that is none, and survives whatever a text or path may be', () => {
    const out = printed(`
      const said = await tailshaft.check('', {}, { today: 'soon' }).catch(error => error.message);
      const odd = ['', '{', '}'.repeat(5000), 'vessel A { '.repeat(3000), '\\0', 'import "../../../etc"', 'import "b"'];
      for (const text of odd) await tailshaft.check(text, { '../b.shaft': 'import "spec"' });
      console.log(said);`);
    expect(out).toContain('today is a date');
  });

  it('has types that a strict program compiles with, and that refuse what is not there', () => {
    const cwd = installed({
      'right.ts': `import { check, compare, format, schemas, type Check } from 'tailshaft';
const answer: Check = await check('vessel A { }', { 'b.shaft': '' }, { today: '2026-01-01' });
for (const { vessels } of answer.files)
  for (const { verdicts } of vessels) for (const { margin } of verdicts) if (margin !== undefined) margin.toFixed(1);
const levels: readonly string[] = (await compare({ text: '' }, { text: '' })).levels;
format(levels.join()) satisfies string;
schemas.check satisfies object;
`,
      'wrong.ts': `import { check } from 'tailshaft';\n(await check('')).files[0]!.findings[0]!.line;\n`,
    });
    const compile = (file: string) =>
      spawnSync(
        process.execPath,
        [
          join(root, 'node_modules/typescript/bin/tsc'),
          ...'--noEmit --strict --target es2022 --module nodenext --skipLibCheck false --types'.split(' '),
          '',
          file,
        ],
        { cwd, encoding: 'utf8' },
      );
    expect(compile('right.ts').stdout).toBe('');
    expect(compile('wrong.ts').stdout).toContain("'line' does not exist");
  });

  it('runs where there is nothing of Node', async () => {
    const cwd = installed({
      'page.js': `import { check } from 'tailshaft';\nglobalThis.answer = check(globalThis.text, {}, { today: '${today}' });`,
    });
    const { outputFiles } = buildSync({
      absWorkingDir: cwd,
      entryPoints: ['page.js'],
      bundle: true,
      write: false,
      platform: 'browser',
      format: 'iife',
    });
    const wrong = changed(SINGLE_LINE, ['hand right', 'hand left']);
    // What pages, workers and Node have alike.
    const page: Record<string, unknown> = {
      text: wrong,
      TextEncoder,
      TextDecoder,
      URL,
      setTimeout,
      clearTimeout,
      console,
    };
    runInNewContext(outputFiles[0]!.text, page);
    const { files } = (await page.answer) as { files: { findings: { code: string }[] }[] };
    expect(files[0]!.findings.map(one => one.code)).toEqual(['rotation/propeller-hand']);
  });

  it('is found by its name alone, with its schemas', () => {
    const cwd = installed();
    put(
      cwd,
      'a.cjs',
      `import('tailshaft').then(one => console.log(typeof one.check, require('tailshaft/schema/check.schema.json').title));`,
    );
    expect(execFileSync(process.execPath, ['a.cjs'], { cwd, encoding: 'utf8' })).toBe(
      'function Output of tailshaft check --json\n',
    );
  });
});
