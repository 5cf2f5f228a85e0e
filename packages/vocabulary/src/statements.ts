/** One place of a statement: a word that leads on, or what a person fills in. */
export type StatementPart = { readonly word: string } | { readonly fill: string };

/** A statement of the language: where it stands, what its words lead to, what it means, and how it is written. */
export interface Statement {
  /** The word that it begins with. */
  readonly word: string;
  readonly where: 'file' | 'vessel' | 'arrangement' | 'line';
  readonly parts: readonly StatementPart[];
  readonly doc: string;
  readonly example: string;
}

const fill = (text: string): StatementPart => ({ fill: text });
const word = (text: string): StatementPart => ({ word: text });

/** The statements in the order of completion and of the reference page. */
export const STATEMENTS: readonly Statement[] = [
  {
    word: 'import',
    where: 'file',
    parts: [word('import'), fill('path in quotes')],
    doc: 'Takes in the entries of a file, or of every spec in a folder, beside this file.',
    example: 'import "catalogue"',
  },
  {
    word: 'vessel',
    where: 'file',
    parts: [word('vessel'), fill('name'), fill('title in quotes')],
    doc: 'A vessel with its duty, hull, arrangements, criteria, requirements and acceptances.',
    example: 'vessel Ternhaven "harbour pilot cutter" { }',
  },
  {
    word: 'duty',
    where: 'vessel',
    parts: [word('duty'), fill('pleasure, light, medium, heavy, continuous')],
    doc: 'Duty class that the vessel is specified for.',
    example: 'duty medium { hours 1500 per year }',
  },
  {
    word: 'hull',
    where: 'vessel',
    parts: [word('hull'), fill('planing, semi-displacement, displacement')],
    doc: 'Form of the hull.',
    example: 'hull planing { displacement 11.8 t }',
  },
  {
    word: 'certificate',
    where: 'vessel',
    parts: [word('certificate')],
    doc: 'What the certificate or licence of the vessel limits.',
    example: 'certificate { power 440 kW }',
  },
  {
    word: 'arrangement',
    where: 'vessel',
    parts: [word('arrangement'), fill('name'), word('revises'), fill('arrangement before')],
    doc: 'Shaft lines as they are or as they are proposed. One that revises another says of each part what becomes of it.',
    example: 'arrangement existing { }',
  },
  {
    word: 'criteria',
    where: 'vessel',
    parts: [word('criteria')],
    doc: 'Which published criterion judges what, with its factor and reason. What is not written has a default, which the sheet marks as such.',
    example: 'criteria { tip clearance at least 15 % }',
  },
  {
    word: 'require',
    where: 'vessel',
    parts: [
      word('require'),
      fill('what'),
      word('at least'),
      fill('bound with its unit'),
      word('at'),
      fill('condition'),
      fill('note in quotes'),
    ],
    doc: 'A requirement of the owner, class or flag on a computed quantity; `at most` and `is` bound it too. One that nothing verifies is a finding.',
    example: 'require speed at least 22 kn at full power "owner\'s note 3"',
  },
  {
    word: 'assume',
    where: 'vessel',
    parts: [word('assume'), fill('what, and its value'), word('because'), fill('reason in quotes')],
    doc: 'Overrides a default that the computation uses, with the reason.',
    example: 'assume gear efficiency 97 % because "rating note"',
  },
  {
    word: 'accept',
    where: 'vessel',
    parts: [
      word('accept'),
      fill('rule'),
      word('on'),
      fill('arrangement, line or part'),
      word('because'),
      fill('reason in quotes'),
      word('by'),
      fill('role in quotes'),
      word('dated'),
      fill('date'),
      word('until'),
      fill('date'),
    ],
    doc: 'A waiver: who accepts which finding where, why, and until when. It never hides: the finding becomes accepted.',
    example:
      'accept shafting/span-guide on Port because "whirling criterion holds" by "class surveyor" dated 2026-03-02 until 2027-03-01',
  },
  {
    word: 'revision',
    where: 'vessel',
    parts: [word('revision'), fill('letter'), word('dated'), fill('date'), fill('what changed, in quotes')],
    doc: 'An entry of the change record: its letter, its date and what changed.',
    example: 'revision B dated 2026-03-02 "Gear ratio 2.04:1"',
  },
  {
    word: 'trial',
    where: 'vessel',
    parts: [
      word('trial'),
      fill('name in quotes'),
      word('of'),
      fill('arrangement'),
      word('dated'),
      fill('date'),
    ],
    doc: 'The sheet of a dock or sea trial of one arrangement: conditions, runs and readings in braces. They are held against what the spec predicts and requires.',
    example: 'trial "builder\'s trial" of proposed dated 2026-02-24 { bottom clean }',
  },
  {
    word: 'shaftline',
    where: 'arrangement',
    parts: [word('shaftline'), fill('name'), word('mirrors'), fill('line of the other side')],
    doc: 'The parts from engine to propeller, in the order in which power runs through them.',
    example: 'shaftline Port { }',
  },
  {
    word: 'reason',
    where: 'arrangement',
    parts: [
      word('reason for'),
      fill('same hand, inward turning or unequal ratios'),
      fill('reason in quotes'),
    ],
    doc: 'Why the lines differ from what is usual: same hand, inward turning or unequal ratios.',
    example: 'reason for same hand "one spare propeller for both"',
  },
  {
    word: 'replace',
    where: 'line',
    parts: [word('replace'), fill('part')],
    doc: 'Another part comes in its place.',
    example: 'replace engine Kittiwake-9 at medium',
  },
  {
    word: 'retain',
    where: 'line',
    parts: [word('retain'), fill('part')],
    doc: 'The part stays as it is, under the new loads.',
    example: 'retain shaft',
  },
  {
    word: 'modify',
    where: 'line',
    parts: [word('modify'), fill('part'), fill('changed facts in braces')],
    doc: 'The part stays, with some of its facts changed.',
    example: 'modify propeller { pitch 23 in }',
  },
  {
    word: 'remove',
    where: 'line',
    parts: [word('remove'), fill('part')],
    doc: 'The part goes, and nothing comes in its place.',
    example: 'remove coupling',
  },
];

/** The words that statements of one place begin with, in their order. */
export function statementsOf(where: Statement['where']): readonly string[] {
  return STATEMENTS.filter(one => one.where === where).map(one => one.word);
}

/** The statement that begins with this word. */
export function statement(word: string): Statement | undefined {
  return STATEMENTS.find(one => one.word === word);
}
