import type { Role } from './words.js';

/** One place of a statement: a word that leads on, or what a person fills in. */
export type StatementPart = { readonly word: string } | { readonly fill: string };

/** A statement of the language: where it stands, what its words lead to, what it means, and how it is written. */
export interface Statement {
  /** The word, or the mark of a comment, that it begins with. */
  readonly word: string;
  readonly where: 'anywhere' | 'file' | 'vessel' | 'arrangement' | 'line';
  /** Words as they are written, and in angles what a person fills in; braces where a block may follow. */
  readonly form: string;
  readonly doc: string;
  /** What may follow it, each with its meaning, by the word that it begins with. */
  readonly clauses?: readonly (readonly [form: string, meaning: string])[];
  /** Lines that read as they stand, inside what the statement stands in. */
  readonly example: string;
}

const COMMENTS = [
  {
    word: '//',
    where: 'anywhere',
    form: '// <text>',
    doc: 'A comment to the end of the line; `/*` and `*/` enclose a longer one. No check reads it.',
    example: '// measured with the shaft drawn',
  },
  {
    word: '///',
    where: 'anywhere',
    form: '/// <text>',
    doc: 'A remark on the vessel, arrangement, line, part or entry below it: hovers and the sheet show it.',
    example: '/// Built 1988; engines and gears as found.',
  },
] as const satisfies readonly Statement[];

const IN_FILE = [
  {
    word: 'import',
    where: 'file',
    form: 'import <path in quotes>',
    doc: 'Imports the entries of a file, or of every spec in a folder, relative to this file. Imports come first. The extension `.shaft` may be left out.',
    example: 'import "../catalogue"',
  },
  {
    word: 'vessel',
    where: 'file',
    form: 'vessel <name> <title in quotes> { }',
    doc: 'A vessel with its duty, hull, arrangements, criteria, requirements, acceptances, trials and studies.',
    example: 'vessel Ternhaven "harbour pilot cutter" { }',
  },
] as const satisfies readonly Statement[];

/** Catalogue entries: what a part is, wherever it is fitted. Shaft lines call it by its name. */
const ENTRIES = [
  entry(
    'engine',
    'An engine: rotation, ratings, speeds, housing.',
    'engine Kittiwake-9 "marine diesel" { low idle 650 rpm }',
  ),
  entry(
    'motor',
    'An electric motor: power, torque and speed over its range.',
    'motor Fulmar-40 { top speed 2400 rpm }',
  ),
  entry(
    'gear',
    'A reduction gear: its ratios, what each clutch does, and what it is rated for.',
    'gear Alder-63 "down-angle reduction gear" { input speed at most 3000 rpm }',
  ),
  entry('transfer', 'A V-drive box, belt or chain stage.', 'transfer Rowan-2 { turns the line back yes }'),
  entry('coupling', 'A coupling, damper or joint.', 'coupling Elm-4 { mass 12 kg }'),
  entry(
    'shaft material',
    'A grade of shaft bar, with its strengths.',
    'shaft material marine-bar "stainless bar" { torsional yield 70000 psi }',
  ),
  entry(
    'propeller',
    'A propeller: hand, blades, diameter, pitch, bore.',
    'propeller Wheel-26 { blades 4  diameter 26 in }',
  ),
  entry(
    'practice',
    'What an office asks of all its vessels: criteria, who may accept what and for how long, gravity of rules, title block. Every vessel that imports it is judged by it.',
    'practice Harbour-Office "design office" { gear torque margin at least 5 % }',
  ),
];

