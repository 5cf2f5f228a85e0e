import { describe, expect, it } from 'vitest';
import { changed } from '../packages/drivetrain/src/rules/example-specs.js';
import { RECORDED } from '../packages/drivetrain/src/rules/paper/record-specs.js';
import { folders, tailshaft } from './cli/run.js';

const folder = folders();
const today = '--today 2026-03-01';

/** Rule and outcome of what the record says, in the order of the text. */
function judged(...edits: (readonly [string, string])[]): string[] {
  const cwd = folder({ 'a.shaft': changed(RECORDED, ...edits) });
  const { files } = JSON.parse(tailshaft(`check a.shaft --json ${today}`, { cwd }).stdout);
  const rules = ['paper/revision-order', 'paper/revision-signed', 'paper/open-matters'];
  return files[0].vessels[0].verdicts
    .filter((one: { rule: string }) => rules.includes(one.rule))
    .map((one: { rule: string; outcome: string }) => `${one.rule.slice(6)} ${one.outcome}`);
}

const HOLDS = [
  'revision-order holds',
  'revision-order holds',
  'revision-signed holds',
  'open-matters holds',
  'open-matters holds',
];
/** The same with one of them otherwise. */
const but = (at: number, outcome: string) =>
  HOLDS.map((one, index) => (index === at ? one.replace('holds', outcome) : one));

describe('the record of a vessel', () => {
  it.each([
    ['as it should be', [], HOLDS],
    [
      'written in another order',
      [
        ['revision A dated 2025-10-02 "First issue"\n', ''],
        [
          '    checked by "R. Marram" as "checker" dated 2025-11-21\n  }\n',
          '    checked by "R. Marram" as "checker" dated 2025-11-21\n  }\n  revision A dated 2025-10-02 "First issue"\n',
        ],
      ],
      HOLDS,
    ],
    [
      'a later name with an earlier date',
      [['revision A dated 2025-10-02', 'revision A dated 2025-12-02']],
      but(1, 'fails'),
    ],
    ['one name twice', [['revision A dated', 'revision B dated']], but(1, 'fails')],
    [
      'a date that is yet to come',
      [
        ['revision B dated 2025-11-20', 'revision B dated 2026-11-20'],
        ['dated 2025-11-21', 'dated 2026-11-21'],
      ],
      but(1, 'fails'),
    ],
    [
      'numbers, of which 10 comes behind 9',
      [
        ['revision A dated', 'revision 9 dated'],
        ['revision B dated', 'revision 10 dated'],
      ],
      HOLDS,
    ],
    [
      'letters, of which AA comes behind Z',
      [
        ['revision A dated', 'revision Z dated'],
        ['revision B dated', 'revision AA dated'],
      ],
      HOLDS,
    ],
    [
      'no date, so that nobody knows what was signed then',
      [['revision B dated 2025-11-20', 'revision B']],
      but(1, 'cannot tell').with(2, 'revision-signed cannot tell'),
    ],
    ['checked by who prepared it', [['checked by "R. Marram"', 'checked by "J  Fennick"']], but(2, 'fails')],
    [
      'approved by who prepared it',
      [['checked by', 'approved by "J. Fennick" as "head"\n    checked by']],
      but(2, 'fails'),
    ],
    ['signed before it was there', [['dated 2025-11-21', 'dated 2025-11-19']], but(2, 'fails')],
    [
      'checked before it was prepared',
      [['as "naval architect"', 'as "naval architect" dated 2025-11-22']],
      but(2, 'fails'),
    ],
    [
      'approved before it was checked',
      [['checked by', 'approved by "H. Dunlin" as "head" dated 2025-11-20\n    checked by']],
      but(2, 'fails'),
    ],
    ['signed in the time to come', [['dated 2025-11-21', 'dated 2035-11-21']], but(2, 'fails')],
    [
      'checked after the next revision',
      [['  arrangement proposed {', '  revision C dated 2025-11-20 "Next"\n  arrangement proposed {']],
      ['revision-order holds', ...but(2, 'fails')],
    ],
    ['signed in no role', [[' as "checker"', '']], but(2, 'cannot tell')],
    [
      'checked by nobody',
      [['    checked by "R. Marram" as "checker" dated 2025-11-21\n', '']],
      but(2, 'cannot tell'),
    ],
    ['a question that is overdue', [[' done 2025-11-14', '']], but(3, 'fails')],
    ['done after today', [['done 2025-11-14', 'done 2026-11-14']], but(3, 'fails')],
    ['an action without a last day', [[' due 2036-05-01', '']], but(4, 'cannot tell')],
    [
      'an action of nobody that is overdue',
      [
        [
          '"Weigh the gear on delivery" for "yard engineer" due 2036-05-01',
          '"Weigh the gear on delivery" due 2025-05-01',
        ],
      ],
      but(4, 'fails'),
    ],
  ] as const)('%s', (_, edits, expected) => {
    expect(judged(...edits)).toEqual(expected);
  });

  it('is told by comparison: who signed, what was closed, what is filed otherwise', () => {
    const after = changed(
      RECORDED,
      ['checked by "R. Marram"', 'checked by "P. Siskin"'],
      ['due 2036-05-01', 'due 2036-05-01 done 2026-02-01'],
      ['client "harbour authority"', 'client "pilot service"'],
      ['  project {', '  project {\n    question "Which paint?"'],
    );
    const cwd = folder({ 'a.shaft': RECORDED, 'b.shaft': after });
    const { vessels, levels } = JSON.parse(
      tailshaft(`compare a.shaft b.shaft --json ${today}`, { cwd }).stdout,
    );
    const words = vessels[0].changes
      .filter((one: { kind: string }) => one.kind === 'statement')
      .map((one: { words: string }) => one.words);
    expect(words).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^revision: B .*checked by "R\. Marram".* → B .*checked by "P\. Siskin"/),
        'project added: action Weigh the gear on delivery done 2026-02-01',
        'project: client "harbour authority" → client "pilot service"',
        'project added: question Which paint? "Which paint?"',
      ]),
    );
    expect(levels).toEqual(['newly unknown']);
  });

  it('stands on the sheet, in the description and, formatted, as one sentence a line', () => {
    const cwd = folder({ 'a.shaft': RECORDED });
    const sheet = tailshaft(`sheet a.shaft --markdown ${today}`, { cwd }).stdout;
    expect(sheet).toMatch(
      /\| B \| 2025-11-20 \| Pitch 25 in \| J\\?\. Fennick, naval architect \| R\\?\. Marram, checker, 2025-11-21 \|/,
    );
    expect(sheet).toMatch(
      /\| action \| Weigh the gear on delivery \| yard engineer \| open until 2036-05-01 \|/,
    );
    expect(sheet).toContain('harbour authority');
    const described = tailshaft(`describe a.shaft ${today}`, { cwd }).stdout;
    expect(described).toContain(
      'Ternhaven fact revision B 2025-11-20 Pitch 25 in prepared by "J. Fennick" as "naval architect"',
    );
    expect(described).not.toMatch(/[a-z]Fact\b/);
    const { stdout } = tailshaft('format -', { cwd, input: RECORDED.replaceAll(/ +/g, ' ') });
    expect(stdout).toContain('    checked by "R. Marram" as "checker" dated 2025-11-21\n');
    expect(stdout).toContain('    action "Weigh the gear on delivery" for "yard engineer" due 2036-05-01\n');
  });
});
