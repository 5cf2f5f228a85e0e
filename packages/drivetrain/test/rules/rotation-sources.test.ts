import { describe, expect, test } from 'vitest';
import type { EngineFacts, Mesh, Train } from '../../src/index.js';
import { arrangement, count, evidently, open, type Plain, rotation, sense, vessel } from '../build.js';
import {
  type Change,
  engine,
  findings,
  found,
  gear,
  KEEPS,
  line,
  OPPOSITE,
  only,
  REVERSES,
  routesOf,
  STANDARD,
} from './rotation-parts.js';

const single = (change: Change) =>
  vessel({ arrangements: [arrangement('proposed', { Centre: line(change) })] });
const withEngine = (facts: Plain<EngineFacts>) => single({ engine: { from: engine(facts) } });
const ofEngine = (rule: string, outcome = 'fails') => [`${outcome} rotation/${rule} on proposed.Centre`];

describe('rotation/viewpoint', () => {
  // Standard is counter-clockwise at the principal output end (SAE J824); the front end of the same shaft sees clockwise.
  test.each([
    ['standard', 'flywheel', []],
    ['counter-clockwise', 'flywheel', []],
    ['clockwise', 'front', []],
    ['counter-clockwise', 'aft', []],
    ['clockwise', 'forward', []],
    ['standard', 'front', ['fails rotation/viewpoint on proposed.Centre.engine']],
    ['opposite', 'aft', ['fails rotation/viewpoint on proposed.Centre.engine']],
    ['standard', undefined, ['cannot tell rotation/viewpoint on proposed.Centre.engine']],
    ['clockwise', undefined, ['cannot tell rotation/viewpoint on proposed.Centre.engine']],
  ] as const)('engine %s viewed from %s', (word, view, expected) => {
    expect(findings(withEngine({ rotation: rotation(word, view) }))).toEqual(expected);
  });

  test('asks for the viewpoint of a gear input too', () => {
    expect(
      findings(single({ gear: { from: gear({ inputRotation: rotation('counter-clockwise') }) } })),
    ).toEqual(['cannot tell rotation/viewpoint on proposed.Centre.gear']);
  });

  test('offers each reading with where it leads', () => {
    const at = 'engine Kittiwake-9.rotation';
    expect(routesOf(only(withEngine({ rotation: rotation('clockwise') })))).toEqual([
      `Write "clockwise viewed from flywheel": the engine has opposite rotation; the shaft of proposed.Centre turns counter-clockwise ahead and needs a left-hand propeller [${at} := clockwise viewed from flywheel]`,
      `Write "clockwise viewed from front": the engine has standard rotation; the shaft of proposed.Centre turns clockwise ahead and needs a right-hand propeller [${at} := clockwise viewed from front]`,
    ]);
  });

  test('one catalogue entry in two lines is asked once, in the record and in the proposal that keeps it', () => {
    const from = engine({ rotation: rotation('clockwise') });
    const lines = (left: boolean) => ({
      Port: line({ engine: { from }, propeller: { hand: left ? 'left' : 'right' } }),
      Starboard: line({ engine: { from }, propeller: { hand: left ? 'right' : 'left' } }),
    });
    const before = arrangement('existing', lines(true));
    const after = arrangement('proposed', lines(true), { before });
    expect(findings(vessel({ arrangements: [before, after] }))).toEqual([
      'cannot tell rotation/viewpoint on existing.Port.engine',
      'cannot tell rotation/viewpoint on proposed.Port.engine',
    ]);
  });
});

