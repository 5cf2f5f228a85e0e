/** One commit of the test repository: what it edits, and what its comparison must begin and end with. */
export interface ReviewCommit {
  readonly about: string;
  /** File, words, and what stands in their place; every place of the words. */
  readonly edits: readonly (readonly [file: string, from: string | RegExp, to: string])[];
  readonly headline: string;
  readonly status: number;
}

const TERNHAVEN = 'pilot-cutter/ternhaven.shaft';
const BRACKLE = 'ferry/brackle.shaft';
const SKERROWBY = 'service-vessel/skerrowby.shaft';
const QUICKGRASS = 'sport-boat/quickgrass.shaft';
const WADEBECK = 'survey-tender/wadebeck.shaft';
const SALTMARSH = 'workboat/saltmarsh.shaft';
const REEDMOUTH = 'motor-launch/reedmouth.shaft';
const FENNICK = 'launch/fennick.shaft';
const MARRAM = 'barge/marram.shaft';
const OLLERSEA = 'patrol/ollersea.shaft';
const PRACTICE = 'practice.shaft';
const ENGINES = 'catalogue/engines.shaft';
const GEARS = 'catalogue/gears.shaft';

/** What a reviewer must not pass. */
export const DANGEROUS: readonly ReviewCommit[] = [
  {
    about: 'the hand of one propeller',
    edits: [[TERNHAVEN, 'propeller hand right', 'propeller hand left']],
    headline: '1 vessel touched, 1 worse; worst: Ternhaven would go astern.',
    status: 1,
  },
  {
    about: 'a vessel renamed, with a thinner shaft, a coarser pitch and more hours',
    edits: [
      [QUICKGRASS, 'vessel Quickgrass', 'vessel Quickgrass-II'],
      [QUICKGRASS, 'diameter 1 1/8 in', 'diameter 7/8 in'],
      [QUICKGRASS, 'pitch 18.5 in', 'pitch 20.5 in'],
      [QUICKGRASS, 'hours 120', 'hours 900'],
    ],
    headline:
      '1 vessel touched, 1 worse; worst: Quickgrass-II built.Centre: diameter newly fails, holds with 16 % margin before, fails, short by 45 % now.',
    status: 1,
  },
  {
    about: 'a brace that is not closed',
    edits: [
      [
        SALTMARSH,
        'wake fraction 0.2\n    thrust deduction 0.17\n  }',
        'wake fraction 0.2\n    thrust deduction 0.17\n',
      ],
    ],
    headline: '1 text could not be read whole; 0 vessels touched.',
    status: 2,
  },
  {
    about: 'an acceptance by anybody until 2099',
    edits: [
      [REEDMOUTH, 'until 2035-12-31', 'until 2099-12-31'],
      [REEDMOUTH, 'naval architect of the owner', 'anybody'],
    ],
    headline: '1 vessel touched, 1 worse; worst: Reedmouth: acceptance newly fails, holds before, fails now.',
    status: 1,
  },
  {
    about: 'an acceptance prolonged',
    edits: [[REEDMOUTH, 'until 2035-12-31', 'until 2036-12-31']],
    headline:
      '1 vessel touched, 1 worse; worst: Reedmouth, acceptance weakened (prolonged): interface/weight-change on proposed.',
    status: 4,
  },
  {
    about: 'an acceptance of the whole arrangement',
    edits: [[OLLERSEA, 'on proposed.Port ', 'on proposed ']],
    headline:
      '1 vessel touched, 1 worse; worst: Ollersea, acceptance weakened (widened): shafting/diameter on proposed.',
    status: 4,
  },
  {
    about: 'two inches of pitch, the load never told',
    edits: [[FENNICK, 'pitch 24 in', 'pitch 26 in']],
    headline:
      '1 vessel touched, 1 worse; worst: Fennick, propeller modified: pitch 24 in → 26 in, with consequences not assessed before or now.',
    status: 7,
  },
  {
    about: 'a part said to be retained, with another diameter',
    edits: [[REEDMOUTH, 'retain propeller', 'retain propeller { diameter 21 in }']],
    headline:
      '1 vessel touched, 1 worse; worst: Reedmouth proposed.Centre: retained propeller overload newly fails, holds with 18 % margin before, fails, short by 37 % now.',
    status: 1,
  },
  {
    about: 'the rotation of an engine in the catalogue',
    edits: [[ENGINES, /(engine Kittiwake-9 [^}]*?rotation) standard/, '$1 opposite']],
    headline: '1 vessel touched, 1 worse; worst: Ternhaven would go astern.',
    status: 1,
  },
  {
    about: 'a rating in the catalogue',
    edits: [[GEARS, /(gear Hazel-40 [\s\S]*?rated continuous) [\d.]+ /, '$1 0.03 ']],
    headline:
      '2 vessels touched, 2 worse; worst: Saltmarsh built.Centre: gear input torque newly fails, holds with 21 % margin before, fails, short by 30 % now.',
    status: 1,
  },
  {
    about: 'a criterion that asks for less',
    edits: [[SALTMARSH, 'gear torque margin at least 15 %', 'gear torque margin at least 5 %']],
    headline:
      '1 vessel touched, 1 worse; worst: Saltmarsh, criterion: gear torque margin at least 15 % → gear torque margin at least 5 %.',
    status: 5,
  },
  {
    about: 'a requirement that asks for less',
    edits: [[SKERROWBY, 'bollard thrust at least 28 kN', 'bollard thrust at least 20 kN']],
    headline:
      '1 vessel touched, 1 worse; worst: Skerrowby, requirement: bollard thrust at least 28 kN "owner\'s requirement 4: short tows" → bollard thrust at least 20 kN "owner\'s requirement 4: short tows".',
    status: 5,
  },
  {
    about: 'a datum taken out',
    edits: [[BRACKLE, /\n {4}displacement 104 t.*/, '']],
    headline:
      '1 vessel touched, 1 worse; worst: Brackle built.Port: thrust bearing life newly fails, holds with 218 % margin before, fails, short by 69 % now.',
    status: 1,
  },
  {
    about: 'a failure accepted in the same commit',
    edits: [
      [MARRAM, 'diameter 65 mm [drawing]', 'diameter 40 mm [drawing]'],
      [
        MARRAM,
        '  arrangement proposed',
        '  accept shafting/diameter on Centre because "short runs" by "owner" dated 2026-02-01 until 2027-01-01\n  arrangement proposed',
      ],
    ],
    headline:
      '1 vessel touched, 1 worse; worst: Marram proposed.Centre: diameter newly accepted, holds with 111 % margin before, accepted, short by 51 % now.',
    status: 3,
  },
  {
    about: 'a vessel added that fails',
    edits: [['patrol/new.shaft', '', 'wrong hand']],
    headline: '1 vessel touched, 1 worse; worst: Newfield, added: 1 check fails.',
    status: 1,
  },
  {
    about: 'a shaft that loses most of its margin',
    edits: [[SALTMARSH, 'diameter 50 mm', 'diameter 45 mm']],
    headline:
      '1 vessel touched, 1 worse; worst: Saltmarsh built.Centre: diameter margin smaller, holds with 39 % margin before, holds with 1.1 % margin now.',
    status: 6,
  },
  {
    about: 'a number that kept and a unit that changed',
    edits: [[OLLERSEA, /pitch 24 in/g, 'pitch 24 cm']],
    headline:
      '1 vessel touched, 1 worse; worst: Ollersea, propeller, pitch: 24 in → 24 cm: the number stayed and the unit did not. Ask which of the two was meant.',
    status: 7,
  },
  {
    about: 'a practice whose acceptances last longer',
    edits: [[PRACTICE, 'at most 2 year', 'at most 12 year']],
    headline:
      '1 vessel touched, 1 worse; worst: Marram, practice Harbour-Office: acceptances last at most 2 year → acceptances last at most 12 year.',
    status: 4,
  },
  {
    about: 'a practice in which more may accept',
    edits: [[PRACTICE, 'flag surveyor"', 'flag surveyor, owner"']],
    headline:
      '1 vessel touched, 1 worse; worst: Marram, practice Harbour-Office: acceptances of "rotation/" class surveyor, flag surveyor → acceptances of "rotation/" class surveyor, flag surveyor, owner.',
    status: 4,
  },
  {
    about: 'a practice that takes a failure lighter',
    edits: [[PRACTICE, /\n {2}gravity.*/, '']],
    headline:
      '1 vessel touched, 1 worse; worst: Marram, practice Harbour-Office: gravity of "speed/tip-speed" error → not said.',
    status: 5,
  },
  {
    about: 'a vessel that leaves its practice',
    edits: [[MARRAM, 'import "../practice"\n', '']],
    headline:
      '1 vessel touched, 1 worse; worst: Marram, practice: judged by Harbour-Office → judged by none.',
    status: 5,
  },
  {
    about: 'a criterion weaker than the default',
    edits: [
      [TERNHAVEN, 'tip clearance at least 15 %', 'tip clearance at least 15 %\n    overhang at most 9'],
    ],
    headline:
      '1 vessel touched, 1 worse; worst: Ternhaven proposed.Port: overhang margin larger, holds with 3.9 % margin before, holds with 835 % margin now.',
    status: 5,
  },
  {
    about: 'a requirement turned round with the clutches and propellers that break it',
    edits: [
      [TERNHAVEN, 'turn outward', 'turn inward'],
      [TERNHAVEN, 'revises existing {', 'revises existing {\n    reason for inward turning "less wash"'],
      [TERNHAVEN, 'ratio 2.04:1 ahead clutch A', 'ratio 2.04:1 ahead clutch B'],
      [TERNHAVEN, 'gear ahead clutch B { pump', 'gear ahead clutch A { pump'],
      [TERNHAVEN, /(replace propeller \{\s+hand) left/, '$1 right'],
      [TERNHAVEN, '      propeller hand right', '      propeller hand left'],
    ],
    headline:
      '1 vessel touched, 1 worse; worst: Ternhaven, requirement: propellers turn outward → propellers turn inward.',
    status: 5,
  },
  {
    about: 'an acceptance dated anew',
    edits: [[REEDMOUTH, 'dated 2026-02-18 until', 'dated 2026-02-25 until']],
    headline:
      '1 vessel touched, 1 worse; worst: Reedmouth, acceptance weakened (dated anew): interface/weight-change on proposed.',
    status: 4,
  },
  {
    about: 'a vessel taken out',
    edits: [[WADEBECK, '', 'taken out']],
    headline: '1 vessel touched, 1 worse; worst: Wadebeck, taken out: none of its checks is judged any more.',
    status: 7,
  },
  {
    about: 'a trial run taken out',
    edits: [[SALTMARSH, /\n {4}run Centre {2}at full throttle \{[\s\S]*?\n {4}\}/, '']],
    headline:
      '1 vessel touched, 1 worse; worst: Saltmarsh built.Centre: full throttle no longer judged, holds before, not judged now.',
    status: 7,
  },
  {
    about: 'the marks of a merge left in a catalogue',
    edits: [[GEARS, '/// Two full-size', '<<<<<<< HEAD\n/// Two full-size']],
    headline: '8 texts could not be read whole; 0 vessels touched.',
    status: 2,
  },
  {
    about: 'both sides of a merge kept, one shaft behind the other',
    edits: [[SALTMARSH, /(\n {6}shaft \{.*\})/, '$1$1']],
    headline:
      '1 vessel touched, 1 worse; worst: Saltmarsh, shaft 2 added: material nitrogen-stainless, diameter 50 mm, with consequences not assessed before or now.',
    status: 7,
  },
  {
    about: 'a shaft of a poorer bar under a new name',
    edits: [
      [
        'catalogue/materials.shaft',
        'shaft material austenitic-stainless',
        'shaft material soft-bar {\n  torsional yield 12000 psi\n  elastic modulus 28000000 psi\n  density 0.286 lb/in3\n}\nshaft material austenitic-stainless',
      ],
      [SALTMARSH, 'material nitrogen-stainless', 'material soft-bar'],
    ],
    headline:
      '1 vessel touched, 1 worse; worst: Saltmarsh built.Centre: diameter newly fails, holds with 39 % margin before, fails, short by 76 % now.',
    status: 1,
  },
  {
    about: 'a lighter duty',
    edits: [[SALTMARSH, /duty (\w+)/, 'duty pleasure']],
    headline: '1 vessel touched, 1 worse; worst: Saltmarsh, duty: class continuous → class pleasure.',
    status: 5,
  },
  {
    about: 'a clearance whose unit became another',
    edits: [[TERNHAVEN, 'rudder clearance 115 mm', 'rudder clearance 115 cm']],
    headline:
      '1 vessel touched, 1 worse; worst: Ternhaven, propeller, rudder clearance: 115 mm → 115 cm: the number stayed and the unit did not. Ask which of the two was meant.',
    status: 7,
  },
  {
    about: 'an assumption under which more holds',
    edits: [
      [
        MARRAM,
        '  arrangement proposed',
        '  assume gear efficiency 80 % because "as told"\n  arrangement proposed',
      ],
    ],
    headline:
      '1 vessel touched, 1 worse; worst: Marram, assumption added: gear efficiency 80 % because "as told".',
    status: 5,
  },
  {
    about: 'a vessel under another name, thinner, and an empty one under its own',
    edits: [
      [SALTMARSH, 'diameter 50 mm', 'diameter 42 mm'],
      [SALTMARSH, 'vessel Saltmarsh', 'vessel Heron'],
      [SALTMARSH, /$/, '\nvessel Saltmarsh { }\n'],
    ],
    headline: '2 vessels touched, 2 worse; worst: Heron, added: 1 check fails.',
    status: 1,
  },
];

