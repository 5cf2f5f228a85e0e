import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { changed, verdictsBy } from '../silence/top-list/spec-of.js';
import { checkText } from '../support/check.js';

const of = async (spec: string, rule: string) => (await verdictsBy(spec, rule))[0]!;
const ENGINE = '      engine Kittiwake-9 at medium { flywheel aft }\n';
const input = (name: string, output: string, rated: string) =>
  `    input shaft ${name} {\n      clutch A output ${output} ahead continuous\n      rated medium ${rated}\n    }\n`;

/** Two engines on the two inputs of one gear, used singly and together. */
const TWIN = changed(
  SINGLE_LINE,
  [
    '  ratio 2.04:1 exact 2.043:1 {\n    clutch A output same ahead continuous\n    clutch B output opposite ahead continuous\n    rated medium 0.18 kW/rpm\n',
    `  ratio 2.04:1 exact 2.043:1 {\n${input('first', 'opposite', '0.18 kW/rpm')}${input('second', 'opposite', '0.17 kW/rpm')}`,
  ],
  [ENGINE, `${ENGINE}${ENGINE}`],
  ['diameter 65 mm', 'diameter 90 mm'],
  [
    'ahead clutch B\n',
    'ahead clutch A\n      mode slow { driven by first engine }\n      mode full { driven by both engines }\n',
  ],
);
const ALL = [
  'rotation/propeller-hand',
  'rotation/movers-agree',
  'rotation/input-accepted',
  'rotation/clutch-permission',
  'capacity/gear-input-torque',
  'speed/gear-input-maximum',
  'shafting/diameter',
];
const LOAD_PATH = ['rotation/propeller-hand', 'capacity/gear-input-torque', 'shafting/diameter'];

describe('a gear with two input shafts', () => {
  it('carries both engines to the shaft, and what one of them gives by each input', async () => {
    expect(await Promise.all(ALL.map(async rule => (await of(TWIN, rule)).outcome))).toEqual(
      ALL.map(() => 'holds'),
    );
    // By hand: 2 × 300 kW × 0.97 at 2300 rpm / 2.043, and peak torque 1480 N·m against 0.17 kW/rpm = 9549.3 × 0.17 N·m.
    const shaft = await of(TWIN, 'shafting/diameter');
    expect((shaft.demand!.si * Math.PI) / 30 / 1000).toBeCloseTo((2 * 300 * 0.97) / (2300 / 2.043), 6);
    const gear = await of(TWIN, 'capacity/gear-input-torque');
    expect(gear.demand!.si).toBeCloseTo(1480, 6);
    expect(gear.capacity!.si).toBeCloseTo(0.17 * 9549.2966, 2);
  });

  it.each<[string, string, readonly [string, string][]]>([
    [
      'the torque by the second input',
      'capacity/gear-input-torque',
      [['rated medium 0.17 kW/rpm', 'rated medium 0.14 kW/rpm']],
    ],
    [
      'the rotation that the second input accepts',
      'rotation/input-accepted',
      [['input shaft second {', 'input shaft second {\n      rotation opposite viewed from flywheel']],
    ],
    [
      'the speed of the second input',
      'speed/gear-input-maximum',
      [['input shaft second {', 'input shaft second {\n      speed at most 2400 rpm']],
    ],
    [
      'the way in which the second input turns the shaft',
      'rotation/movers-agree',
      [[input('second', 'opposite', '0.17 kW/rpm'), input('second', 'same', '0.17 kW/rpm')]],
    ],
    [
      'a clutch of the second input that may not run ahead',
      'rotation/ahead-clutch',
      [
        [
          input('second', 'opposite', '0.17 kW/rpm'),
          input('second', 'opposite', '0.17 kW/rpm').replace('ahead continuous', 'ahead never'),
        ],
      ],
    ],
  ])('fails by %s', async (_, rule, edits) => {
    expect((await of(changed(TWIN, ...edits), rule)).outcome).toBe('fails');
  });

  it.each<[string, readonly string[], readonly [string, string][]]>([
    [
      'the rating of the second input',
      ['capacity/gear-input-torque'],
      [['      rated medium 0.17 kW/rpm\n', '']],
    ],
    [
      'the output sense of the second input',
      ['rotation/movers-agree'],
      [[input('second', 'opposite', '0.17 kW/rpm'), input('second', 'unknown', '0.17 kW/rpm')]],
    ],
    ['the second input', LOAD_PATH, [[input('second', 'opposite', '0.17 kW/rpm'), '']]],
    [
      'one ratio for both inputs',
      ['shafting/diameter'],
      [['input shaft second {', 'input shaft second {\n      exact 2.1:1']],
    ],
    [
      'which engine a motor ahead of the gear sits on',
      LOAD_PATH,
      [[`${ENGINE}${ENGINE}`, `${ENGINE}${ENGINE}      motor { power 20 kW at 1500 rpm }\n`]],
    ],
  ])('cannot tell without %s', async (_, rules, edits) => {
    const spec = changed(TWIN, ...edits);
    for (const rule of rules) expect([rule, (await of(spec, rule)).outcome]).toEqual([rule, 'cannot tell']);
  });

  it('lets engines of opposite rotation drive one shaft by inputs of opposite sense', async () => {
    const opposite = changed(
      TWIN,
      [
        `${ENGINE}${ENGINE}`,
        `${ENGINE}${ENGINE.replace('aft }', 'aft  rotation opposite viewed from flywheel }')}`,
      ],
      [
        input('second', 'opposite', '0.17 kW/rpm'),
        input('second', 'same', '0.17 kW/rpm').replace(
          '{\n',
          '{\n      rotation opposite viewed from flywheel\n',
        ),
      ],
    );
    // They are not of one entry at one rating any more only by their rotation, which torque does not ask for.
    for (const rule of ['rotation/movers-agree', 'rotation/input-accepted', 'rotation/propeller-hand'])
      expect([rule, (await of(opposite, rule)).outcome]).toEqual([rule, 'holds']);
  });

  it('loads the coupling of each engine with that engine alone', async () => {
    const coupled = `coupling Damp-2 { source "Damp 2 sheet" dated 2025-01-01  kind flexible  torque at most 1600 N.m }\n${changed(
      TWIN,
      [`${ENGINE}${ENGINE}`, `${ENGINE}      coupling Damp-2\n${ENGINE}      coupling Damp-2\n`],
    )}`;
    const found = await verdictsBy(coupled, 'capacity/coupling-torque');
    expect(found.map(one => [one.outcome, one.demand?.si])).toEqual([
      ['holds', 1480],
      ['holds', 1480],
    ]);
  });
});

