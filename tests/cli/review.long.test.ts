import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  changed,
  REPOWER,
  SINGLE_LINE,
  TWIN_LINES,
} from '../../packages/drivetrain/src/rules/example-specs.js';
import { examplesFolder } from '../support/examples.js';
import { DANGEROUS, HARMLESS, type ReviewCommit } from './review-commits.js';
import { builtBefore, folders, put, tailshaft } from './run.js';

builtBefore();
const cwd = folders()();
const git = (...words: string[]) =>
  execFileSync('git', ['-c', 'user.name=t', '-c', 'user.email=t@example.invalid', ...words], {
    cwd,
    encoding: 'utf8',
  });

const named = (spec: string, name: string) => spec.replaceAll('Ternhaven', name);
const OLLERSEA = changed(
  named(TWIN_LINES, 'Ollersea'),
  ['diameter 65 mm', 'diameter 40 mm'],
  [
    '  arrangement proposed',
    '  accept shafting/diameter on proposed.Port because "trial runs" by "surveyor" dated 2026-01-10 until 2027-01-01\n  arrangement proposed',
  ],
);

const PRACTICE = `practice Harbour-Office "design office" {
  tip speed at most 45 m/s
  acceptances last at most 2 year
  acceptances of "rotation/" by "class surveyor, flag surveyor"
  gravity of "speed/tip-speed" is error
}
`;

/** Ten vessels of different kinds, seven with the catalogue of the examples, three with their own. */
const SEVEN =
  /^(catalogue|ferry|motor-launch|pilot-cutter|service-vessel|sport-boat|survey-tender|workboat)\/.*\.shaft$/;
for (const path of readdirSync(examplesFolder, { recursive: true, encoding: 'utf8' })) {
  if (SEVEN.test(path)) put(cwd, path, readFileSync(join(examplesFolder, path), 'utf8'));
}
put(cwd, 'launch/fennick.shaft', named(REPOWER, 'Fennick'));
put(cwd, 'barge/marram.shaft', `import "../practice"\n${named(SINGLE_LINE, 'Marram')}`);
put(cwd, 'practice.shaft', PRACTICE);
put(cwd, 'patrol/ollersea.shaft', OLLERSEA);
git('init', '-q', '-b', 'main');
git('config', 'core.autocrlf', 'false');
git('add', '.');
git('commit', '-q', '-m', 'ten vessels');
git('tag', 'base');

/** Commits the edits on the base. */
function commit({ about, edits }: ReviewCommit): void {
  git('checkout', '-q', '-f', 'base');
  for (const [file, from, to] of edits) {
    if (from === '' && to === 'taken out') git('rm', '-q', file);
    else if (from === '' && to === 'moved') git('mv', file, file.replace('.shaft', '-1.shaft'));
    else if (from === '') {
      const spec = named(SINGLE_LINE, 'Newfield').replaceAll('diameter 26 in', 'diameter 25 in');
      put(cwd, file, to === 'right hand' ? spec : changed(spec, ['hand right', 'hand left']));
    } else {
      const text = readFileSync(join(cwd, file), 'utf8');
      const made = typeof from === 'string' ? text.replaceAll(from, to) : text.replace(from, to);
      expect(made, `${file} says ${from}`).not.toBe(text);
      put(cwd, file, made);
    }
  }
  git('add', '.');
  git('commit', '-q', '-m', about);
}

const compare = (words: string) => tailshaft(`compare base..HEAD ${words} --today 2026-03-01`, { cwd });

describe('a review of a commit', () => {
  it.each([...DANGEROUS, ...HARMLESS].map(one => [one.about, one] as const))('%s', (_, one) => {
    commit(one);
    const { stdout, stderr, status } = compare('--json --exit-code');
    expect(stderr).toBe('');
    const { headline } = JSON.parse(stdout);
    expect(headline).toBe(one.headline);
    expect(status).toBe(one.status);
  });
});

describe('a text that cannot be read whole', () => {
  it('is the first line of every form, and never no change', () => {
    commit(DANGEROUS.find(one => one.about === 'a brace that is not closed')!);
    for (const [form, first] of [
      ['', /^Not read whole: workboat\/saltmarsh\.shaft at HEAD has 1 error in its text/],
      ['--summary', /^Not read whole: workboat\/saltmarsh\.shaft/],
      ['--markdown', /^\*\*Not read whole\*\*: workboat\/saltmarsh\.shaft/],
    ] as const) {
      const { stdout } = compare(form);
      expect(stdout).toMatch(first);
      expect(stdout).not.toContain('No change');
    }
    const json = JSON.parse(compare('--json').stdout);
    expect(json.unread).toHaveLength(1);
    expect(json.levels[0]).toBe('not read whole');
  });
});