describe('rotation/sheet-view', () => {
  test.each([
    ['the same seen from the other end', STANDARD, rotation('clockwise', 'front'), []],
    ['the same in other words', STANDARD, rotation('counter-clockwise', 'flywheel'), []],
    ['the word copied over', OPPOSITE, rotation('clockwise', 'front'), ofEngine('sheet-view')],
    ['sheet without a viewpoint', STANDARD, rotation('clockwise'), ofEngine('sheet-view', 'cannot tell')],
    ['sheet left open', STANDARD, open<never>(), ofEngine('sheet-view', 'cannot tell')],
  ] as const)('%s', (_, declared, sheet, expected) => {
    expect(findings(withEngine({ rotation: declared, sheetRotation: sheet }))).toEqual(expected);
  });

  test('offers to declare what the sheet says, brought to the flywheel end', () => {
    const about = withEngine({ rotation: OPPOSITE, sheetRotation: rotation('clockwise', 'front') });
    expect(routesOf(only(about))).toEqual([
      'Declare the rotation as "standard viewed from flywheel", as the sheet has it: proposed.Centre then needs a right-hand propeller [engine Kittiwake-9.rotation := standard viewed from flywheel]',
    ]);
  });
});

describe('rotation/unproven-source', () => {
  test.each([
    ['engine rotation', { engine: { from: engine({ rotation: evidently(STANDARD, 'hearsay') }) } }],
    ['flywheel facing', { engine: { flywheelFaces: evidently('aft' as const, 'assumed') } }],
    [
      'output sense',
      {
        gear: {
          from: gear({ clutches: [KEEPS, { ...REVERSES, output: evidently(sense('opposite'), 'hearsay') }] }),
        },
      },
    ],
    ['input rotation', { gear: { from: gear({ inputRotation: evidently(STANDARD, 'hearsay') }) } }],
    ['hand', { propeller: { hand: evidently('right' as const, 'hearsay') } }],
  ])('%s', (_, change) => {
    expect(findings(single(change))).toEqual(['fails rotation/unproven-source on proposed.Centre']);
  });

  test.each(['measured', 'plate', 'drawing', 'sheet', 'sister vessel'] as const)(
    '%s closes a check',
    kind => {
      expect(findings(single({ propeller: { hand: evidently('right', kind) } }))).toEqual([]);
    },
  );

  test('a hand that would be wrong fails all the same', () => {
    expect(findings(single({ propeller: { hand: evidently('left' as const, 'assumed') } }))).toEqual([
      'fails rotation/propeller-hand on proposed.Centre',
      'fails rotation/unproven-source on proposed.Centre',
    ]);
  });

  test('hearsay beside a real gap leaves the gap in sight', () => {
    const change = {
      engine: { flywheelFaces: undefined },
      propeller: { hand: evidently('right' as const, 'hearsay') },
    };
    expect(findings(single(change))).toEqual([
      'cannot tell rotation/propeller-hand on proposed.Centre',
      'fails rotation/unproven-source on proposed.Centre',
    ]);
  });
});

describe('rotation/accessory', () => {
  const fitted = (of: Plain<EngineFacts>['accessories']) => withEngine({ accessories: of });
  test.each([
    ['built for this rotation', STANDARD, []],
    ['built for it, seen from the front', rotation('clockwise', 'front'), []],
    ['built for the other', OPPOSITE, ofEngine('accessory')],
    ['not stated', undefined, ofEngine('accessory', 'cannot tell')],
    ['without a viewpoint', rotation('clockwise'), ofEngine('accessory', 'cannot tell')],
    ['hearsay', evidently(STANDARD, 'hearsay'), ofEngine('accessory', 'cannot tell')],
  ])('%s', (_, rotates, expected) => {
    expect(findings(fitted([{ name: 'starter', rotation: rotates }]))).toEqual(expected);
  });

  test('each accessory is told apart', () => {
    const verdicts = found(
      fitted([
        { name: 'starter', rotation: OPPOSITE },
        { name: 'pump', rotation: OPPOSITE },
        { name: 'fan', rotation: STANDARD },
      ]),
    );
    expect(verdicts.map(one => one.message.slice(0, 12))).toEqual(['The starter ', 'The pump of ']);
    expect(routesOf(verdicts[0]!)).toEqual([
      'Order the starter for standard rotation (a work item for the yard) [engine Kittiwake-9.accessory starter.rotation := standard viewed from flywheel]',
    ]);
  });
});

