import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import {
  changed,
  REPOWER,
  SINGLE_LINE,
  TWIN_LINES,
} from '../../packages/drivetrain/src/rules/example-specs.js';
import { folders, put, TRACE, tailshaft } from './run.js';

const folder = folders();
const today = '--today 2026-03-01';

const schema = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../packages/cli/schema/compare.schema.json'), 'utf8'),
);
const valid = new Ajv({ allErrors: true, strict: true, strictRequired: false, strictTypes: false }).compile(
  schema,
);

/** The answer as JSON, held against the schema on the way. */
function compared(before: string, after: string) {
  const cwd = folder({ 'before.shaft': before, 'after.shaft': after });
  const answer = tailshaft(`compare before.shaft after.shaft --json ${today}`, { cwd });
  expect(answer.stderr + answer.stdout).not.toMatch(TRACE);
  const json = JSON.parse(answer.stdout);
  expect(valid(json), JSON.stringify(valid.errors)).toBe(true);
  return json;
}

const text = (words: string, before: string, after: string) => {
  const cwd = folder({ 'before.shaft': before, 'after.shaft': after });
  return tailshaft(`compare before.shaft after.shaft ${words} ${today}`, { cwd }).stdout.replace(/\s+/g, ' ');
};

describe('what is no change in meaning', () => {
  const [entries = '', vessel = ''] = TWIN_LINES.split(/(?=vessel Ternhaven)/);
  const blocks = entries.split(/\n(?=gear|shaft material)/);
  const lines = vessel.split(/(?= {4}shaftline)/);

  it.each([
    ['comments', TWIN_LINES.replaceAll('\n', ' // why\n')],
    ['documentation', `/// The pilot cutter.\n${vessel}\n${entries}`],
    ['layout', TWIN_LINES.replaceAll('\n', '\n\n\t')],
    ['line ends', TWIN_LINES.replaceAll('\n', '\r\n')],
    ['the order of blocks', `${vessel}\n${[...blocks].reverse().join('\n')}`],
    [
      'the order of lines',
      `${entries}${lines[0]}${lines[2]!.replace(/ {2}\}\n\}\n$/, '')}${lines[1]}  }\n}\n`,
    ],
    [
      'the order of facts',
      changed(
        TWIN_LINES,
        ['cylinders 6\n  cycle four-stroke', 'cycle four-stroke\n  cylinders 6'],
        ['blades 4  diameter 26 in', 'diameter 26 in  blades 4'],
      ),
    ],
    ['another spelling of a number', changed(TWIN_LINES, ['pitch 24 in', 'pitch 24.0 in'])],
  ])('%s', (_name, after) => {
    expect(after).not.toBe(TWIN_LINES);
    const cwd = folder({ 'before.shaft': TWIN_LINES, 'after.shaft': after });
    const answer = tailshaft(`compare before.shaft after.shaft ${today}`, { cwd });
    expect(answer.stdout).toBe('No change in meaning.\n');
    expect(answer.stderr).toBe('');
    expect(answer.status).toBe(0);
  });
});

describe('what follows from a change', () => {
  it('begins with the verdict that newly fails', () => {
    const { vessels } = compared(SINGLE_LINE, changed(SINGLE_LINE, ['hand right', 'hand left']));
    const [first] = vessels[0].changes;
    expect(first).toMatchObject({
      kind: 'verdict',
      movement: 'newly fails',
      rule: 'rotation/propeller-hand',
      subject: 'proposed.Centre',
      before: { outcome: 'holds' },
      after: { outcome: 'fails' },
    });
    expect(vessels[0].worse).toBe(true);
  });

  it('tells speeds and torques of another ratio with the ratio of the exact ratios', () => {
    const { vessels } = compared(
      SINGLE_LINE,
      changed(SINGLE_LINE, ['gear Alder-63 ratio 2.04', 'gear Alder-63 ratio 2.52']),
    );
    const derived = new Map<string, { share: number; before: string; after: string }>(
      vessels[0].changes
        .filter((one: { kind: string }) => one.kind === 'derived')
        .map((one: { what: string }) => [one.what, one]),
    );
    expect(derived.get('ratio ahead')).toMatchObject({ before: '2.043:1', after: '2.524:1' });
    expect(derived.get('shaft torque at rated power')!.share).toBeCloseTo(2.524 / 2.043 - 1, 9);
    expect(derived.get('shaft speed at rated power')!.share).toBeCloseTo(2.043 / 2.524 - 1, 9);
    expect(derived.get('shaft speed at rated power')).toMatchObject({
      before: '1126 rpm',
      after: '911.3 rpm',
    });
    expect(derived.has('rated power at the crankshaft')).toBe(false);
  });

  it('tells a margin before and after', () => {
    const { vessels } = compared(
      SINGLE_LINE,
      changed(SINGLE_LINE, ['rated medium 0.18 kW/rpm', 'rated medium 0.17 kW/rpm']),
    );
    const move = vessels[0].changes.find(
      (one: { rule?: string }) => one.rule === 'capacity/gear-input-torque',
    );
    expect(move.movement).toBe('margin smaller');
    expect((1 + move.after.margin) / (1 + move.before.margin)).toBeCloseTo(0.17 / 0.18, 9);
    expect(
      text('', SINGLE_LINE, changed(SINGLE_LINE, ['rated medium 0.18 kW/rpm', 'rated medium 0.17 kW/rpm'])),
    ).toMatch(
      /margin smaller capacity\/gear-input-torque on proposed\.Centre holds with [\d.]+ % margin → holds with [\d.]+ % margin/,
    );
  });

  it('tells what can no longer be told', () => {
    const { vessels } = compared(SINGLE_LINE, changed(SINGLE_LINE, ['low idle 650 rpm', 'low idle unknown']));
    const changes: { kind: string; movement?: string; what?: string; after?: string }[] = vessels[0].changes;
    expect(changes.some(one => one.movement === 'newly cannot tell')).toBe(true);
    const idle = changes.find(one => one.what === 'shaft speed at idle');
    expect(idle).toBeDefined();
    expect(idle!.after).toBeUndefined();
  });
});

