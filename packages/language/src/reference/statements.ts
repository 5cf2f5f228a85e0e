/** A statement of the language as the reference prints it. */
export interface StatementRow {
  readonly words: string;
  /** Where it may stand. */
  readonly stands: 'in a file' | 'in a vessel' | 'in an arrangement' | 'in a shaft line' | 'anywhere';
  readonly form: string;
  readonly doc: string;
  /** What may follow it, each with its meaning. */
  readonly clauses?: readonly (readonly [form: string, meaning: string])[];
  /** Lines that read as they stand, inside what the statement stands in. */
  readonly example: string;
}

/** Every statement, in the order in which a reader of specs meets them. */
export const STATEMENTS: readonly StatementRow[] = [
  {
    words: '//, /* */',
    stands: 'anywhere',
    form: '// text',
    doc: 'A comment to the end of the line, or between `/*` and `*/`. No check reads it.',
    example: '// measured with the shaft drawn',
  },
  {
    words: '///',
    stands: 'anywhere',
    form: '/// text',
    doc: 'A remark on the vessel, arrangement, line or part below it: hovers show it.',
    example: '/// Built 1988; engines and gears as found.',
  },
  {
    words: 'import',
    stands: 'in a file',
    form: 'import "path"',
    doc: 'Takes in the catalogue entries of a file, or of every spec in a folder, relative to this file. Imports stand first. The extension `.shaft` may be left out.',
    example: 'import "../catalogue"',
  },
  {
    words: 'engine, motor, gear, transfer, coupling, shaft material, propeller',
    stands: 'in a file',
    form: 'engine Name "title" { properties }',
    doc: 'A catalogue entry: what a part is, wherever it is fitted. Shaft lines call it by its name.',
    example: 'shaft material marine-bar "stainless bar" { torsional yield 70000 psi }',
  },
  {
    words: 'vessel',
    stands: 'in a file',
    form: 'vessel Name "title" { statements }',
    doc: 'A vessel with its duty, hull, arrangements, criteria, requirements, acceptances and trials.',
    example: 'vessel Ternhaven "harbour pilot cutter" { }',
  },
  {
    words: 'duty',
    stands: 'in a vessel',
    form: 'duty class { properties }',
    doc: 'Duty class of the vessel: pleasure, light, medium (or intermediate), heavy, continuous.',
    example: 'duty medium { hours 1500 per year  passengers none }',
  },
  {
    words: 'hull',
    stands: 'in a vessel',
    form: 'hull form { properties }',
    doc: 'Form and dimensions of the hull: planing, semi-displacement or displacement.',
    example: 'hull planing { waterline length 10.9 m }',
  },
  {
    words: 'certificate',
    stands: 'in a vessel',
    form: 'certificate { properties }',
    doc: 'Limits that the certificate or licence of the vessel states.',
    example: 'certificate { power 420 kW }',
  },
  {
    words: 'criteria',
    stands: 'in a vessel',
    form: 'criteria { properties }',
    doc: 'The criteria and limits that checks use. What is not chosen has a default, which the sheet marks as such.',
    example: 'criteria { gear torque margin at least 10 %  tip speed at most 40 m/s }',
  },
  {
    words: 'arrangement',
    stands: 'in a vessel',
    form: 'arrangement name "title" revises other { shaft lines }',
    doc: 'Shaft lines as found or as proposed. An arrangement that revises nothing and is revised is as found; every other one is a proposal.',
    clauses: [
      [
        'revises name',
        'The arrangement that this one changes. Each of its parts is replaced, retained, modified or removed.',
      ],
    ],
    example: 'arrangement existing "as found" { }\narrangement proposed revises existing { }',
  },
  {
    words: 'require',
    stands: 'in a vessel',
    form: 'require quantity at least value at condition "note"',
    doc: 'A requirement of the owner, class or flag on a computed quantity.',
    clauses: [
      ['at least, at most, is', 'The bound.'],
      ['at condition', 'Where the bound applies: full power, rated power, peak torque, idle ahead.'],
      ['propellers turn outward', 'A requirement on the turning sense of a pair: outward or inward.'],
      ['"note"', 'Who requires it, or where it is written.'],
    ],
    example: 'require speed at least 22 kn at full power "owner\'s note 3"\nrequire propellers turn outward',
  },
  {
    words: 'accept',
    stands: 'in a vessel',
    form: 'accept rule on subject because "reason" by "role" dated date until date',
    doc: 'An accepted departure: the finding becomes accepted and stays visible. Without reason, role and dates it covers nothing.',
    clauses: [
      [
        'on subject',
        'An arrangement, a line or a part of a line: `proposed`, `proposed.Port`, `proposed.Port.shaft`.',
      ],
      ['because "reason"', 'Why the departure is acceptable.'],
      ['by "role"', 'Who accepts it.'],
      ['dated date', 'When it was accepted.'],
      ['until date', 'The last day on which it counts.'],
    ],
    example:
      'accept shafting/span-guide on proposed because "whirling criterion holds" by "class surveyor" dated 2026-03-02 until 2027-03-01',
  },
  {
    words: 'assume',
    stands: 'in a vessel',
    form: 'assume quantity value because "reason"',
    doc: 'Overrides a default that the computation uses.',
    clauses: [['because "reason"', 'Where the figure comes from.']],
    example: 'assume gear efficiency 97 % because "rating note"',
  },
  {
    words: 'trial',
    stands: 'in a vessel',
    form: 'trial "name" dated date { properties and runs }',
    doc: 'The sheet of a dock or sea trial: conditions, runs and readings, compared with prediction and requirements.',
    example: 'trial "sea trial" dated 2026-02-24 { bottom clean }',
  },
  {
    words: 'revision',
    stands: 'in a vessel',
    form: 'revision letter dated date "what changed"',
    doc: 'An entry of the change record.',
    example: 'revision B dated 2026-03-02 "Gear ratio 2.04:1"',
  },
  {
    words: 'shaftline',
    stands: 'in an arrangement',
    form: 'shaftline Name "title" mirrors Other { parts }',
    doc: 'The parts from engine to propeller, in the order of the power flow.',
    clauses: [
      [
        'mirrors Name',
        'Takes over the parts of another line. Handed facts are never mirrored: declare them here.',
      ],
      ['side port', 'Side of the vessel where the name does not tell: port, starboard or centre.'],
    ],
    example: 'shaftline Port { }\nshaftline Starboard mirrors Port { }',
  },
  {
    words: 'reason for',
    stands: 'in an arrangement',
    form: 'reason for subject "reason"',
    doc: 'Why the lines differ from what is usual: same hand, inward turning or unequal ratios.',
    example: 'reason for inward turning "less wash alongside"',
  },
  {
    words: 'engine, motor, coupling, gear, transfer, shaft, propeller',
    stands: 'in a shaft line',
    form: 'gear Name at class ratio 2.04:1 ahead clutch A { properties }',
    doc: 'A part at its place. The name calls a catalogue entry; the braces hold what belongs to this place, or all facts where there is no entry.',
    clauses: [
      ['at class', 'The rating of the engine or gear that is used.'],
      ['ratio 2.04:1', 'The ratio that is fitted, by its nominal name.'],
      ['ahead clutch A', 'The clutch that is engaged for ahead.'],
      ['hand right', 'Hand of the propeller, seen from aft.'],
    ],
    example: 'propeller { hand right  blades 4  diameter 26 in  pitch 24 in }',
  },
  {
    words: 'replace, retain, modify, remove',
    stands: 'in a shaft line',
    form: 'replace gear Name ratio 2.04:1 { properties }',
    doc: 'What happens to a part of the arrangement that is revised: another takes its place, it stays, it stays with some facts changed, or it is taken out.',
    example: 'retain propeller',
  },
];
