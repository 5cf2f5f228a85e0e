import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { changed, SINGLE_LINE, TWIN_LINES } from '../../packages/drivetrain/src/rules/example-specs.js';
import { FRESH } from '../fixes/fresh-vessels.js';
import { folders, TRACE, tailshaft } from './run.js';

const folder = folders();

const WRONG_HAND = changed(SINGLE_LINE, ['hand right [drawing]', 'hand left [drawing]']);
const NO_HAND = changed(SINGLE_LINE, ['hand right [drawing]  ', '']);
const today = '--today 2026-03-01';

it('marks a margin on which nothing rests', () => {
  const rated = changed(SINGLE_LINE, [
    '  slip device offered',
    '  slip device offered\n  thrust at most 60 kN',
  ]);
  const again = /propeller \{[^}]*\}/.exec(rated)![0];
  const cwd = folder({ 'one.shaft': rated, 'two.shaft': rated.replace(again, `${again}\n      ${again}`) });
  const margins = (name: string) =>
    tailshaft(`check ${name} --all ${today}`, { cwd }).stdout.replace(/\s+/g, ' ');
  expect(margins('one.shaft')).toMatch(/thrust capacity \d+ %(?! \(cannot tell\))/);
  expect(margins('two.shaft')).toMatch(/thrust capacity \d+ % \(cannot tell\)/);
});

it('says for which line a way out is, where each of two has its own', () => {
  const weak = changed(TWIN_LINES, ['  slip device offered', '  slip device offered\n  thrust at most 4 kN']);
  const { stdout } = tailshaft(`check - --quiet ${today}`, { cwd: folder({}), input: weak });
  const ways = stdout.replace(/\s+/g, ' ').match(/way out: [^,]*? thrust bearing/g);
  expect(ways).toEqual(['way out: Port: Add a thrust bearing', 'way out: Starboard: Add a thrust bearing']);
});

describe('the status', () => {
  const cwd = folder({
    'right.shaft': SINGLE_LINE,
    'wrong.shaft': WRONG_HAND,
    'open.shaft': NO_HAND,
    'misspelt.shaft': changed(SINGLE_LINE, ['low idle', 'low idel']),
    'warned.shaft': changed(SINGLE_LINE, ['dated 2025-02-10', 'dated 2005-02-10']),
  });

  it.each([
    ['right.shaft', 0],
    ['wrong.shaft', 1],
    ['misspelt.shaft', 1],
    ['open.shaft', 0],
    ['open.shaft --severity information', 1],
    ['open.shaft --severity note', 0],
    ['wrong.shaft --severity information', 1],
    ['right.shaft --severity information', 0],
    ['right.shaft wrong.shaft', 1],
    ['right.shaft missing.shaft', 2],
    ['wrong.shaft missing.shaft', 2],
    ['.', 1],
    ['', 1],
  ])('of check %s is %i', (words, status) => {
    const answer = tailshaft(`check ${words} ${today}`, { cwd });
    expect(answer.status, answer.stdout + answer.stderr).toBe(status);
    expect(answer.stdout + answer.stderr).not.toMatch(TRACE);
  });

  it('counts a finding from its own severity on', () => {
    const levels = ['error', 'warning', 'note', 'information'];
    const findings = JSON.parse(tailshaft(`check warned.shaft --json ${today}`, { cwd }).stdout).files[0]
      .findings;
    const gravest = Math.min(...findings.map((one: { severity: string }) => levels.indexOf(one.severity)));
    expect(gravest).toBeGreaterThan(0);
    for (const [index, level] of levels.entries()) {
      const { status } = tailshaft(`check warned.shaft --severity ${level} ${today}`, { cwd });
      expect(status, level).toBe(index >= gravest ? 1 : 0);
    }
  });
});

describe('a name from an import that failed', () => {
  const cwd = folder({
    'lost.shaft': `import "../parts"\n${SINGLE_LINE.replace(/^(engine|gear) [\s\S]*?^}\n/gm, '')}`,
  });

  it('is told under the import, and in full where all is asked for', () => {
    const { stdout } = tailshaft(`check lost.shaft ${today}`, { cwd });
    expect(stdout).toMatch(
      /error {2}text\/import[\s\S]*see: No engine is called [\w-]+\.[\s\S]*see: No gear is called/,
    );
    expect(stdout).not.toContain('text/unknown-name');
    const all = tailshaft(`check lost.shaft --all ${today}`, { cwd }).stdout;
    expect(all.match(/error {2}text\/unknown-name/g)?.length).toBeGreaterThan(1);
  });
});

