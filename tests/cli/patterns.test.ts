import { describe, expect, it } from 'vitest';
import { isPattern, matcherOf, patternBase } from '../../packages/cli/src/specs/pattern.js';
import { SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { folders, tailshaft } from './run.js';

const folder = folders();

// POSIX.1-2017, Shell and utilities 2.13, for * ? and [ ]; ** and { } as common practice has them, no source.
it.each([
  ['*.shaft', 'a.shaft', true],
  ['*.shaft', 'b/a.shaft', false],
  ['**/*.shaft', 'a.shaft', true],
  ['**/*.shaft', 'b/c/a.shaft', true],
  ['**', 'b/c/a.shaft', true],
  ['**/old/**', 'b/old/c/a.shaft', true],
  ['**/old/**', 'b/older/a.shaft', false],
  ['?.shaft', 'a.shaft', true],
  ['?.shaft', 'ab.shaft', false],
  ['[ab].shaft', 'b.shaft', true],
  ['[!ab].shaft', 'b.shaft', false],
  ['[!ab].shaft', 'c.shaft', true],
  ['[a-c]x.shaft', 'bx.shaft', true],
  ['{tern,oller}*.shaft', 'ollersea.shaft', true],
  ['{tern,oller}*.shaft', 'marram.shaft', false],
  ['a*(1).shaft', 'ab(1).shaft', true],
  ['a*.shaft', 'aXshaft', false],
  ['*[.shaft', 'a[.shaft', true],
  ['*{.shaft', 'a{.shaft', true],
])('%s and %s: %s', (pattern, path, matches) => {
  expect(matcherOf(pattern)(path)).toBe(matches);
  expect(isPattern(pattern)).toBe(true);
});

it.each([
  ['specs/**/*.shaft', 'specs'],
  ['*.shaft', '.'],
  ['/var/a*/b', '/var'],
  ['/*.shaft', '/'],
])('%s begins in %s', (pattern, base) => expect(patternBase(pattern)).toBe(base));

describe('a command', () => {
  const cwd = folder({
    'fleet/a.shaft': SINGLE_LINE,
    'fleet/old/b.shaft': SINGLE_LINE,
    'fleet/[x].shaft': SINGLE_LINE,
    'fleet/notes.txt': '',
  });
  const files = (words: string) =>
    JSON.parse(tailshaft(`check ${words} --json`, { cwd }).stdout || '{"files":[]}').files.map(
      (one: { path: string }) => one.path,
    );

  it.each([
    ['fleet/*.shaft', ['fleet/[x].shaft', 'fleet/a.shaft']],
    ['fleet/**/*.shaft', ['fleet/[x].shaft', 'fleet/a.shaft', 'fleet/old/b.shaft']],
    ['fleet !fleet/old', ['fleet/[x].shaft', 'fleet/a.shaft']],
    ['fleet !**/[[]x].shaft !**/old/**', ['fleet/a.shaft']],
    ['!fleet/old', ['fleet/[x].shaft', 'fleet/a.shaft']],
    ['fleet/*', ['fleet/[x].shaft', 'fleet/a.shaft']],
    // A name on the disk is never a pattern.
    ['fleet/[x].shaft', ['fleet/[x].shaft']],
  ])('check %s', (words, expected) => expect(files(words)).toEqual(expected));

  it('says what matches nothing', () => {
    const answer = tailshaft('check fleet/*.spec', { cwd });
    expect(answer.stderr).toContain('no .shaft file matches fleet/*.spec');
    expect(answer.status).toBe(2);
  });

  it('formats and describes by patterns too', () => {
    expect(tailshaft('format --check fleet/o*/*.shaft', { cwd }).stderr).toMatch(/^tailshaft: \d file/);
    expect(tailshaft('describe fleet/o*/*.shaft', { cwd }).stdout).toContain('propeller');
  });

  it.each(['format -', 'sheet -', 'sheet - --markdown', 'describe -', 'check -'])(
    '%s reads standard input',
    words => {
      const answer = tailshaft(words, { cwd, input: SINGLE_LINE });
      expect(answer.stderr).toBe('');
      expect(answer.status).toBe(0);
      expect(answer.stdout).toContain('Ternhaven');
    },
  );
});