const IN_VESSEL = [
  {
    word: 'duty',
    where: 'vessel',
    form: 'duty <pleasure, light, medium, heavy, continuous> { }',
    doc: 'Duty class that the vessel is specified for, with its hours a year. Makers use other words too, `intermediate` among them.',
    example: 'duty medium { hours 1500 per year  passengers none }',
  },
  {
    word: 'hull',
    where: 'vessel',
    form: 'hull <planing, semi-displacement, displacement> { }',
    doc: 'Form and dimensions of the hull, for speed and resistance.',
    example: 'hull planing { waterline length 10.9 m  displacement 11.8 t }',
  },
  {
    word: 'certificate',
    where: 'vessel',
    form: 'certificate { }',
    doc: 'Limits that the certificate or licence of the vessel states.',
    example: 'certificate { power 420 kW }',
  },
  {
    word: 'helm',
    where: 'vessel',
    form: 'helm { }',
    doc: 'The control stations of the vessel and what each has: indication of thrust direction and gear oil, engine stop.',
    example: 'helm { station wheelhouse { thrust direction shown } }',
  },
  {
    word: 'arrangement',
    where: 'vessel',
    form: 'arrangement <name> <title in quotes> revises <arrangement before> { }',
    doc: 'Shaft lines as found or as proposed. An arrangement that revises nothing and is revised is as found; every other one is a proposal.',
    clauses: [
      [
        'revises <arrangement before>',
        'The repower: each part of the earlier arrangement is replaced, retained, modified or removed here.',
      ],
    ],
    example: 'arrangement existing "as found" { }\narrangement proposed revises existing { }',
  },
  {
    word: 'criteria',
    where: 'vessel',
    form: 'criteria { }',
    doc: 'The criteria and limits that the checks use, each with its factor and reason. A criterion that is not chosen has a default, which the sheet marks as such.',
    example: 'criteria { gear torque margin at least 10 %  tip speed at most 40 m/s }',
  },
  {
    word: 'require',
    where: 'vessel',
    form: 'require <what> at least <bound with its unit> at <condition> <note in quotes>',
    doc: 'A requirement of the owner, class or flag on a computed quantity. One that nothing verifies is a finding.',
    clauses: [
      ['at least <bound>', 'The bound; `at most` and `is` bound it too.'],
      ['at <condition>', 'Where the bound applies: full power, rated power, peak torque, idle ahead.'],
      [
        'in mode <mode>',
        'The mode that it is for, where the line has several; the first mode where none is named.',
      ],
      ['turn <outward or inward>', 'Behind `propellers`: the turning sense of a pair.'],
      ['<note in quotes>', 'Who requires it, or where it is written.'],
    ],
    example: 'require speed at least 22 kn at full power "owner\'s note 3"\nrequire propellers turn outward',
  },
  {
    word: 'assume',
    where: 'vessel',
    form: 'assume <what, and its value> because <reason in quotes>',
    doc: 'Overrides a default that the computation uses, with the reason.',
    clauses: [['because <reason in quotes>', 'The reason, in the words of whoever decided.']],
    example: 'assume gear efficiency 97 % because "rating note"',
  },
  {
    word: 'accept',
    where: 'vessel',
    form: 'accept <rule> on <arrangement, line or part> because <reason in quotes> by <role in quotes> dated <date> until <date>',
    doc: 'An accepted departure: the finding becomes accepted and stays visible. Without reason or role, before its date and after its last day it covers nothing; without a place or a last day it is a finding.',
    clauses: [
      [
        'on <subject>',
        'What is accepted: an arrangement, a line or a part of a line, as `proposed`, `proposed.Port`, `proposed.Port.shaft`.',
      ],
      ['because <reason in quotes>', 'The reason, in the words of whoever decided.'],
      ['by <role in quotes>', 'Who accepts, in which role.'],
      ['dated <date>', 'The date of the document, decision or change.'],
      ['until <date>', 'The last day on which the acceptance counts; after it the finding fails again.'],
    ],
    example:
      'accept shafting/span-guide on proposed because "whirling criterion holds" by "class surveyor" dated 2026-03-02 until 2027-03-01',
  },
  {
    word: 'project',
    where: 'vessel',
    form: 'project { }',
    doc: 'What the work is filed under: number, drawing, client, practice; with open questions and actions, each with its owner and last day.',
    example: 'project { project number "R-214"  client "harbour authority" }',
  },
  {
    word: 'revision',
    where: 'vessel',
    form: 'revision <letter> dated <date> <what changed, in quotes> { }',
    doc: 'An entry of the change record: its letter, its date and what changed; in braces who prepared, checked and approved it.',
    example: 'revision B dated 2026-03-02 "Gear ratio 2.04:1"',
  },
  {
    word: 'trial',
    where: 'vessel',
    form: 'trial <name in quotes> of <arrangement> dated <date> { }',
    doc: 'The sheet of a dock or sea trial: conditions, runs and readings in braces, compared with what the spec predicts and requires.',
    clauses: [
      ['of <arrangement>', 'The arrangement that was tried: the trial is compared with this one only.'],
    ],
    example: 'trial "sea trial" of proposed dated 2026-02-24 { bottom clean }',
  },
  {
    word: 'study',
    where: 'vessel',
    form: 'study <name> of <arrangement> { }',
    doc: 'A search for the best of many candidates for one arrangement: what varies, what must hold and what ranks, in braces. Every candidate is judged by all checks as if it were written there; `tailshaft study` lists the best and can write one.',
    clauses: [
      ['of <arrangement>', 'The arrangement whose parts are varied. A line that mirrors another follows it.'],
    ],
    example:
      'study wheel of proposed { vary propeller pitch 30 in .. 36 in by 1 in  rank by speed at full power }',
  },
] as const satisfies readonly Statement[];

