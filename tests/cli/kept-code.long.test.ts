import { chmodSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cacheFolder } from '../../packages/cli/src/launch/cache-folder.js';
import { SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { share } from '../support/share.js';
import { type Answer, builtBefore, folders, tailshaftProcess } from './run.js';

builtBefore();
const folder = folders();
const cwd = folder({ 'right.shaft': SINGLE_LINE });
const words = 'check right.shaft --today 2026-03-01';
const runIn = (cache: string, node: Record<string, string> = {}) =>
  tailshaftProcess(words, { cwd, env: { TAILSHAFT_CACHE: cache, ...node } });
let said: Answer | undefined;
/** What is said without anything kept. */
const plain = () => {
  said ??= runIn('');
  return said;
};

describe('what compiling gave is kept for the next start', () => {
  it('and the next start says the same', () => {
    const cache = join(folder(), 'new', 'cache');
    const first = runIn(cache);
    const [name, ...more] = readdirSync(cache);
    expect(more).toEqual([]);
    expect(name).toMatch(/^[0-9a-f]{16}-check\.code$/);
    const { mtimeMs } = statSync(join(cache, name!));
    expect([first, runIn(cache)]).toEqual([plain(), plain()]);
    expect(statSync(join(cache, name!)).mtimeMs, 'it is used, not made again').toBe(mtimeMs);
  });

  it('for each switch of Node by itself', () => {
    const cache = folder();
    expect(runIn(cache)).toEqual(plain());
    expect(runIn(cache, { NODE_OPTIONS: '--max-old-space-size=900' })).toEqual(plain());
    expect(readdirSync(cache)).toHaveLength(2);
  });

  it.each(
    share(
      [
        ['cut short', (bytes: Buffer) => bytes.subarray(0, bytes.length / 2)],
        ['empty', () => Buffer.alloc(0)],
        ['changed in one place', (bytes: Buffer) => Buffer.from(bytes).fill(0x5a, 5000, 5004)],
        ['something else', () => Buffer.from('no code at all')],
      ] as const,
      1,
    ),
  )('and is made anew where it is %s', (_how, damaged) => {
    const cache = folder();
    runIn(cache);
    const path = join(cache, readdirSync(cache)[0]!);
    const whole = readFileSync(path);
    writeFileSync(path, damaged(whole));
    expect(runIn(cache)).toEqual(plain());
    expect(readFileSync(path).length).toBeGreaterThan(whole.length / 2);
    expect(runIn(cache)).toEqual(plain());
  });

  it.skipIf(process.platform === 'win32')('but never where others could have put it', () => {
    const cache = folder();
    chmodSync(cache, 0o777);
    expect(runIn(cache)).toEqual(plain());
    expect(readdirSync(cache)).toEqual([]);
  });

  it('and nothing is said where nothing can be kept', () => {
    const file = join(folder({ taken: '' }), 'taken');
    expect(runIn(file)).toEqual(plain());
  });
});

describe('where it is kept', () => {
  it.each([
    ['linux', {}, '/home/a/.cache/tailshaft'],
    ['linux', { XDG_CACHE_HOME: '/var/a' }, '/var/a/tailshaft'],
    ['darwin', {}, '/home/a/Library/Caches/tailshaft'],
    ['win32', {}, undefined],
    ['linux', { TAILSHAFT_CACHE: '' }, undefined],
    ['win32', { TAILSHAFT_CACHE: '/own' }, '/own'],
  ])('%s %j: %s', (platform, env, expected) => {
    expect(cacheFolder(env, platform, '/home/a')).toBe(expected);
  });
});
