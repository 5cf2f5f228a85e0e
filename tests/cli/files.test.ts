import { linkSync, mkdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { folders, tailshaft } from './run.js';

const folder = folders();
const VESSEL = SINGLE_LINE.slice(SINGLE_LINE.indexOf('vessel '));
const CATALOGUE = SINGLE_LINE.slice(0, SINGLE_LINE.indexOf('vessel '));
const ESCAPE = '\u001b]0;x\u0007\u001b[2J\u009b2J\u202e';

describe('symbolic links', () => {
  it('out of the folder that is checked are told, and the check does not pass for them', () => {
    const away = folder({ 'spec.shaft': 'vessel Away { }\n', 'more/one.shaft': '' });
    const cwd = folder({ 'right.shaft': SINGLE_LINE });
    symlinkSync(join(away, 'spec.shaft'), join(cwd, 'linked.shaft'));
    symlinkSync(join(away, 'more'), join(cwd, 'more'));
    symlinkSync('nowhere.shaft', join(cwd, 'lost.shaft'));
    const answer = tailshaft('check .', { cwd });
    expect(answer.stderr).toContain('linked.shaft, lost.shaft, more are symbolic links out of the folder');
    expect(answer.stdout).toContain('1 file, 1 vessel');
    expect(answer.status).toBe(2);
    expect(tailshaft('format --check .', { cwd }).stderr).toContain('linked.shaft');
  });

  it('to what the folder holds anyway cost nothing', () => {
    const cwd = folder({ 'real/right.shaft': SINGLE_LINE });
    symlinkSync('real/right.shaft', join(cwd, 'again.shaft'));
    symlinkSync('real', join(cwd, 'also'));
    symlinkSync('.', join(cwd, 'self'));
    const answer = tailshaft('check .', { cwd });
    expect(answer.stderr).toBe('');
    expect(answer.stdout).toContain('1 file, 1 vessel');
    expect(answer.status).toBe(0);
  });

  it.each(['"linked"', '"shelf"', '"mixed"'])('are not imported out of the root: %s', wanted => {
    const away = folder({ 'parts.shaft': CATALOGUE, 'shelf/parts.shaft': CATALOGUE });
    const cwd = folder({ 'spec.shaft': `import ${wanted}\n${VESSEL}`, 'mixed/own.shaft': '' });
    symlinkSync(join(away, 'parts.shaft'), join(cwd, 'linked.shaft'));
    symlinkSync(join(away, 'shelf'), join(cwd, 'shelf'));
    symlinkSync(join(away, 'parts.shaft'), join(cwd, 'mixed/parts.shaft'));
    const answer = tailshaft('check spec.shaft', { cwd });
    expect(answer.stdout.replace(/\s+/g, ' ')).toContain('leads outside the workspace by a symbolic link');
    expect(answer.status).toBe(1);
  });

  it('within the root are imported, also where the root itself is one', () => {
    const real = folder({ 'spec.shaft': `import "linked"\n${VESSEL}`, 'parts/all.shaft': CATALOGUE });
    symlinkSync('parts/all.shaft', join(real, 'linked.shaft'));
    const around = folder();
    symlinkSync(real, join(around, 'root'));
    for (const [words, cwd] of [
      ['check spec.shaft', real],
      ['check --root root root/spec.shaft', around],
    ] as const)
      expect(tailshaft(words, { cwd }).status, words).toBe(0);
  });
});

describe('sheet --out', () => {
  const cwd = folder({
    'spec.shaft': `import "parts"\n${VESSEL}`,
    'parts.shaft': CATALOGUE,
    'other.SHAFT': 'mine',
  });
  symlinkSync('parts.shaft', join(cwd, 'sheet.html'));
  linkSync(join(cwd, 'parts.shaft'), join(cwd, 'hard.html'));
  it.each([
    ['spec.shaft', 'is the spec itself'],
    ['parts.shaft', 'has the name of a spec'],
    ['new.shaft', 'has the name of a spec'],
    ['other.SHAFT', 'has the name of a spec'],
    ['sheet.html', 'has the name of a spec'],
    ['hard.html', 'is a file that the sheet is made from'],
  ])('does not write over %s', (out, why) => {
    const answer = tailshaft(`sheet spec.shaft --out ${out}`, { cwd });
    expect(answer.stderr).toContain(why);
    expect(answer.status).toBe(2);
    expect(readFileSync(join(cwd, 'parts.shaft'), 'utf8')).toBe(CATALOGUE);
    expect(readFileSync(join(cwd, 'other.SHAFT'), 'utf8')).toBe('mine');
  });
});

describe('what is beyond all measure', () => {
  it('ends in findings that can be read: the gravest, and how many were left out', () => {
    const cwd = folder({ 'many.shaft': `vessel A {\n${'  wrong word\n'.repeat(30_000)}}\n` });
    const answer = tailshaft('check many.shaft', { cwd });
    expect(answer.stdout.length).toBeLessThan(1_000_000);
    expect(answer.stdout).toMatch(/\d+ more findings of this file are not shown/);
    expect(answer.status).toBe(1);
  });

  it.each([
    ['braces', '{'.repeat(100_000)],
    ['blocks', `${'a { '.repeat(100_000)}${'} '.repeat(100_000)}`],
    ['closing braces', '}'.repeat(30_000)],
    ['marks', '['.repeat(30_000)],
  ])('is left as it is by format: %s', (_, text) => {
    const answer = tailshaft('format --stdin', { cwd: folder(), input: text });
    expect(answer.stderr).toBe('');
    expect(answer.stdout).toBe(text);
    expect(answer.status).toBe(0);
  });
});

describe('no order to the terminal passes', () => {
  const evil = SINGLE_LINE.replace('vessel Ternhaven "', `vessel Ternhaven "${ESCAPE}`)
    .replace('source "', `source "${ESCAPE}`)
    .replace('diameter 26 in', `diamter "${ESCAPE}" 26 in`);
  const cwd = folder({ 'evil.shaft': evil, 'right.shaft': SINGLE_LINE });
  mkdirSync(join(cwd, `d${ESCAPE}`));
  const named = folder({
    [`n${ESCAPE}.shaft`]: 'vessel A { wrong }\n',
    [`m${ESCAPE}.shaft`]: Buffer.from([0, 1]),
  });
  it.each([
    ['check evil.shaft', cwd],
    ['check --json evil.shaft', cwd],
    ['check --sarif evil.shaft', cwd],
    ['check --verdicts evil.shaft', cwd],
    ['sheet --markdown evil.shaft', cwd],
    ['sheet evil.shaft', cwd],
    ['compare right.shaft evil.shaft', cwd],
    ['compare --json right.shaft evil.shaft', cwd],
    [`check ${ESCAPE}`, cwd],
    [`${ESCAPE}`, cwd],
    [`check --${ESCAPE} right.shaft`, cwd],
    ['check .', named],
    ['check --json .', named],
    ['format --check .', named],
  ])('%j', (words, where) => {
    const { stdout, stderr, status } = tailshaft(words, { cwd: where });
    expect(status).not.toBeNull();
    expect(stdout + stderr).not.toBe('');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are looked for
    expect(stdout + stderr).not.toMatch(/[\x00-\x08\x0b-\x1f\x7f-\x9f\u202e]/);
  });
});