describe('what is compared', () => {
  const said = (words: string, input?: string) =>
    tailshaft(`compare ${words} --today 2026-03-01`, { cwd, ...(input === undefined ? {} : { input }) });
  const hand = DANGEROUS[0]!;

  it('is, with three dots, what a branch did since it left', () => {
    git('checkout', '-q', '-f', '-B', 'other', 'base');
    put(
      cwd,
      'ferry/brackle.shaft',
      readFileSync(join(cwd, 'ferry/brackle.shaft'), 'utf8').replace('95 mm', '60 mm'),
    );
    git('commit', '-q', '-a', '-m', 'on the other branch');
    commit(hand);
    git('branch', '-q', '-f', 'review');
    expect(said('other...review --summary').stdout).toMatch(/^1 vessel touched, 1 worse; worst: Ternhaven/);
    expect(said('--git other...review --summary').stdout).toBe(said('base review --summary').stdout);
    expect(said('other..review --summary').stdout).toMatch(/^2 vessels touched/);
    expect(said('other...nowhere').status).toBe(2);
  });

  it('is what was staged', () => {
    git('checkout', '-q', '-f', 'base');
    const path = join(cwd, 'pilot-cutter/ternhaven.shaft');
    const before = readFileSync(path, 'utf8');
    put(cwd, 'pilot-cutter/ternhaven.shaft', before.replace('propeller hand right', 'propeller hand left'));
    expect(said('--staged').stdout).toBe('No change in meaning.\n');
    git('add', '.');
    put(cwd, 'pilot-cutter/ternhaven.shaft', before);
    expect(said('--staged --summary --exit-code')).toMatchObject({ status: 1 });
    expect(said('--staged --summary').stdout).toContain('Ternhaven would go astern');
  });

  it('is a folder that one side does not have, all of it added or taken out', () => {
    git('checkout', '-q', '-f', '--orphan', 'fresh');
    expect(said('--staged --summary --exit-code').stdout).toMatch(/Brackle: added/);
    expect(said('--staged nowhere')).toMatchObject({ status: 2 });
    git('checkout', '-q', '-f', 'base');
    git('rm', '-q', '-r', 'ferry');
    git('commit', '-q', '-m', 'no ferry');
    expect(said('base..HEAD ferry --summary').stdout).toContain('Brackle, taken out');
    expect(said('HEAD..base ferry --summary').stdout).toContain('Brackle: added');
    expect(said('HEAD..base fery').stderr).toContain('there is no spec in fery');
  });

  it('is a file, a folder, a revision or standard input on either side', () => {
    git('checkout', '-q', '-f', 'base');
    const path = 'pilot-cutter/ternhaven.shaft';
    const wrong = readFileSync(join(cwd, path), 'utf8').replace(
      'propeller hand right',
      'propeller hand left',
    );
    const words = ['base', '.', `base:${path}`, path];
    for (const before of words.slice(2)) {
      const answer = said(`${before} - --stdin-name ${path} --summary`, wrong);
      expect(answer.stdout, before).toMatch(/^1 vessel touched, 1 worse; worst: Ternhaven would go astern/);
    }
    expect(said('base .').stdout).toBe('No change in meaning.\n');
    expect(said(`base:${path} ${path}`).stdout).toBe('No change in meaning.\n');
    expect(said('- -').status).toBe(2);
  });

  it('is cut at a length, with the rest counted', () => {
    commit(DANGEROUS.find(one => one.about === 'a rating in the catalogue')!);
    const whole = compare('--markdown').stdout;
    const cut = compare('--markdown --limit 1500').stdout;
    expect(whole.length).toBeGreaterThan(1500);
    expect(cut.length).toBeLessThanOrEqual(1500);
    expect(cut).toMatch(/_\d+ more sections? left out for length/);
    expect(cut).toContain('certifies nothing');
    expect(whole.match(/Hazel-40: ratio/g), 'the entry is told once').toHaveLength(1);
  });
});