describe('what is easily missed', () => {
  const silent = (before: string, after: string): string[] =>
    compared(before, after)
      .vessels.flatMap((one: { changes: { kind: string; what: string; words: string }[] }) => one.changes)
      .filter((one: { kind: string }) => one.kind === 'silent')
      .map((one: { what: string; words: string }) => `${one.what}: ${one.words}`);

  it.each([
    [
      'another issue of a sheet',
      ['issue 4" dated 2025-02-10', 'issue 5" dated 2025-08-01'],
      /^source: gear Alder-63 keeps its name.*issue 4.*issue 5/,
    ],
    [
      'a number that changed its unit',
      ['diameter 65 mm', 'diameter 65 in'],
      /^same number, other unit: shaft, diameter: 65 mm → 65 in/,
    ],
    [
      'weaker evidence',
      ['65 mm [drawing]', '65 mm [hearsay]'],
      /^evidence: shaft, diameter 65 mm: weaker evidence, drawing → hearsay/,
    ],
    [
      'facts behind the same name',
      ['input speed at most 3000 rpm', 'input speed at most 2800 rpm'],
      /^same name, other facts: gear Alder-63 keeps its name, other facts: input speed at most/,
    ],
    [
      'an exact ratio for a nominal one',
      ['ratio 2.04:1 exact 2.043:1', 'ratio 2.04:1'],
      /^exact to nominal: gear Alder-63/,
    ],
    [
      'an equal value in another unit',
      ['pitch 24 in', 'pitch 609.6 mm'],
      /^other unit, same value: propeller, pitch: 24 in → 609.6 mm/,
    ],
  ] as const)('%s', (_name, change, words) => {
    const found = silent(SINGLE_LINE, changed(SINGLE_LINE, change));
    expect(
      found.some(one => words.test(one)),
      found.join('\n'),
    ).toBe(true);
  });

  it('a requirement that asks for less, and a change without a revision', () => {
    const extra = (speed: string) =>
      changed(SINGLE_LINE, [
        '  arrangement proposed',
        `  require speed at most ${speed} kn at idle ahead\n  revision A dated 2026-01-20 "First"\n  arrangement proposed`,
      ]);
    const found = silent(extra('6.0'), extra('7.0'));
    expect(found).toContainEqual(expect.stringMatching(/^requirement relaxed: .*6\.0 kn.* → .*7\.0 kn/));
    expect(found).toContainEqual(expect.stringMatching(/^no revision: .*the last is A$/));
    expect(silent(extra('7.0'), extra('6.0')).join()).not.toContain('relaxed');
  });
});

describe('the two sides', () => {
  it('asks after a change on one of them', () => {
    const { vessels } = compared(
      TWIN_LINES,
      changed(TWIN_LINES, ['ratio 2.04:1 ahead clutch A', 'ratio 2.52:1 ahead clutch A']),
    );
    const found = vessels[0].changes.filter((one: { kind: string }) => one.kind === 'one-sided');
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ changed: 'proposed.Port', unchanged: 'proposed.Starboard' });
  });

  it('sees propellers that changed places', () => {
    const swapped = TWIN_LINES.replace('hand left', 'hand X')
      .replace('hand right', 'hand left')
      .replace('hand X', 'hand right');
    const { vessels } = compared(TWIN_LINES, swapped);
    const moved = vessels[0].changes.filter((one: { fate?: string }) => one.fate === 'moved between sides');
    expect(
      moved.map((one: { subject: string; from: string }) => `${one.from} to ${one.subject}`).sort(),
    ).toEqual(['proposed.Port to proposed.Starboard', 'proposed.Starboard to proposed.Port']);
  });
});

