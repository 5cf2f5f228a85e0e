import { describe, expect, test } from 'vitest';
import {
  arrangement,
  count,
  evidently,
  motorEntry,
  open,
  quantity,
  ratio,
  rotation,
  sense,
  vessel,
} from '../build.js';
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
  type PlainClutch,
  REVERSES,
  routesOf,
} from './rotation-parts.js';

const single = (change: Change = {}) =>
  vessel({ arrangements: [arrangement('proposed', { Centre: line(change) })] });
const EITHER_INPUT = { inputRotation: rotation('either') };

describe('rotation/propeller-hand', () => {
  // Sense of engine × output sense = sense of shaft; +1 (clockwise from aft) needs a right-hand propeller (ISO 3715-1).
  test.each([
    ['standard', 'aft', 'A', 'left'],
    ['standard', 'aft', 'B', 'right'],
    ['opposite', 'aft', 'A', 'right'],
    ['opposite', 'aft', 'B', 'left'],
  ] as const)('%s engine, flywheel %s, clutch %s needs a %s-hand propeller', (word, facing, ahead, hand) => {
    const change = {
      engine: { from: engine({ rotation: rotation(word, 'flywheel') }), flywheelFaces: facing },
      gear: { from: gear(EITHER_INPUT), ahead },
    };
    expect(findings(single({ ...change, propeller: { hand } }))).toEqual([]);
    const other = hand === 'left' ? 'right' : 'left';
    expect(findings(single({ ...change, propeller: { hand: other } }))).toEqual([
      'fails rotation/propeller-hand on proposed.Centre',
    ]);
  });

  test('says which way the shaft turns, in which clutch, and what would happen', () => {
    const verdict = only(single({ propeller: { hand: 'left' } }));
    expect(verdict.message).toBe(
      'Centre: with clutch B ahead the shaft turns clockwise seen from aft, which needs a right-hand propeller. ' +
        'The spec lists a left-hand one: the vessel would go astern with the lever ahead.',
    );
    expect(verdict.steps).toHaveLength(3);
  });

  test('offers the other hand and the other clutch, each with what follows, and never a cable', () => {
    const verdict = only(
      single({ propeller: { hand: 'left' }, gear: { shiftCable: 'push for ahead', pushEngages: 'B' } }),
    );
    const routes = routesOf(verdict);
    expect(routes).toEqual([
      'Make the propeller of Centre right-hand: the shaft turns clockwise ahead and then drives ahead [proposed.Centre.propeller: hand right]',
      'Run Centre ahead on clutch A: the shaft then turns counter-clockwise, as its left-hand propeller needs [proposed.Centre.gear.ahead clutch := A]',
    ]);
    expect(routes.join()).not.toMatch(/cable/i);
  });

  test.each<[string, PlainClutch]>([
    ['never', { ...KEEPS, ahead: 'never' }],
    ['not stated', { name: 'A', output: sense('same') }],
    ['hearsay', { ...KEEPS, ahead: evidently('continuous', 'hearsay') }],
  ])('does not offer a clutch whose permission is %s', (_, clutch) => {
    const verdict = only(
      single({ propeller: { hand: 'left' }, gear: { from: gear({ clutches: [clutch, REVERSES] }) } }),
    );
    expect(routesOf(verdict).filter(one => one.includes('on clutch A'))).toEqual([]);
  });

  test('a clutch of another exact ratio says what it does to the speed', () => {
    const clutches = [
      { ...KEEPS, exact: ratio('1.958:1') },
      { ...REVERSES, exact: ratio('2.043:1') },
    ];
    const verdict = only(single({ propeller: { hand: 'left' }, gear: { from: gear({ clutches }) } }));
    expect(routesOf(verdict)[1]).toContain(
      'at 1.958:1 instead of 2.043:1, 4.3 % faster at equal engine speed',
    );
  });

  test('offers catalogue gears that turn the shaft so, take the engine and may run so at a ratio within 3 %; nearest first', () => {
    const gears = [
      gear({ at: '2.5:1', clutches: [{ ...KEEPS, name: 'X' }] }, 'Far'),
      gear({ at: '2:1', clutches: [{ ...KEEPS, name: 'X' }] }, 'Near'),
      gear({ at: '2.04:1', clutches: [{ ...KEEPS, name: 'X' }], inputRotation: OPPOSITE }, 'Wrong input'),
      gear({ at: '2.04:1', clutches: [{ ...KEEPS, name: 'X', ahead: 'never' }] }, 'Forbidden'),
      gear({ at: '2.04:1', clutches: [{ ...REVERSES, name: 'X' }] }, 'Wrong sense'),
      gear({ at: '2.04:1', clutches: [{ ...KEEPS, name: 'X' }], inputRotation: open() }, 'Unstated input'),
      gear(
        { at: '2.1:1', clutches: [{ ...KEEPS, name: 'X' }], inputRotation: rotation('either by pump index') },
        'By pump',
      ),
    ];
    const about = single({ propeller: { hand: 'left' }, gear: { from: gear({ clutches: [REVERSES] }) } });
    expect(routesOf(only(about, { gears })).slice(1)).toEqual([
      'Fit gear Near at 2:1 with clutch X ahead: the shaft then turns counter-clockwise, 2 % faster at equal engine speed ' +
        '[proposed.Centre.gear.name := Near; proposed.Centre.gear.ratio := 2:1; proposed.Centre.gear.ahead clutch := X]',
      'Fit gear By pump at 2.1:1 with clutch X ahead: the shaft then turns counter-clockwise, 2.9 % slower at equal engine speed ' +
        '[proposed.Centre.gear.name := "By pump"; proposed.Centre.gear.ratio := 2.1:1; proposed.Centre.gear.ahead clutch := X; proposed.Centre.gear: pump set for standard]',
    ]);
  });

  test('a retained propeller is replaced by one of the same size, and what stays in the boat is not rewritten', () => {
    const wrong = line({
      propeller: { hand: 'left', blades: count(4), diameter: quantity('length', '26 in') },
    });
    const before = arrangement('existing', { Centre: wrong });
    const after = arrangement(
      'proposed',
      {
        Centre: {
          ...wrong,
          gear: { ...wrong.gear!, change: 'retained' },
          propeller: { ...wrong.propeller, change: 'retained' },
        },
      },
      { before },
    );
    const verdicts = findings(vessel({ arrangements: [before, after] }));
    expect(verdicts).toHaveLength(2);
    const routes = routesOf(only(vessel({ arrangements: [after] })));
    expect(routes[0]).toContain(
      '[proposed.Centre.propeller := replace propeller hand right blades 4 diameter 26 in]',
    );
    expect(routes[1]).toContain('[proposed.Centre.gear := modify gear ahead clutch A]');
  });

  test.each([
    ['no engine rotation', { engine: { from: engine({ rotation: open() }) } }, 'rotation'],
    ['no flywheel facing', { engine: { flywheelFaces: open<'aft'>() } }, 'flywheel'],
    ['no hand', { propeller: { hand: open<'left'>() } }, 'hand'],
    [
      'no output sense',
      { gear: { from: gear({ clutches: [KEEPS, { name: 'B', ahead: 'continuous' }] }) } },
      'output',
    ],
    ['no clutch of that name', { gear: { ahead: 'C' } }, 'clutch C'],
  ] as const)('cannot tell with %s', (_, change, property) => {
    const verdict = found(single(change as never)).find(one => one.rule === 'rotation/propeller-hand');
    expect(verdict?.outcome).toBe('cannot tell');
    expect(verdict?.missing.map(gap => gap.property)).toEqual([property]);
  });

  test('names every gap at once and offers each as an open question where nothing is written', () => {
    const about = vessel({
      arrangements: [
        arrangement('proposed', {
          Centre: { engine: {}, gear: { clutches: [KEEPS, REVERSES] }, propeller: {} },
        }),
      ],
    });
    const verdict = only(about);
    expect(verdict.missing.map(gap => gap.property)).toEqual([
      'rotation',
      'flywheel',
      'ahead clutch',
      'hand',
    ]);
    expect(routesOf(verdict)).toEqual([
      '(stub) Write "rotation unknown": the sheet then lists rotation of the engine as an open question [proposed.Centre.engine: rotation unknown]',
      '(stub) Write "flywheel unknown": the sheet then lists which way the flywheel of the engine faces as an open question [proposed.Centre.engine: flywheel unknown]',
      '(stub) Write "ahead clutch unknown": the sheet then lists which clutch of the gear is engaged for ahead as an open question [proposed.Centre.gear: ahead clutch unknown]',
      '(stub) Write "hand unknown": the sheet then lists hand of the propeller as an open question [proposed.Centre.propeller: hand unknown]',
    ]);
  });

  test('a motor that runs either way suits any hand; one that does not is followed', () => {
    const withMotor = (word: 'either' | 'clockwise', hand: 'left' | 'right') => {
      const motor = motorEntry('Tern-40', {
        rotation: word === 'either' ? rotation('either') : rotation(word, 'aft'),
      });
      return vessel({
        arrangements: [arrangement('proposed', { Centre: { motor: { from: motor }, propeller: { hand } } })],
      });
    };
    expect(findings(withMotor('either', 'left'))).toEqual([]);
    expect(findings(withMotor('either', 'right'))).toEqual([]);
    expect(findings(withMotor('clockwise', 'right'))).toEqual([]);
    expect(findings(withMotor('clockwise', 'left'))).toEqual([
      'fails rotation/propeller-hand on proposed.Centre',
    ]);
  });

  test('a line without a propeller or without anything that drives it is no subject', () => {
    expect(findings(single({ propeller: null }))).toEqual([]);
    expect(
      findings(vessel({ arrangements: [arrangement('proposed', { Centre: { propeller: {} } })] })),
    ).toEqual([]);
  });
});

