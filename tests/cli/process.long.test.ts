import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { cpSync, existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { changed, SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { examplesFolder } from '../support/examples.js';
import { builtBefore, bundle, folders, put, tailshaft, tailshaftProcess } from './run.js';

builtBefore();
const VESSEL = SINGLE_LINE.slice(SINGLE_LINE.indexOf('vessel '));
const CATALOGUE = SINGLE_LINE.slice(0, SINGLE_LINE.indexOf('vessel '));
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

  // Enough files for two threads, most of them wrong, so that more ways out are asked for than are tried.
  const fleet = () => {
    const wrong = changed(SINGLE_LINE, ['hand right [drawing]', 'hand left [drawing]']);
    const text = (at: number) => (at % 9 ? wrong : SINGLE_LINE).replace(/^vessel \S+/m, `vessel Boat-${at}`);
    const files = Object.fromEntries(
      Array.from({ length: 124 }, (_, at) => [`fleet/boat-${String(at).padStart(3, '0')}.shaft`, text(at)]),
    );
    return folder({ ...files, 'fleet/boat-050.shaft': 'import "nowhere"\n', 'fleet/boat-070.shaft': '\0' });
  };
  it.each([
    '',
    '--json',
    '--all --verdicts',
    '--summary',
    '--csv',
    '--junit',
    '--annotations',
    '--code-quality',
  ])(
    'says the same in one thread and in two: check %s',
    form => {
      const cwd = fleet();
      const said = (threads: string) =>
        tailshaftProcess(`check fleet --today 2026-03-01 ${form}`, {
          cwd,
          env: { TAILSHAFT_THREADS: threads },
        });
      const one = said('1');
      expect(one.status).toBe(2);
      expect(one.stderr).toContain('boat-070.shaft');
      expect(one.stdout.length).toBeGreaterThan(1000);
      if (form === '--json') expect(one.stdout).toContain('"triesEnded": true');
      expect(said('2')).toEqual(one);
    },
    60_000,
  );

  it('reads its standard input to the end', () => {
    const words = 'check --stdin --today 2026-03-01';
    const answer = tailshaftProcess(words, { cwd, input: SINGLE_LINE });
    expect(answer.status).toBe(0);
    expect(answer).toEqual(tailshaft(words, { cwd, input: SINGLE_LINE }));
  });

  it.runIf(existsSync('/dev/full'))(
    'ends in a sentence and status 2 where what it says cannot be written',
    () => {
      for (const words of ['check right.shaft', 'check --json right.shaft', 'explain', 'sheet right.shaft']) {
        const shell = `${JSON.stringify(process.execPath)} ${JSON.stringify(bundle)} ${words} > /dev/full`;
        const { stderr, status } = spawnSync('sh', ['-c', shell], { cwd, encoding: 'utf8' });
        expect(stderr).toBe('tailshaft: what it says could not be written: the disk is full\n');
        expect(status).toBe(2);
      }
    },
  );

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

  it.each([
    ['check mistakes --all --verdicts', 1],
    ['check missing.shaft mistakes --all --verdicts', 2],
    ['check mistakes/rotation-propeller-hand.shaft --all --verdicts', 1],
    ['compare right.shaft wrong.shaft --json --exit-code', 1],
  ])('keeps the status of %s when its reader has seen enough', (words, status) => {
    const shell = `${JSON.stringify(process.execPath)} ${JSON.stringify(bundle)} ${words} 2>/dev/null | head -1 >/dev/null; exit \${PIPESTATUS[0]}`;
    cpSync(join(examplesFolder, 'mistakes'), join(cwd, 'mistakes'), { recursive: true });
    expect(spawnSync('bash', ['-c', shell], { cwd }).status).toBe(status);
  });

  it('checks again when a spec or what it imports changes, until it is told to stop', async () => {
    const watched = folder({
      'specs/a.shaft': `import "../parts.shaft"\n${VESSEL}`,
      'parts.shaft': CATALOGUE,
    });
    const child = spawn(process.execPath, [bundle, 'check', 'specs', '--watch', '--summary'], {
      cwd: watched,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const answers = { out: '', waiting: 0 };
    child.stdout.on('data', piece => {
      answers.out += piece;
    });
    child.stderr.on('data', piece => {
      answers.waiting += String(piece).match(/waiting for a change/g)?.length ?? 0;
    });
    const round = (number: number) =>
      vi.waitFor(() => expect(answers.waiting).toBe(number), { timeout: 30_000, interval: 50 });
    await round(1);
    expect(answers.out).toMatch(/^Ternhaven {2}holds/);
    put(watched, 'specs/a.shaft', `import "../parts.shaft"\n${changed(VESSEL, ['hand right', 'hand left'])}`);
    await round(2);
    expect(answers.out).toMatch(/specs\/a\.shaft changed\nTernhaven {2}fails/);
    put(watched, 'parts.shaft', CATALOGUE.replace('low idle', 'low idel'));
    await round(3);
    expect(answers.out).toMatch(/parts\.shaft changed\n/);
    put(watched, 'specs/new/b.shaft', SINGLE_LINE.replaceAll('Ternhaven', 'Ollersea'));
    await round(4);
    expect(answers.out).toContain('Ollersea');
    child.kill('SIGINT');
    expect(await new Promise(done => child.once('exit', done))).toBe(1);
  });

  it('says so when the folder it was started in is gone', () => {
    const shell = `mkdir gone && cd gone && rmdir ../gone && ${JSON.stringify(process.execPath)} ${JSON.stringify(bundle)} check`;
    const { stderr, status } = spawnSync('sh', ['-c', shell], { cwd: folder(), encoding: 'utf8' });
    expect(stderr).toBe('tailshaft: the folder that this was started in is gone\n');
    expect(status).toBe(2);
  });
});