describe('sets of specs', () => {
  it('tells vessels and entries that came and went', () => {
    const cwd = folder({
      'a/one.shaft': SINGLE_LINE,
      'b/two.shaft': TWIN_LINES.replaceAll('Ternhaven', 'Quickgrass')
        .replaceAll('Alder-63', 'Alder-64')
        .replace('hours 1500', 'hours 200')
        .replaceAll('diameter 65 mm', 'diameter 70 mm')
        .replaceAll('diameter 26 in', 'diameter 25 in')
        .replaceAll('pitch 24 in', 'pitch 23 in')
        .replace('input speed at least 600 rpm', 'input speed at least 500 rpm'),
    });
    const json = JSON.parse(tailshaft(`compare a b --json ${today}`, { cwd }).stdout);
    expect(valid(json), JSON.stringify(valid.errors)).toBe(true);
    expect([json.removedVessels, json.addedVessels]).toEqual([['Ternhaven'], ['Quickgrass']]);
    expect(json.entries.map((one: { name: string; fate: string }) => `${one.name} ${one.fate}`)).toEqual([
      'Alder-64 renamed',
    ]);
    expect(tailshaft(`compare a b ${today}`, { cwd }).stdout).toContain(
      'Vessel added  Quickgrass: 0 checks fail',
    );
  });

  it('shows one correction of a catalogue on every vessel that it touches, and on no other', () => {
    const [entries = '', vessel = ''] = SINGLE_LINE.split(/(?=vessel Ternhaven)/);
    const fleet = (rated: string) => ({
      'parts.shaft': changed(entries, ['rated medium 0.18 kW/rpm', `rated medium ${rated} kW/rpm`]),
      'one.shaft': `import "parts"\n${vessel}`,
      'two.shaft': `import "parts"\n${vessel.replace('Ternhaven', 'Quickgrass')}`,
      'other.shaft': `import "parts"\n${vessel.replace('Ternhaven', 'Saltmarsh').replace('ratio 2.04:1', 'ratio 2.52:1')}`,
    });
    const cwd = folder();
    for (const [side, rated] of [
      ['a', '0.18'],
      ['b', '0.12'],
    ] as const) {
      for (const [name, content] of Object.entries(fleet(rated))) put(cwd, `${side}/${name}`, content);
    }
    const json = JSON.parse(tailshaft(`compare a b --json ${today}`, { cwd }).stdout);
    expect(json.vessels.map((one: { name: string }) => one.name)).toEqual(['Quickgrass', 'Ternhaven']);
    expect(json.vessels.every((one: { worse: boolean }) => one.worse)).toBe(true);
    expect(json.entries.map((one: { name: string }) => one.name)).toEqual(['Alder-63']);
  });

  it('ends with 1 when asked to and something got worse', () => {
    const cwd = folder({
      'right.shaft': SINGLE_LINE,
      'wrong.shaft': changed(SINGLE_LINE, ['hand right', 'hand left']),
    });
    const status = (words: string) => tailshaft(`compare ${words} ${today}`, { cwd }).status;
    expect(status('right.shaft wrong.shaft')).toBe(0);
    expect(status('right.shaft wrong.shaft --exit-code')).toBe(1);
    expect(status('wrong.shaft right.shaft --exit-code')).toBe(0);
    expect(status('right.shaft right.shaft --exit-code')).toBe(0);
  });
});

describe('arrangements of one vessel', () => {
  const cwd = folder({ 'repower.shaft': REPOWER });

  it('are compared as found against proposed', () => {
    for (const words of [
      'repower.shaft --arrangements existing proposed',
      '--arrangements existing proposed repower.shaft',
    ]) {
      const { stdout, status } = tailshaft(`compare ${words} ${today}`, { cwd });
      expect(status).toBe(0);
      expect(stdout).toMatch(/Centre: engine replaced: Old-Eight at medium → Kittiwake-9 at medium/);
      expect(stdout).toMatch(/Parts kept: Centre: gear, shaft, propeller/);
      expect(stdout).toMatch(/peak torque of the engine +Centre +1530 N·m +→ +1480 N·m +−3\.3 %/);
    }
  });
});