const IN_ARRANGEMENT = [
  {
    word: 'shaftline',
    where: 'arrangement',
    form: 'shaftline <name> <title in quotes> mirrors <line of the other side> { }',
    doc: 'The parts from engine to propeller, in the order of the power flow.',
    clauses: [
      [
        'mirrors <line>',
        'Takes over the parts of another line. Handed facts (propeller hand, ahead clutch, pump index) are never mirrored: declare them here.',
      ],
    ],
    example: 'shaftline Port { }\nshaftline Starboard mirrors Port { }',
  },
  {
    word: 'remove',
    where: 'arrangement',
    form: 'remove shaftline <name>',
    doc: 'Removes a line of the earlier arrangement.',
    example: 'shaftline Port { }\nremove shaftline Starboard',
  },
  {
    word: 'reason',
    where: 'arrangement',
    form: 'reason for <same hand, inward turning or unequal ratios> <reason in quotes>',
    doc: 'Why the lines differ from what is usual: same hand, inward turning or unequal ratios.',
    clauses: [['for <subject>', 'What the reason is for: same hand, inward turning or unequal ratios.']],
    example: 'reason for inward turning "less wash alongside"',
  },
] as const satisfies readonly Statement[];

/** A part at its place: the name calls a catalogue entry, the braces hold what belongs to this place, or all facts. */
const PARTS = [
  part('engine', 'at <rating> ', 'The engine or its rating at this place.', 'engine { low idle 650 rpm }'),
  part('motor', '', 'The electric motor; it turns either way.', 'motor { power 40 kW at 1200 rpm }'),
  part('coupling', '', 'A coupling, damper or joint in the line.', 'coupling { mass 12 kg }'),
  part(
    'gear',
    'ratio <ratio> ahead clutch <clutch> ',
    'The reduction gear, with the ratio that is fitted and the clutch that drives ahead.',
    'gear { input speed at most 3000 rpm }',
  ),
  part(
    'transfer',
    'ratio <ratio> ',
    'A V-drive box, belt or chain stage between engine and shaft.',
    'transfer { turns the line back yes }',
  ),
  part(
    'shaft',
    '',
    'The propeller shaft: material, diameter, sections, bearings.',
    'shaft { diameter 50 mm }',
  ),
  part(
    'propeller',
    'hand <left or right> ',
    'The propeller: hand, blades, diameter, pitch, bore.',
    'propeller { hand right  blades 4  diameter 26 in  pitch 24 in }',
  ),
];

const IN_LINE = [
  {
    word: 'mode',
    where: 'line',
    form: 'mode <name> <title in quotes> { }',
    doc: 'A mode of running a line with several movers: which of them drive, and with how much power. Every mode is judged; sheet and comparison show the first, in which an engine drives through the whole line.',
    example:
      'engine Kittiwake-9 at medium\nmotor { power 40 kW at 1200 rpm }\nmode passage { driven by engine }\nmode harbour { driven by motor }',
  },
  {
    word: 'side',
    where: 'line',
    form: 'side <port, starboard or centre>',
    doc: 'Side of the vessel that the line is on, where its name does not show it.',
    example: 'side port',
  },
  {
    word: 'ahead',
    where: 'line',
    form: 'ahead clutch <clutch>',
    doc: 'The clutch that drives the vessel ahead.',
    clauses: [['clutch <clutch>', 'The clutch that is meant, by its letter in the catalogue entry.']],
    example: 'ahead clutch A',
  },
  {
    word: 'replace',
    where: 'line',
    form: 'replace <part> { }',
    doc: 'Another part is fitted in its place.',
    example: 'replace engine Kittiwake-9 at medium',
  },
  {
    word: 'retain',
    where: 'line',
    form: 'retain <part>',
    doc: 'The part stays as it is, under the new loads.',
    example: 'retain shaft',
  },
  {
    word: 'modify',
    where: 'line',
    form: 'modify <part> { <changed facts> }',
    doc: 'The part stays, with some of its facts changed; a block given again, such as `bearing strut { at 5.1 m }`, changes only the facts it names.',
    example: 'modify propeller { pitch 23 in }',
  },
  {
    word: 'remove',
    where: 'line',
    form: 'remove <part>',
    doc: 'The part is removed and not replaced.',
    example: 'remove coupling',
  },
] as const satisfies readonly Statement[];