/** What needs no word. */
export const HARMLESS: readonly ReviewCommit[] = [
  { about: 'comments', edits: [[BRACKLE, /$/gm, ' // read']], headline: 'No change in meaning.', status: 0 },
  { about: 'layout', edits: [[SKERROWBY, /\n/g, '\n\n  ']], headline: 'No change in meaning.', status: 0 },
  { about: 'line ends', edits: [[TERNHAVEN, /\n/g, '\r\n']], headline: 'No change in meaning.', status: 0 },
  {
    about: 'the order of facts',
    edits: [[QUICKGRASS, 'blades 3\n        diameter 14 in', 'diameter 14 in\n        blades 3']],
    headline: 'No change in meaning.',
    status: 0,
  },
  {
    about: 'an equal value in another unit',
    edits: [[BRACKLE, 'diameter 1250 mm', 'diameter 1.25 m']],
    headline: '1 vessel touched, none worse.',
    status: 0,
  },
  {
    about: 'a vessel renamed',
    edits: [[BRACKLE, 'vessel Brackle', 'vessel Brackle-II']],
    headline: '1 vessel touched, none worse.',
    status: 0,
  },
  {
    about: 'an arrangement renamed',
    edits: [[TERNHAVEN, /\bexisting\b/g, 'asfound']],
    headline: '1 vessel touched, none worse.',
    status: 0,
  },
  {
    about: 'two vessels that exchange their names',
    edits: [
      [REEDMOUTH, 'vessel Reedmouth', 'vessel Quickgrass'],
      [QUICKGRASS, 'vessel Quickgrass', 'vessel Reedmouth'],
    ],
    headline: '2 vessels touched, none worse.',
    status: 0,
  },
  {
    about: 'a line renamed that was run in a trial',
    edits: [[SALTMARSH, /\bCentre\b/g, 'Main']],
    headline: '1 vessel touched, none worse.',
    status: 0,
  },
  {
    about: 'a shaft line renamed',
    edits: [[WADEBECK, 'shaftline Centre', 'shaftline Main']],
    headline: '1 vessel touched, none worse.',
    status: 0,
  },
  {
    about: 'a catalogue entry renamed, with all who name it',
    edits: [
      [GEARS, 'Hazel-40', 'Hazel-41'],
      [SALTMARSH, 'Hazel-40', 'Hazel-41'],
      [WADEBECK, 'Hazel-40', 'Hazel-41'],
    ],
    headline: '1 catalogue entry changed, no vessel touched.',
    status: 0,
  },
  {
    about: 'a vessel moved to another file',
    edits: [[MARRAM, '', 'moved']],
    headline: 'No change in meaning.',
    status: 0,
  },
  {
    about: 'a thicker shaft',
    edits: [[SALTMARSH, 'diameter 50 mm', 'diameter 55 mm']],
    headline: '1 vessel touched, none worse.',
    status: 0,
  },
  {
    about: 'a revision entered',
    edits: [[BRACKLE, 'revision A', 'revision B dated 2026-02-27 "Tender answered"\n  revision A']],
    headline: '1 vessel touched, none worse.',
    status: 0,
  },
  {
    about: 'a vessel added that holds',
    edits: [['patrol/new.shaft', '', 'right hand']],
    headline: '1 vessel touched, none worse.',
    status: 0,
  },
  {
    about: 'a tighter criterion',
    edits: [[SALTMARSH, 'gear torque margin at least 15 %', 'gear torque margin at least 16 %']],
    headline: '1 vessel touched, none worse.',
    status: 0,
  },
  {
    about: 'a measured figure under its old evidence',
    edits: [[REEDMOUTH, 'length 2.2 m [measured 2026-01-20]', 'length 2.21 m [measured 2026-01-20]']],
    headline: '1 vessel touched, none worse.',
    status: 0,
  },
  {
    about: 'a requirement beside another, that asks for less',
    edits: [
      [SALTMARSH, '  require bollard', '  require bollard thrust at least 2 kN "tows"\n  require bollard'],
    ],
    headline: '1 vessel touched, none worse.',
    status: 0,
  },
  {
    about: 'a practice that asks for more',
    edits: [
      [PRACTICE, 'at most 2 year', 'at most 1 year'],
      [PRACTICE, 'class surveyor, flag surveyor', 'class surveyor'],
    ],
    headline: '1 vessel touched, none worse.',
    status: 0,
  },
];