describe('what a person reads', () => {
  const cwd = folder({ 'wrong.shaft': WRONG_HAND, 'open.shaft': NO_HAND, 'twin.shaft': TWIN_LINES });

  it('shows the line, the mark under it, the reason and the ways out', () => {
    const { stdout } = tailshaft(`check wrong.shaft ${today}`, { cwd });
    const lines = stdout.split('\n');
    const at = lines.findIndex(line => line.startsWith('error  rotation/propeller-hand  wrong.shaft:'));
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(10);
    const [, line, column] = /:(\d+):(\d+)$/.exec(lines[at]!)!;
    const source = WRONG_HAND.split('\n')[Number(line) - 1]!;
    expect(source.slice(Number(column) - 1)).toMatch(/^left/);
    const marks = lines[at + 2]!.replace(/^\s+\| /, '');
    const shown = lines[at + 1]!.replace(/^\s*\d+ \| /, '');
    expect(shown.slice(marks.indexOf('^'), marks.lastIndexOf('^') + 1)).toBe('left');
    expect(stdout).toMatch(/way out: Make the propeller/);
    expect(stdout).toContain('see: engine Kittiwake-9');
  });

  it('begins with a line for each vessel, then the finding', () => {
    const [vessel, blank, finding] = tailshaft(`check wrong.shaft ${today}`, { cwd }).stdout.split('\n');
    expect(vessel).toMatch(/^Ternhaven {2}fails {2}\d+ hold, 1 fails, 0 cannot tell$/);
    expect(blank).toBe('');
    expect(finding).toMatch(/^error {2}rotation\/propeller-hand/);
  });

  it('groups what cannot be told by the missing datum, and counts it again at the end', () => {
    const { stdout } = tailshaft(`check open.shaft ${today}`, { cwd });
    expect(stdout.split('\n')[0]).toMatch(/^Ternhaven {2}cannot tell {2}\d+ hold, 0 fail, \d+ cannot tell$/);
    expect(stdout).toMatch(/^Open questions: \d+ checks? cannot tell, for 1 missing datum$/m);
    expect(stdout).toMatch(/^ {2}hand of the propeller, line \d+: \d+ checks? waits? \(propeller hand/m);
    expect(stdout.replace(/\s+/g, ' ')).toMatch(/; \d+ cannot tell for lack of data/);
    const all = tailshaft(`check open.shaft --all ${today}`, { cwd }).stdout;
    expect(all).toMatch(/rotation\/propeller-hand on Ternhaven, proposed\.Centre/);
    expect(all).toMatch(/write: hand \.\.\./);
  });

  it('gives the margins of each line, those of mirrored ones once, and the caution once', () => {
    const { stdout } = tailshaft(`check twin.shaft ${today}`, { cwd });
    expect(stdout).toMatch(/^ {2}proposed, Port and Starboard: .*\d+ %/m);
    expect(tailshaft(`check twin.shaft --all ${today}`, { cwd }).stdout).toMatch(/gear input torque \d+ %/);
    expect(stdout.match(/A screening of what the specs declare/g)).toHaveLength(1);
    expect(stdout).toMatch(/maker.*class, flag.*licensed\s+practitioner/s);
  });

  it('prints every verdict when asked', () => {
    const { stdout } = tailshaft(`check wrong.shaft --verdicts ${today}`, { cwd });
    const json = JSON.parse(tailshaft(`check wrong.shaft --json ${today}`, { cwd }).stdout).files[0];
    const verdicts = [...json.vessels, ...json.entries].flatMap(
      (one: { verdicts: object[] }) => one.verdicts,
    );
    const rows = stdout
      .split('\n')
      .filter(line => /^ {2}(holds|fails|cannot tell|does not apply|accepted) /.test(line));
    expect(rows).toHaveLength(verdicts.length);
    expect(verdicts.length).toBeGreaterThan(15);
  });

  it('keeps to the width of a page', () => {
    const { stdout } = tailshaft(`check . ${today}`, { cwd });
    const words = stdout.split('\n').filter(line => !/ \|/.test(line));
    expect(Math.max(...words.map(line => line.length))).toBeLessThanOrEqual(100);
  });
});

describe('colour', () => {
  const cwd = folder({ 'wrong.shaft': WRONG_HAND });
  const esc = '\u001b[';
  const plain = (text: string) =>
    text
      .split(esc)
      .map((one, index) => (index ? one.replace(/^[\d;]*m/, '') : one))
      .join('');

  it.each([
    ['a pipe', {}, false],
    ['NO_COLOR', { NO_COLOR: '1' }, false],
    ['FORCE_COLOR', { FORCE_COLOR: '1' }, true],
    ['FORCE_COLOR=0', { FORCE_COLOR: '0' }, false],
    ['both', { FORCE_COLOR: '1', NO_COLOR: '1' }, false],
  ])('with %s', (_name, env, coloured) => {
    const { stdout } = tailshaft(`check wrong.shaft ${today}`, { cwd, env });
    expect(stdout.includes(esc)).toBe(coloured);
    expect(plain(stdout)).toBe(tailshaft(`check wrong.shaft ${today}`, { cwd }).stdout);
  });

  it('never gets into machine output', () => {
    const { stdout } = tailshaft(`check wrong.shaft --json ${today}`, { cwd, env: { FORCE_COLOR: '1' } });
    expect(stdout).not.toContain(esc);
    expect(() => JSON.parse(stdout)).not.toThrow();
  });
});

describe('standard input', () => {
  const [entries = '', vessel = ''] = SINGLE_LINE.split(/(?=vessel Ternhaven)/);
  const cwd = folder({ 'catalogue/parts.shaft': entries, 'boats/here.txt': '' });

  it('is judged where it says it stands', () => {
    const input = `import "../catalogue"\n${vessel}`;
    const named = tailshaft(`check --stdin --stdin-name boats/new.shaft ${today}`, { cwd, input });
    expect(named.stdout).toMatch(/^Ternhaven {2}holds/);
    expect(named.status).toBe(0);
    const json = tailshaft(`check --stdin --stdin-name boats/new.shaft --json ${today}`, { cwd, input });
    expect(JSON.parse(json.stdout).files[0].path).toBe('boats/new.shaft');
    const unnamed = tailshaft(`check --stdin ${today}`, { cwd, input });
    expect(unnamed.status).toBe(1);
    expect(unnamed.stdout).toContain('stdin.shaft:1:');
  });

  it('is told from paths', () => {
    expect(tailshaft('check --stdin some.shaft', { cwd }).status).toBe(2);
    expect(tailshaft('check --stdin-name some.shaft', { cwd }).status).toBe(2);
  });
});

describe('JSON', () => {
  const cwd = folder({
    'right.shaft': SINGLE_LINE,
    'wrong.shaft': WRONG_HAND,
    'open.shaft': NO_HAND,
    'broken.shaft': 'vessel { arrangement ',
    'empty.shaft': '',
  });
  const schema = JSON.parse(
    readFileSync(join(import.meta.dirname, '../../packages/cli/schema/check.schema.json'), 'utf8'),
  );
  const valid = new Ajv({ allErrors: true, strict: true }).compile(schema);

  it.each(['.', 'right.shaft', 'wrong.shaft missing.shaft', 'empty.shaft'])(
    'of %s is what the schema says',
    words => {
      const answer = JSON.parse(tailshaft(`check ${words} --json ${today}`, { cwd }).stdout);
      expect(valid(answer), JSON.stringify(valid.errors)).toBe(true);
    },
  );

  it('is refused by the schema when something is not in it', () => {
    const answer = JSON.parse(tailshaft(`check wrong.shaft --json ${today}`, { cwd }).stdout);
    expect(valid({ ...answer, more: 1 })).toBe(false);
    expect(valid({ ...answer, files: [{ ...answer.files[0], findings: [{ code: 'x' }] }] })).toBe(false);
  });

  it('tells the ways out that an editor would offer, which of them a search found, and the harmless first', () => {
    const far = SINGLE_LINE.replace('diameter 65 mm [drawing]', 'diameter 65 mm [drawing]  overhang 160 mm');
    const own = folder({ 'far.shaft': far, 'wrong.shaft': WRONG_HAND });
    const answer = JSON.parse(tailshaft(`check . --json ${today}`, { cwd: own }).stdout);
    expect(valid(answer), JSON.stringify(valid.errors)).toBe(true);
    const tried = (path: string, code: string) =>
      answer.files
        .find((one: { path: string }) => one.path === path)
        .findings.find((one: { code: string }) => one.code === code).waysOutTried;
    const [hand] = tried('wrong.shaft', 'rotation/propeller-hand');
    expect(hand.title).toContain('right-hand');
    expect(hand.searched).toBeUndefined();
    const [first, ...others] = tried('far.shaft', 'shafting/overhang');
    expect(first).toMatchObject({
      title: expect.stringContaining('Make the overhang of the shaft 65 mm'),
      searched: true,
    });
    expect(first.makesWorse).toBeUndefined();
    expect(others.length).toBeGreaterThan(0);
    expect(tailshaft(`check far.shaft ${today}`, { cwd: own }).stdout).toMatch(
      /way out: Make the overhang of the shaft 65 mm/,
    );
  });

  it('names in the text the ways out that were tried, in the order in which an editor offers them', () => {
    const twin = FRESH['V-drives'];
    const broken = {
      'hand.shaft': twin.replace('propeller hand right', 'propeller hand left'),
      'facing.shaft': twin.replace('flywheel forward', 'flywheel aft'),
      'gear.shaft': FRESH.hybrid.replace('rated medium 0.072', 'rated medium 0.05'),
      'pitch.shaft': FRESH.leg.replace('pitch 17.5 in', 'pitch 22 in'),
    };
    const own = folder(broken);
    for (const path of Object.keys(broken)) {
      const answer = JSON.parse(tailshaft(`check ${path} --json ${today}`, { cwd: own }).stdout);
      const { stdout } = tailshaft(`check ${path} ${today}`, { cwd: own });
      const told = stdout.replace(/\n {11}(?! )/g, ' ');
      expect(told).not.toContain('not tried');
      const [first] = answer.files[0].findings.filter(
        (one: { severity: string }) => one.severity === 'error' || one.severity === 'warning',
      );
      const offered = first.waysOutTried.map((one: { title: string }) => one.title);
      const named = [
        ...told.slice(0, told.indexOf('\n\n', told.indexOf('way out:'))).matchAll(/way out: (.*)/g),
      ].map(one => one[1]);
      expect(offered[0], path).toBe(named[0]);
      // What was searched for besides stands in the editor, and is not searched for here where something does without harm.
      expect(
        named.filter(one => !offered.includes(one)),
        path,
      ).toEqual([]);
    }
  });

  it('says the same as the text, and in the same order every time', () => {
    const one = tailshaft(`check . --json ${today}`, { cwd });
    expect(
      tailshaft(`check broken.shaft open.shaft right.shaft wrong.shaft empty.shaft --json ${today}`, { cwd })
        .stdout,
    ).toBe(one.stdout);
    const { summary, files } = JSON.parse(one.stdout);
    expect(files.map((file: { path: string }) => file.path)).toEqual([
      ...['broken.shaft', 'empty.shaft', 'open.shaft', 'right.shaft', 'wrong.shaft'],
    ]);
    const text = tailshaft(`check . ${today}`, { cwd }).stdout;
    expect(text).toContain(`${summary.files} files, ${summary.vessels} vessels: ${summary.errors} errors`);
    expect(text.replace(/\s+/g, ' ')).toContain(`${summary.notChecked} cannot tell for lack of data`);
  });

  it('tells what could not be read, and judges the rest', () => {
    const answer = tailshaft(`check right.shaft missing.shaft --json ${today}`, { cwd });
    const { couldNotRun, files } = JSON.parse(answer.stdout);
    expect(couldNotRun).toEqual(['missing.shaft cannot be read: there is no such file or folder']);
    expect(files).toHaveLength(1);
    expect(answer.stderr).toContain('missing.shaft');
  });
});

describe('SARIF', () => {
  const cwd = folder({ 'a b.shaft': WRONG_HAND });

  it('holds each finding with its rule, place and a fingerprint that moving the text does not change', () => {
    const run = () => JSON.parse(tailshaft(`check . --sarif ${today}`, { cwd }).stdout).runs[0];
    const { tool, results, columnKind } = run();
    expect(columnKind).toBe('utf16CodeUnits');
    expect(results).toHaveLength(1);
    const [result] = results;
    expect(tool.driver.rules[result.ruleIndex].id).toBe('rotation/propeller-hand');
    const { artifactLocation, region } = result.locations[0].physicalLocation;
    expect(artifactLocation.uri).toBe('a%20b.shaft');
    expect(
      WRONG_HAND.split('\n')[region.startLine - 1]!.slice(region.startColumn - 1, region.endColumn - 1),
    ).toBe('left');
    const moved = folder({ 'a b.shaft': `\n\n// moved\n${WRONG_HAND}` });
    const again = JSON.parse(tailshaft(`check . --sarif ${today}`, { cwd: moved }).stdout).runs[0].results[0];
    expect(again.partialFingerprints).toEqual(result.partialFingerprints);
    expect(again.locations).not.toEqual(result.locations);
  });
});