describe('rotation/ahead-clutch and rotation/clutch-permission', () => {
  const withAhead = (ahead: (typeof REVERSES)['ahead']) =>
    single({ gear: { from: gear({ clutches: [KEEPS, { ...REVERSES, ahead }] }) } });

  test.each([
    ['continuous', 'continuous' as const, []],
    ['never', 'never' as const, ['fails rotation/ahead-clutch on proposed.Centre']],
    ['unknown', open<'never'>(), ['cannot tell rotation/clutch-permission on proposed.Centre']],
    ['not stated', undefined, ['cannot tell rotation/clutch-permission on proposed.Centre']],
    [
      'hearsay',
      evidently('continuous' as const, 'hearsay'),
      ['fails rotation/clutch-permission on proposed.Centre'],
    ],
  ])('permission %s', (_, ahead, expected) => {
    expect(findings(withAhead(ahead))).toEqual(expected);
  });

  test('a clutch that may never run ahead is left for the other one with the hand that it needs', () => {
    expect(routesOf(only(withAhead('never')))).toEqual([
      'Run Centre ahead on clutch A: the shaft then turns counter-clockwise ahead. Make the propeller of Centre left-hand with it ' +
        '[proposed.Centre.gear.ahead clutch := A; proposed.Centre.propeller: hand left]',
    ]);
  });

  test('what the ratio says of a clutch goes before what the gear says of it', () => {
    const both = gear({
      ratios: [{ nominal: ratio('2.04:1'), clutches: [{ name: 'B', ahead: 'never' }] }],
    });
    const general = { ...both, facts: { ...both.facts, clutches: gear().facts.ratios[0]!.clutches } };
    expect(findings(single({ gear: { from: general } }))).toEqual([
      'fails rotation/ahead-clutch on proposed.Centre',
    ]);
  });
});