describe('what a mode says of clutch and take-off', () => {
  it('drives ahead in the clutch of the mode', async () => {
    const spec = changed(SINGLE_LINE, [
      'ahead clutch B\n',
      'ahead clutch B\n      mode sea { driven by engine }\n      mode dock { driven by engine  ahead clutch A }\n',
    ]);
    const hand = await of(spec, 'rotation/propeller-hand');
    expect([hand.outcome, hand.message.startsWith('Centre, dock:')]).toEqual(['fails', true]);
    const open = changed(spec, ['ahead clutch A }', 'ahead clutch unknown }']);
    expect((await of(open, 'rotation/propeller-hand')).outcome).toBe('cannot tell');
    const first = changed(
      spec,
      ['mode sea { driven by engine }', 'mode sea { driven by engine  ahead clutch A }'],
      [
        'driven by engine  ahead clutch A }\n      mode dock { driven by engine  ahead clutch A }',
        'driven by engine  ahead clutch A }\n      mode dock { driven by engine }',
      ],
    );
    expect((await of(first, 'rotation/propeller-hand')).message.startsWith('Centre, sea:')).toBe(true);
  });

  it('says whether the take-off counts as running', async () => {
    const spec = changed(
      SINGLE_LINE,
      ['{ flywheel aft }', '{ flywheel aft  power take-off 12 kW }'],
      [
        'ahead clutch B\n',
        'ahead clutch B\n      mode sea { driven by engine  take-off off }\n      mode pumping { driven by engine  take-off on }\n',
      ],
    );
    expect((await of(spec, 'capacity/take-off')).outcome).toBe('holds');
    const silent = changed(spec, ['  take-off on }', ' }']);
    expect((await of(silent, 'capacity/take-off')).outcome).toBe('fails');
  });

  it('judges a requirement in the mode that it names', async () => {
    const asked = (what: string) =>
      changed(TWIN, ['  arrangement proposed {', `  require ${what}\n  arrangement proposed {`]);
    const torque = async (mode: string) =>
      of(asked(`shaft torque at most 6000 N.m at rated power${mode}`), 'trace/requirement-met');
    const [first, slow, full, none] = await Promise.all(
      ['', ' in mode slow', ' in mode full', ' in mode none'].map(torque),
    );
    expect([first!.demand!.si, full!.demand!.si / slow!.demand!.si]).toEqual([slow!.demand!.si, 2]);
    expect(full!.message).toContain('in mode full');
    expect(none!.outcome).toBe('cannot tell');
    const margin = await of(asked('gear torque margin at least 5 % in mode full'), 'trace/requirement-met');
    // 0.17 kW/rpm against 1480 N·m, by hand.
    expect(margin.capacity!.si).toBeCloseTo((0.17 * 9549.2966) / 1480 - 1, 5);
    const turn = await checkText(asked('propellers turn outward in mode full'));
    expect(
      turn.findings.some(one => one.code === 'text/sentence' || one.code === 'trace/requirement-unverified'),
    ).toBe(true);
  });

  it('cannot tell what two unlike engines give together, and judges each that drives alone', async () => {
    const entry = /engine Kittiwake-9 [\s\S]*?\n}\n/.exec(TWIN)![0];
    const smaller = entry.replace('Kittiwake-9', 'Kittiwake-6').replace('power 300 kW', 'power 240 kW');
    const unlike = (modes: string) =>
      `${smaller}${changed(
        TWIN,
        [`${ENGINE}${ENGINE}`, `${ENGINE}${ENGINE.replace('Kittiwake-9', 'Kittiwake-6')}`],
        [
          'mode slow { driven by first engine }\n      mode full { driven by both engines }\n',
          `mode slow { driven by first engine }\n      ${modes}\n`,
        ],
      )}`;
    const together = await of(unlike('mode full { driven by both engines }'), 'shafting/diameter');
    expect(together.outcome).toBe('cannot tell');
    expect(together.message).toContain('how the torque of two unlike engines of Centre adds up');
    const apart = await of(unlike('mode other { driven by second engine }'), 'shafting/diameter');
    expect(apart.outcome).toBe('holds');
    // By hand: the larger alone, 300 kW × 0.97 at 2300 rpm / 2.043.
    expect((apart.demand!.si * Math.PI) / 30 / 1000).toBeCloseTo((300 * 0.97) / (2300 / 2.043), 6);
  });
});