const TABLE = [...COMMENTS, ...IN_FILE, ...IN_VESSEL, ...IN_ARRANGEMENT, ...IN_LINE] as const;

/** Every statement, in the order of completion and of the reference page. */
export const STATEMENTS: readonly Statement[] = [
  ...COMMENTS,
  IN_FILE[0],
  ...ENTRIES,
  IN_FILE[1],
  ...IN_VESSEL,
  ...IN_ARRANGEMENT,
  ...PARTS,
  ...IN_LINE,
];

/** A word that statements begin with or go on with. */
export type StatementWord =
  | (typeof TABLE)[number]['word']
  | FormWords<(typeof TABLE)[number]['form']>
  | Role
  | 'material'
  | 'ratio';

/** The single words of a form, without what is filled in. */
type FormWords<S extends string> = S extends `${infer A}<${string}>${infer B}`
  ? SplitWords<A> | FormWords<B>
  : SplitWords<S>;
type SplitWords<S extends string> = S extends `${infer A} ${infer B}`
  ? SplitWords<A> | SplitWords<B>
  : S extends '' | '{' | '}'
    ? never
    : S;

/** The statements of one place, in their order. */
export function statementsIn(where: Statement['where']): readonly Statement[] {
  return STATEMENTS.filter(one => one.where === where);
}

/** The words that statements of one place begin with, in their order. */
export function statementsOf(where: Statement['where']): readonly string[] {
  return statementsIn(where).map(one => one.word.split(' ')[0]!);
}

/** The statement of this place that begins with this word. */
export function statement(word: string, where?: Statement['where']): Statement | undefined {
  return STATEMENTS.find(one => one.word === word && (where === undefined || one.where === where));
}

/** The words and the places to fill in of a form, in their order; those of its block are left out. */
export function partsOf({ form }: Pick<Statement, 'form'>): readonly StatementPart[] {
  const said = form.replace(/\s*\{.*\}$/, '');
  return [...said.matchAll(/<([^>]*)>|[^<]+/g)].flatMap(([text, fill]): StatementPart[] => {
    if (fill !== undefined) return [{ fill }];
    return text.trim() ? [{ word: text.trim() }] : [];
  });
}

/** What a statement begins with, all its leading words: `reason for`, `remove shaftline`. */
export function leadOf(one: Statement): string {
  const [first] = partsOf(one);
  return first && 'word' in first ? first.word : one.word;
}

/** Whether a block may follow. */
export function opensBlock(one: Statement): boolean {
  return one.form.endsWith('}');
}

/** What the words of statements mean: those that begin them, and those that go on with them. */
export const STATEMENT_MEANINGS: Readonly<Record<string, string>> = Object.fromEntries(
  [...STATEMENTS]
    .reverse()
    .flatMap(one => [
      ...(one.clauses ?? []).flatMap(([form, meaning]) =>
        form.startsWith('<') ? [] : [[form.split(' <')[0]!, meaning] as const],
      ),
      [leadOf(one), one.doc] as const,
      [one.word, one.doc] as const,
    ]),
);

function entry(kind: string, doc: string, example: string): Statement {
  const form = `${kind} <name> <title in quotes> { }`;
  return { word: kind, where: 'file', form, doc: `A catalogue entry. ${doc}`, example };
}

function part(role: Role, header: string, doc: string, example: string): Statement {
  return { word: role, where: 'line', form: `${role} <name of its entry> ${header}{ }`, doc, example };
}
