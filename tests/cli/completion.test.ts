import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { RULES } from '../../packages/drivetrain/src/index.js';
import { folders, tailshaft } from './run.js';

const folder = folders();
const cwd = folder({ 'a b.shaft': '', 'c.shaft': '', 'notes.txt': '', 'specs/d.shaft': '' });
const script = (shell: string) => tailshaft(`completion ${shell}`, { cwd }).stdout;
const installed = (shell: string) =>
  ['/bin', '/usr/bin', '/usr/local/bin'].some(one => existsSync(join(one, shell)));

/** What bash offers for a line of words, the last of which is being typed. */
function offered(...words: string[]): string[] {
  const all = ['tailshaft', ...words].map(one => `'${one}'`).join(' ');
  const text = `${script('bash')}\nCOMP_WORDS=(${all})\nCOMP_CWORD=${words.length}\n_tailshaft\nprintf '%s\\n' "\${COMPREPLY[@]}"`;
  const { stdout, stderr } = spawnSync('bash', ['--norc'], { input: text, cwd, encoding: 'utf8' });
  expect(stderr).toBe('');
  return stdout.split('\n').filter(Boolean);
}

describe('completion in bash', () => {
  const overview = tailshaft('--help', { cwd }).stdout;
  const commands = [...overview.matchAll(/^ {2}([a-z]+) {2,}\S/gm)].map(one => one[1]!);

  it('offers every command', () => {
    expect(commands.length).toBeGreaterThan(7);
    expect(offered('')).toEqual(expect.arrayContaining(commands));
    expect(offered('com')).toEqual(['compare', 'completion']);
  });

  it.each(commands)('offers every option that the help of %s lists, and no other', command => {
    const { stdout } = tailshaft(`${command} --help`, { cwd });
    const listed = [...stdout.matchAll(/^ {2}(--[A-Za-z-]+)/gm)].map(one => one[1]!);
    expect(offered(command, '--').sort()).toEqual([...listed, '--help'].sort());
  });

  it.each([
    [
      ['check', '--severity', ''],
      ['error', 'warning', 'note', 'information'],
    ],
    [['check', '--severity', 'w'], ['warning']],
    [['check', '--today', ''], []],
    [['check', '--baseline', 'n'], ['notes.txt']],
    [
      ['check', ''],
      ['a b.shaft', 'c.shaft', 'specs'],
    ],
    [['explain', ''], RULES.map(one => one.id)],
    [['explain', 'rotation/propeller-h'], ['rotation/propeller-hand']],
    [
      ['completion', ''],
      ['bash', 'zsh', 'fish'],
    ],
  ])('of %s', (words, expected) => {
    expect(offered(...words)).toEqual(expect.arrayContaining(expected));
    if (words[0] !== 'explain') expect(offered(...words).sort()).toEqual([...expected].sort());
  });
});

describe('completion elsewhere', () => {
  it.runIf(installed('zsh'))('reads in zsh', () => {
    const { stderr, status } = spawnSync('zsh', ['-f', '-n'], { input: script('zsh'), encoding: 'utf8' });
    expect(stderr).toBe('');
    expect(status).toBe(0);
  });

  it.runIf(installed('fish'))('offers commands, levels and rules in fish', () => {
    const offer = (line: string) =>
      spawnSync('fish', ['--no-config', '-c', `${script('fish')}\ncomplete -C '${line}'`], {
        cwd,
        encoding: 'utf8',
      })
        .stdout.split('\n')
        .map(one => one.split('\t')[0]);
    expect(offer('tailshaft com')).toEqual(expect.arrayContaining(['compare', 'completion']));
    expect(offer('tailshaft check --severity ')).toEqual(expect.arrayContaining(['error', 'information']));
    expect(offer('tailshaft explain rotation/propeller-h')).toContain('rotation/propeller-hand');
    expect(offer('tailshaft check c')).toContain('c.shaft');
  });

  it('refuses a shell that it does not know', () => {
    const answer = tailshaft('completion csh', { cwd });
    expect(answer.stderr).toContain('bash, zsh, fish');
    expect(answer.status).toBe(2);
  });
});
