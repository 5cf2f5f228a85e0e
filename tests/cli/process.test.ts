import { execFileSync, spawnSync } from 'node:child_process';
import { statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { changed, SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { builtBefore, bundle, folders, tailshaft, tailshaftProcess } from './run.js';

builtBefore();
const folder = folders();
const cwd = folder({
  'right.shaft': SINGLE_LINE,
  'wrong.shaft': changed(SINGLE_LINE, ['hand right [drawing]', 'hand left [drawing]']),
  'deep.shaft': `vessel A { ${'arrangement a { '.repeat(10_000)}`,
});

describe('the built program, as a process', () => {
  // The other suites ask the same program without a process: here both must say the same.
  it.each([
    ['check right.shaft --today 2026-03-01', 0, {}],
    ['check wrong.shaft --today 2026-03-01', 1, {}],
    ['check wrong.shaft --today 2026-03-01', 1, { FORCE_COLOR: '1' }],
    ['check missing.shaft', 2, {}],
    ['check deep.shaft', 1, {}],
    ['compare right.shaft wrong.shaft --json --today 2026-03-01', 0, {}],
    ['sheet right.shaft --today 2026-03-01', 0, {}],
    ['explain rotation/propeller-hand', 0, {}],
    ['format --check wrong.shaft', 1, {}],
    ['chekc right.shaft', 2, {}],
    ['--version', 0, {}],
    ['', 2, {}],
  ])('%s: status %i, and all that it says', (words, status, env: Record<string, string>) => {
    const answer = tailshaftProcess(words, { cwd, env });
    expect(answer.status, answer.stdout + answer.stderr).toBe(status);
    expect(answer).toEqual(tailshaft(words, { cwd, env }));
  });

  it('reads its standard input to the end', () => {
    const words = 'check --stdin --today 2026-03-01';
    const answer = tailshaftProcess(words, { cwd, input: SINGLE_LINE });
    expect(answer.status).toBe(0);
    expect(answer).toEqual(tailshaft(words, { cwd, input: SINGLE_LINE }));
  });

  it('can be run by its name', () => {
    expect(statSync(bundle).mode & 0o111).toBe(0o111);
    expect(execFileSync(bundle, ['--version'], { encoding: 'utf8' })).toMatch(/^tailshaft \d/);
  });

  it('ends quietly when its reader has seen enough', () => {
    const shell = `${JSON.stringify(process.execPath)} ${JSON.stringify(bundle)} explain | head -1`;
    const { stdout, stderr, status } = spawnSync('sh', ['-c', shell], { cwd, encoding: 'utf8' });
    expect(stdout.split('\n')).toHaveLength(2);
    expect(stderr).toBe('');
    expect(status).toBe(0);
  });

  it('says so when the folder it was started in is gone', () => {
    const shell = `mkdir gone && cd gone && rmdir ../gone && ${JSON.stringify(process.execPath)} ${JSON.stringify(bundle)} check`;
    const { stderr, status } = spawnSync('sh', ['-c', shell], { cwd: folder(), encoding: 'utf8' });
    expect(stderr).toBe('tailshaft: the folder that this was started in is gone\n');
    expect(status).toBe(2);
  });
});