describe('Markdown', () => {
  it('has tables, and takes no word of the author for mark-up', () => {
    const before = changed(SINGLE_LINE, ['"harbour pilot cutter"', '"a | b <script> *c*"']);
    const cwd = folder({ 'a.shaft': before, 'b.shaft': changed(before, ['hand right', 'hand left']) });
    const { stdout } = tailshaft(`compare a.shaft b.shaft --markdown ${today}`, { cwd });
    expect(stdout).toContain('| newly fails | `rotation/propeller-hand` | proposed.Centre | holds | fails |');
    expect(stdout).toContain('a \\| b \\<script\\> \\*c\\*');
    expect(stdout).not.toContain('<script>');
  });
});

describe('git revisions', () => {
  const [entries = '', vessel = ''] = SINGLE_LINE.split(/(?=vessel Ternhaven)/);
  const cwd = folder({ 'parts/parts.shaft': entries, 'boats/one.shaft': `import "../parts"\n${vessel}` });
  const git = (...words: string[]) =>
    execFileSync('git', ['-c', 'user.name=t', '-c', 'user.email=t@example.invalid', ...words], {
      cwd,
      encoding: 'utf8',
    });
  git('init', '-q', '-b', 'main');
  git('add', '.');
  git('commit', '-q', '-m', 'first');
  put(cwd, 'parts/parts.shaft', changed(entries, ['rated medium 0.18 kW/rpm', 'rated medium 0.12 kW/rpm']));
  git('commit', '-q', '-a', '-m', 'second');
  put(cwd, 'boats/one.shaft', `import "../parts"\n${changed(vessel, ['hand right', 'hand left'])}`);

  const said = (words: string, from = cwd) => tailshaft(`compare ${words} ${today}`, { cwd: from });

  it('reads the imports of the revision, not those of the disk', () => {
    const { stdout, status } = said('boats/one.shaft --git HEAD~1 HEAD');
    expect(status).toBe(0);
    expect(stdout).toContain('newly fails  capacity/gear-input-torque');
    expect(stdout).not.toContain('rotation/propeller-hand');
  });

  it('compares the working files with one revision', () => {
    expect(said('boats/one.shaft --git HEAD').stdout).toContain('newly fails  rotation/propeller-hand');
    expect(said('boats/one.shaft --git HEAD').stdout).not.toContain('gear-input-torque');
    expect(said('--git HEAD').stdout).toContain('newly fails  rotation/propeller-hand');
    expect(said('one.shaft --git HEAD', join(cwd, 'boats')).stdout).toContain(
      'newly fails  rotation/propeller-hand',
    );
  });

  it('takes a range in either form', () => {
    expect(said('--git HEAD~1..HEAD').stdout).toBe(said('--git HEAD~1 HEAD').stdout);
    expect(said('--git HEAD~1 HEAD').stdout).toContain('Catalogue entries');
    expect(said('--git HEAD HEAD').stdout).toBe('No change in meaning.\n');
  });

  it.each([
    ['--git nowhere', 'git knows no revision "nowhere" here'],
    ['--git HEAD~9', 'git knows no revision "HEAD~9" here'],
    ['--git=--output=x', 'is not a git revision'],
    ['missing.shaft --git HEAD', 'at HEAD there is no spec in missing.shaft'],
  ])('says of %s what is wrong', (words, why) => {
    const { status, stderr, stdout } = said(words);
    expect(stderr, stdout).toContain(why);
    expect(status).toBe(2);
  });
});

describe('an added vessel', () => {
  it('is told with all its verdicts, for there is nothing to compare it with', () => {
    const added = changed(SINGLE_LINE, ['hand right', 'hand left']).replaceAll('Ternhaven', 'Ollersea');
    const cwd = folder({ 'before/a.shaft': TWIN_LINES, 'after/a.shaft': TWIN_LINES, 'after/b.shaft': added });
    const json = JSON.parse(tailshaft(`compare before after --json ${today}`, { cwd }).stdout);
    expect(valid(json), JSON.stringify(valid.errors)).toBe(true);
    const [one] = json.added;
    expect(one).toMatchObject({ name: 'Ollersea', file: 'b.shaft', levels: ['newly fails'] });
    const alone = JSON.parse(tailshaft(`check after/b.shaft --json ${today}`, { cwd }).stdout);
    expect(one.verdicts.map((it: { rule: string; outcome: string }) => [it.rule, it.outcome])).toEqual(
      alone.files[0].vessels[0].verdicts.map((it: { rule: string; outcome: string }) => [
        it.rule,
        it.outcome,
      ]),
    );
  });
});
