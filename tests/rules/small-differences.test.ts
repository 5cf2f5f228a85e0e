import { RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { changed, SINGLE_LINE, TWIN_LINES } from '../../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from '../support/check.js';

type Changes = readonly (readonly [from: string, to: string])[];

const example = (id: string, kind: 'failing' | 'passing' = 'passing') =>
  RULES.find(rule => rule.id === id)!.examples()[kind];

/** What a rule says of a spec: outcomes and the beginnings that tell the cases apart. */
async function said(id: string, spec: string, changes: Changes) {
  const { check } = await checkText(changed(spec, ...changes));
  expect(check.problems.map(one => one.message)).toEqual([]);
  const verdicts = [...check.vessels, ...check.entries].flatMap(one => one.verdicts);
  return verdicts.filter(one => one.rule === id);
}

const PAPER: Changes = [
  ['passengers none }\n', 'passengers none }\n  certificate { power 600 kW }\n'],
  ['engine Kittiwake-9 at medium { flywheel aft }', 'engine Heron-4 at medium { flywheel aft }'],
];
const HERON = `engine Heron-4 {
  rotation standard viewed from flywheel
  rating medium { power 300 kW at 2300 rpm  measured at crankshaft }
}
`;

const STARTER = (rotation: string, engine: string, flywheel: string): Changes => [
  ['  rotation standard viewed from flywheel\n', `  rotation ${engine}\n`],
  ['  cylinders 6', `  accessory starter rotation ${rotation}\n  cylinders 6`],
  ['flywheel aft', `flywheel ${flywheel}`],
];

/** A coupling rated for so much, wherever it stands in the line. */
const COUPLING = (rating: string): Changes => [
  [
    'shaft material high-strength',
    `coupling Flex-4 { kind flexible  torque at most ${rating} N.m }\n\nshaft material high-strength`,
  ],
];
const FLEX = '      coupling Flex-4\n';
const BEFORE_GEAR: Changes = [['      gear Alder-63', `${FLEX}      gear Alder-63`]];
const BEHIND_GEAR: Changes = [['      shaft { material', `${FLEX}      shaft { material`]];
const WITHOUT_GEAR: Changes = [...BEHIND_GEAR, ['      gear Alder-63 ratio 2.04:1 ahead clutch B\n', '']];
const MOTOR_ALONE: Changes = [
  [
    'shaft material high-strength',
    'motor Eider-40 { rotation either  power 40 kW at 1500 rpm  torque 255 N.m  base speed 1500 rpm  top speed 2950 rpm }\n\nshaft material high-strength',
  ],
  ['      engine Kittiwake-9 at medium { flywheel aft }', '      motor Eider-40'],
  ...BEFORE_GEAR,
];

/** By the sheets alone: 300 kW at 2300 rpm and 1480 N·m; 0.155 kW/rpm are 0.155 · 60 000/2π = 1480.1 N·m. */
const CASES: readonly (readonly [
  what: string,
  rule: string,
  spec: string,
  changes: Changes,
  says: string,
])[] = [
  ['a certificate of the power of both engines', 'capacity/certificate', HERON + TWIN_LINES, PAPER, 'holds'],
  [
    'a certificate 1 kW below the power of both engines',
    'capacity/certificate',
    HERON + TWIN_LINES,
    [...PAPER, ['power 600 kW', 'power 599 kW']],
    'fails',
  ],
  [
    'a certificate where the power of one of two engines is not known',
    'capacity/certificate',
    HERON + TWIN_LINES,
    [...PAPER, ['{ power 300 kW at 2300 rpm  measured', '{ measured']],
    'cannot tell',
  ],
  ...(
    [
      ['2531 rpm', 'holds'],
      ['2530 rpm', 'holds'],
      ['2529 rpm', 'fails'],
    ] as const
  ).map(
    ([limit, says]) =>
      [
        `a gear input of at most ${limit} on an engine that is governed at 2530 rpm`,
        'speed/gear-input-maximum',
        SINGLE_LINE,
        [['input speed at most 3000 rpm', `input speed at most ${limit}`]],
        says,
      ] as const,
  ),
  ...(
    [
      ['0.1551', 'holds'],
      ['0.1549', 'fails'],
    ] as const
  ).map(
    ([rating, says]) =>
      [
        `a gear rating of ${rating} kW/rpm under 1480 N·m`,
        'capacity/gear-input-torque',
        SINGLE_LINE,
        [['rated medium 0.18 kW/rpm', `rated medium ${rating} kW/rpm`]],
        says,
      ] as const,
  ),
  ...(
    [
      // 1480 N·m of the engine, behind the gear times 2.043 and 0.97, the efficiency of a gear that states none; 255 of the motor.
      ['before the gear', BEFORE_GEAR, 1480],
      ['behind the gear', BEHIND_GEAR, 1480 * 2.043 * 0.97],
      ['behind the engine', WITHOUT_GEAR, 1480],
      ['before the gear', MOTOR_ALONE, 255],
    ] as const
  ).flatMap(([where, changes, torque]) =>
    [
      [torque * 1.002, `holds: Flex-4, ${where}`],
      [torque * 0.998, `fails: Flex-4, ${where}`],
    ].map(
      ([rating, says]) =>
        [
          `a coupling ${where} rated for ${Number(rating).toFixed(1)} N·m`,
          'capacity/coupling-torque',
          SINGLE_LINE,
          [...COUPLING(Number(rating).toFixed(1)), ...changes],
          says as string,
        ] as const,
    ),
  ),
  ...(
    [
      // Seen from aft, an engine with its flywheel aft is seen from its flywheel; with it forward, from its other end.
      ['counter-clockwise viewed from aft', 'standard viewed from flywheel', 'aft', 'holds'],
      ['counter-clockwise viewed from aft', 'standard viewed from flywheel', 'forward', 'fails'],
      ['clockwise viewed from aft', 'standard viewed from flywheel', 'aft', 'fails'],
      ['clockwise viewed from aft', 'standard viewed from flywheel', 'forward', 'holds'],
      ['standard viewed from flywheel', 'clockwise viewed from aft', 'forward', 'holds'],
      ['standard viewed from flywheel', 'clockwise viewed from aft', 'aft', 'fails'],
      ['counter-clockwise viewed from aft', 'standard viewed from flywheel', 'unknown', 'cannot tell'],
    ] as const
  ).map(
    ([rotation, engine, flywheel, says]) =>
      [
        `a starter ${rotation} on an engine ${engine}, flywheel ${flywheel}`,
        'rotation/accessory',
        SINGLE_LINE,
        STARTER(rotation, engine, flywheel),
        says,
      ] as const,
  ),
  ...(
    [
      // Bearings inside the boat run on grease or oil unless the spec says otherwise.
      ['thrust', 'nothing'],
      ['intermediate', 'nothing'],
      ['strut', 'cannot tell'],
      ['stern tube', 'cannot tell'],
      ['thrust\n          lubrication water', 'cannot tell'],
      ['thrust\n          lubrication oil', 'holds'],
    ] as const
  ).map(
    ([kind, says]) =>
      [
        `the water of a bearing of kind ${kind.replace(/\s+/, ' ')}`,
        'shafting/bearing-water of bearing tube',
        example('shafting/bearing-water'),
        [
          ['kind stern tube', `kind ${kind}`],
          ['          lubrication water\n          water from own engine\n', ''],
        ],
        says,
      ] as const,
  ),
  ...(
    [
      // The shaft idles at 650 rpm / 2.043 = 318 rpm; the stress asks for a bar from 410 to 510 rpm.
      ['650', '410 .. 510', 'holds'],
      ['650', '319 .. 510', 'holds'],
      ['650', '318 .. 510', 'fails: includes idle, 318 rpm'],
      ['650', '250 .. 510', 'fails: includes idle, 318 rpm'],
      ['860', '410 .. 510', 'fails: includes idle, 421 rpm'],
      ['860', '', 'fails: They include idle, 421 rpm'],
      ['650', '', 'fails: They lie in the running range'],
    ] as const
  ).map(
    ([idle, range, says]) =>
      [
        `${range === '' ? 'no' : range} barred range and low idle at ${idle} rpm`,
        'interface/barred-range',
        example('interface/barred-range'),
        [
          ['low idle 650 rpm', `low idle ${idle} rpm`],
          ['barred range 410 .. 510 rpm', range === '' ? '' : `barred range ${range} rpm`],
        ],
        says,
      ] as const,
  ),
];

describe('a small difference decides', () => {
  it.each(CASES)('%s', async (_, rule, spec, changes, says) => {
    const [id, of] = rule.split(' of ');
    const [outcome, words = ''] = says.split(': ');
    const found = await said(id!, spec, changes);
    const one = of ? found.find(verdict => verdict.message.includes(of)) : found[0];
    expect(one?.outcome ?? 'nothing', one?.message ?? '').toBe(outcome);
    expect(one?.message ?? '').toContain(words);
  });

  it('no way out bars a range that holds idle', async () => {
    const bare: Changes = [['barred range 410 .. 510 rpm', '']];
    const titles = async (more: Changes) =>
      (await said('interface/barred-range', example('interface/barred-range'), [...bare, ...more])).flatMap(
        one => one.routes().map(route => route.title),
      );
    expect((await titles([])).filter(one => one.startsWith('Bar '))).toHaveLength(1);
    expect(
      (await titles([['low idle 650 rpm', 'low idle 860 rpm']])).filter(one => one.startsWith('Bar ')),
    ).toEqual([]);
  });
});