describe('rotation/convertible-hand', () => {
  test.each([
    ['as asked', { kind: 'folding', hand: 'right', handSetting: 'right' }, []],
    ['set only', { kind: 'folding', handSetting: 'right' }, []],
    [
      'set for the other hand',
      { kind: 'feathering', hand: 'right', handSetting: 'left' },
      ['fails rotation/convertible-hand on proposed.Centre'],
    ],
    [
      'setting not recorded',
      { kind: 'folding', hand: 'right' },
      ['cannot tell rotation/convertible-hand on proposed.Centre'],
    ],
    [
      'set and ordered wrong',
      { kind: 'folding', hand: 'left', handSetting: 'left' },
      ['fails rotation/propeller-hand on proposed.Centre'],
    ],
  ] as const)('%s', (_, propeller, expected) => {
    expect(findings(single({ propeller }))).toEqual(expected);
  });

  test('offers what the shaft needs: to have it assembled anew, or to ask for the hand that it is set for', () => {
    expect(
      routesOf(only(single({ propeller: { kind: 'folding', hand: 'right', handSetting: 'left' } }))),
    ).toEqual([
      'Have the propeller of Centre assembled for right hand [proposed.Centre.propeller: set for hand right]',
    ]);
    expect(
      routesOf(only(single({ propeller: { kind: 'folding', hand: 'left', handSetting: 'right' } }))),
    ).toEqual([
      'Ask for a right-hand propeller, as it is set and as the shaft needs [proposed.Centre.propeller: hand right]',
    ]);
  });
});

describe('rotation/controllable-pitch', () => {
  const pitch = (change: object) => single({ propeller: { kind: 'controllable pitch' }, ...change });
  test.each([
    ['a reversing gear', {}, ['fails rotation/controllable-pitch on proposed.Centre']],
    ['a gear said not to reverse', { gear: { reversing: 'no' } }, []],
    [
      'one clutch and no word of reversing',
      { gear: { from: gear({ clutches: [REVERSES] }) } },
      ['cannot tell rotation/controllable-pitch on proposed.Centre'],
    ],
    [
      'one clutch, said to reverse',
      { gear: { from: gear({ clutches: [REVERSES] }), reversing: 'yes' } },
      ['fails rotation/controllable-pitch on proposed.Centre'],
    ],
  ])('%s', (_, change, expected) => {
    expect(findings(pitch(change))).toEqual(expected);
  });

  test('offers to say that the shaft turns one way', () => {
    expect(routesOf(only(pitch({})))).toEqual([
      'State that the astern clutch is not used: the shaft turns clockwise only [proposed.Centre.gear: reversing no]',
    ]);
  });
});
