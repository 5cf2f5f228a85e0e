import { existsSync, lstatSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { RULES } from '@tailshaft/drivetrain';
import { TEXT_FINDINGS } from '@tailshaft/language/manual';
import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { folders, TRACE, tailshaft } from './run.js';

const folder = folders();
const cwd = folder({ 'right.shaft': SINGLE_LINE });

describe('the program', () => {
  it('tells its version', () => {
    const { version } = JSON.parse(
      readFileSync(resolve(import.meta.dirname, '../../packages/cli/package.json'), 'utf8'),
    );
    expect(tailshaft('--version', { cwd })).toEqual({
      status: 0,
      stdout: `tailshaft ${version}\n`,
      stderr: '',
    });
  });

  it.each(['check', 'compare', 'sheet', 'explain', 'format', 'serve'])(
    'lists %s and has a help page for it',
    name => {
      const overview = tailshaft('--help', { cwd });
      expect(overview.status).toBe(0);
      expect(overview.stdout).toMatch(new RegExp(`^  ${name} +\\S`, 'm'));
      const help = tailshaft(`${name} --help`, { cwd });
      expect(help.status).toBe(0);
      expect(help.stdout).toMatch(new RegExp(`^Usage: tailshaft ${name}`));
      expect(tailshaft(`help ${name}`, { cwd }).stdout).toBe(help.stdout);
    },
  );

  it('without a command prints what there is, with status 2', () => {
    const answer = tailshaft('', { cwd });
    expect(answer.status).toBe(2);
    expect(answer.stdout).toContain('Usage: tailshaft <command>');
  });
});

describe('explain', () => {
  it('lists every rule', () => {
    const lines = tailshaft('explain', { cwd }).stdout.trim().split('\n');
    expect(lines.map(line => line.split(' ')[0])).toEqual(RULES.map(one => one.id));
  });

  it('prints the manual, the source, the caution and the examples of a rule', () => {
    const rule = RULES.find(one => one.id === 'rotation/propeller-hand')!;
    const { stdout, status } = tailshaft(`explain ${rule.id}`, { cwd });
    const flat = stdout.replace(/\s+/g, ' ');
    expect(status).toBe(0);
    for (const text of [rule.title, rule.manual, rule.criterion, rule.caution]) {
      expect(flat).toContain(text.replace(/\s+/g, ' ').trim());
    }
    expect(stdout).toMatch(/^Fails .*changed:\n(?: {4}.*\n)*(?: {2}[-+] .*\n)/m);
  });

  it('prints a spec that fails, and pages of findings about the text', () => {
    expect(tailshaft('explain rotation/propeller-hand --spec', { cwd }).stdout.trim()).toBe(
      RULES.find(one => one.id === 'rotation/propeller-hand')!
        .examples()
        .failing.trim(),
    );
    const finding = TEXT_FINDINGS.find(one => one.code === 'text/range')!;
    expect(tailshaft(`explain ${finding.code}`, { cwd }).stdout).toContain(finding.title);
  });
});

describe('format', () => {
  const untidy = SINGLE_LINE.replaceAll('\n', '\n ').replaceAll('  ', '   ');

  it('writes what it changes, and finds nothing to do the second time', () => {
    const here = folder({ 'one.shaft': untidy, 'other.txt': untidy });
    symlinkSync('one.shaft', join(here, 'link.shaft'));
    const check = tailshaft('format --check one.shaft', { cwd: here });
    expect(check).toMatchObject({ status: 1, stdout: 'one.shaft\n' });
    expect(readFileSync(join(here, 'one.shaft'), 'utf8')).toBe(untidy);
    expect(tailshaft('format link.shaft', { cwd: here }).status).toBe(0);
    expect(lstatSync(join(here, 'link.shaft')).isSymbolicLink()).toBe(true);
    const laidOut = readFileSync(join(here, 'one.shaft'), 'utf8');
    expect(laidOut).not.toBe(untidy);
    expect(tailshaft('format --check', { cwd: here })).toMatchObject({ status: 0, stdout: '' });
    expect(readFileSync(join(here, 'other.txt'), 'utf8')).toBe(untidy);
    expect(readdirSync(here).sort()).toEqual(['link.shaft', 'one.shaft', 'other.txt']);
  });

  it('counts none that could not be written', () => {
    // The file is written beside itself first, under a name that is too long then.
    const long = `${'x'.repeat(244)}.shaft`;
    const here = folder({ [long]: untidy, 'empty.shaft': '' });
    const answer = tailshaft('format', { cwd: here });
    expect(answer).toMatchObject({ status: 2, stdout: '' });
    expect(answer.stderr).toContain('cannot be written: its name is too long');
    expect(answer.stderr).toContain('0 files formatted, 1 already formatted');
    expect(readFileSync(join(here, long), 'utf8')).toBe(untidy);
  });

  it('keeps meaning, line ends and a byte order mark', () => {
    const here = folder({ 'dos.shaft': `\ufeff${untidy.replaceAll('\n', '\r\n')}`, 'before.shaft': untidy });
    expect(tailshaft('format dos.shaft', { cwd: here }).status).toBe(0);
    const text = readFileSync(join(here, 'dos.shaft'), 'utf8');
    expect(text.startsWith('\ufeff')).toBe(true);
    expect(text.match(/(?<!\r)\n/)).toBeNull();
    expect(tailshaft('compare before.shaft dos.shaft', { cwd: here }).stdout).toBe('No change in meaning.\n');
  });

  it('lays out standard input', () => {
    const here = folder({ 'one.shaft': untidy });
    const { stdout } = tailshaft('format --stdin', { cwd: here, input: untidy });
    tailshaft('format one.shaft', { cwd: here });
    expect(stdout).toBe(readFileSync(join(here, 'one.shaft'), 'utf8'));
    expect(tailshaft('format --stdin --check', { cwd: here, input: stdout }).status).toBe(0);
    expect(tailshaft('format --stdin --check', { cwd: here, input: untidy }).status).toBe(1);
  });
});

describe('sheet', () => {
  it('prints the page, or writes it whole', () => {
    const here = folder({ 'right.shaft': SINGLE_LINE });
    const printed = tailshaft('sheet right.shaft --today 2026-03-01', { cwd: here });
    expect(printed.status).toBe(0);
    expect(printed.stdout).toMatch(/^<!doctype html>[\s\S]*<\/html>\s*$/);
    expect(printed.stdout).toMatch(/right\.shaft:\d+/);
    const written = tailshaft('sheet right.shaft --out page.html --today 2026-03-01', { cwd: here });
    expect(written).toMatchObject({ status: 0, stdout: '', stderr: 'tailshaft: wrote page.html\n' });
    expect(readFileSync(join(here, 'page.html'), 'utf8')).toBe(printed.stdout);
    expect(printed.stdout).not.toMatch(TRACE);
    expect(existsSync(join(here, 'right.shaft'))).toBe(true);
  });

  it('asks which vessel where there are several', () => {
    const here = folder({ 'two.shaft': `${SINGLE_LINE}\nvessel Quickgrass { }\n` });
    const asked = tailshaft('sheet two.shaft', { cwd: here });
    expect(asked.status).toBe(2);
    expect(asked.stderr).toContain('choose one of Ternhaven, Quickgrass with --vessel');
    expect(tailshaft('sheet two.shaft --vessel Quickgrass', { cwd: here }).stdout).toContain('Quickgrass');
  });

  it('writes one paper for each vessel that files and folders hold, and keeps none back for another', () => {
    const vessel = (name: string) => SINGLE_LINE.replaceAll('vessel Ternhaven', `vessel ${name}`);
    const here = folder({
      'a/one.shaft': vessel('Ternhaven'),
      'a/two.shaft': `${vessel('Quickgrass')}\nvessel Brackle { }\n`,
      'b/one.shaft': vessel('ternhaven'),
      'b/parts.shaft': SINGLE_LINE.split('vessel ')[0]!,
      'c/odd.shaft': Buffer.from([0, 1]),
    });
    const day = '--today 2026-03-01';
    const first = tailshaft(`sheet a b --out papers/deep --paper summary --format markdown ${day}`, {
      cwd: here,
    });
    expect(first).toMatchObject({
      status: 0,
      stdout: '',
      stderr: 'tailshaft: wrote 4 papers to papers/deep\n',
    });
    const names = ['Brackle', 'Quickgrass', 'Ternhaven', 'ternhaven-b-one'];
    expect(readdirSync(join(here, 'papers/deep')).sort()).toEqual(names.map(one => `${one}-summary.md`));
    const alone = tailshaft(`sheet a/one.shaft --paper summary --format markdown ${day}`, { cwd: here });
    expect(readFileSync(join(here, 'papers/deep/Ternhaven-summary.md'), 'utf8')).toBe(alone.stdout);
    const some = tailshaft(`sheet a/two.shaft c/odd.shaft --out more ${day}`, { cwd: here });
    expect(some.status).toBe(2);
    expect(some.stderr).toContain('c/odd.shaft');
    expect(readdirSync(join(here, 'more')).sort()).toEqual(['Brackle.html', 'Quickgrass.html']);
  });

  it.each([
    ['sheet .', 'name a folder for them with --out'],
    ['sheet . --out away --margins m.csv', '--margins is for one vessel'],
    ['sheet . --out away --vessel Nobody', 'no vessel is called Nobody'],
    ['sheet . --out one.shaft', 'has the name of a spec'],
    ['sheet . - --out away', '- is one spec'],
  ])('refuses %s', (words, why) => {
    const here = folder({ 'one.shaft': SINGLE_LINE });
    const answer = tailshaft(words, { cwd: here });
    expect(answer.status).toBe(2);
    expect(answer.stderr).toContain(why);
    expect(existsSync(join(here, 'away'))).toBe(false);
  });
});