describe('rotation/input-accepted', () => {
  test.each([
    ['standard', STANDARD, []],
    ['the same from the front', rotation('clockwise', 'front'), []],
    ['either', rotation('either'), []],
    ['opposite', OPPOSITE, ofEngine('input-accepted')],
    ['not stated', undefined, ofEngine('input-accepted', 'cannot tell')],
    [
      'left open',
      open<never>(),
      [...ofEngine('pump-index', 'cannot tell'), ...ofEngine('input-accepted', 'cannot tell')],
    ],
  ] as const)('a gear that takes %s', (_, inputRotation, expected) => {
    expect(findings(single({ gear: { from: gear({ inputRotation }) } }))).toEqual(expected);
  });

  test('offers catalogue gears that take the engine and turn the shaft as the propeller needs', () => {
    const about = single({ gear: { from: gear({ inputRotation: OPPOSITE }) } });
    const gears = [gear({}, 'Rowan-7'), gear({ inputRotation: OPPOSITE }, 'Rowan-8')];
    expect(routesOf(only(about, { gears })).map(one => one.slice(0, 52))).toEqual([
      'Fit gear Rowan-7 at 2.04:1 with clutch B ahead: the ',
    ]);
  });
});

describe('rotation/train-sense', () => {
  const mesh = (kind: Mesh['kind'], driver = 'A', driven = 'B', teeth = 47): Mesh => ({
    driver,
    driverTeeth: 23,
    driven,
    drivenTeeth: teeth,
    kind,
  });
  const planetary = (held: 'ring' | 'carrier', output: 'ring' | 'carrier'): Plain<Train> => ({
    sunTeeth: count(30),
    ringTeeth: count(60),
    input: 'sun',
    output,
    held: [held],
  });
  const trained = (word: 'same' | 'opposite' | undefined, train: Plain<Train>) => {
    const clutch = {
      name: 'B',
      ahead: 'continuous' as const,
      train,
      ...(word ? { output: sense(word) } : {}),
    };
    return single({ gear: { from: gear({ clutches: [clutch] }) } });
  };

  // External meshes reverse, internal ones and chains keep; sun to carrier with the ring held keeps, sun to ring with
  // the carrier held reverses (Willis; Khurmi and Gupta, Theory of Machines, ch. 13).
  test.each([
    ['one external mesh', { meshes: [mesh('external')] }, 'opposite'],
    ['an idler between', { meshes: [mesh('external', 'A', 'I', 31), mesh('external', 'I', 'B')] }, 'same'],
    ['an internal mesh', { meshes: [mesh('internal')] }, 'same'],
    ['a chain', { meshes: [mesh('chain')] }, 'same'],
    ['sun to carrier, ring held', planetary('ring', 'carrier'), 'same'],
    ['sun to ring, carrier held', planetary('carrier', 'ring'), 'opposite'],
  ] as const)('%s', (_, train, word) => {
    const needed = word === 'opposite' ? [] : ofEngine('propeller-hand');
    expect(findings(trained(undefined, train))).toEqual(needed);
    expect(findings(trained(word, train))).toEqual(needed);
    expect(findings(trained(word === 'same' ? 'opposite' : 'same', train))).toEqual(ofEngine('train-sense'));
  });

  test('a train that settles nothing cannot bear out a word', () => {
    expect(findings(trained('opposite', { sunTeeth: count(30), ringTeeth: count(60) }))).toEqual(
      ofEngine('train-sense', 'cannot tell'),
    );
  });

  test('offers the word that the tooth counts give', () => {
    expect(routesOf(only(trained('same', { meshes: [mesh('external')] })))).toEqual([
      'Declare the output "opposite", as the tooth counts give [gear Alder-63.ratio 2.04:1.clutch B.output := opposite]',
    ]);
  });
});
