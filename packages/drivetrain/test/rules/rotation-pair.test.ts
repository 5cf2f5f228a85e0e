import { describe, expect, test } from 'vitest';
import type { Reason, Requirement } from '../../src/index.js';
import {
  arrangement,
  evidently,
  motorEntry,
  open,
  type PlainLine,
  place,
  rotation,
  vessel,
} from '../build.js';
import { findings, found, gear, KEEPS, line, only, REVERSES, routesOf } from './rotation-parts.js';

const turning = (ahead: 'A' | 'B'): PlainLine =>
  line({ gear: { ahead }, propeller: { hand: ahead === 'A' ? 'left' : 'right' } });

function pair(
  port: PlainLine,
  starboard: PlainLine,
  more: {
    reasons?: Partial<Record<Reason['about'], string>>;
    require?: 'outward' | 'inward';
    names?: [string, string];
  } = {},
) {
  const [one, other] = more.names ?? ['Port', 'Starboard'];
  const requirements: Requirement[] = more.require
    ? [
        {
          origin: place('require'),
          written: `propellers turn ${more.require}`,
          about: 'propellers turn',
          word: more.require,
        },
      ]
    : [];
  return vessel({
    arrangements: [
      arrangement('proposed', { [one]: port, [other]: starboard }, { reasons: more.reasons ?? {} }),
    ],
    requirements,
  });
}

describe('rotation/same-hand and rotation/inward-turning', () => {
  test.each([
    ['outward', turning('A'), turning('B'), {}, []],
    ['inward', turning('B'), turning('A'), {}, ['fails rotation/inward-turning on proposed']],
    ['inward with a reason', turning('B'), turning('A'), { reasons: { 'inward turning': 'as built' } }, []],
    [
      'inward with a reason for something else',
      turning('B'),
      turning('A'),
      { reasons: { 'same hand': 'as built' } },
      ['fails rotation/inward-turning on proposed'],
    ],
    ['both right', turning('B'), turning('B'), {}, ['fails rotation/same-hand on proposed']],
    ['both left', turning('A'), turning('A'), {}, ['fails rotation/same-hand on proposed']],
    ['both left with a reason', turning('A'), turning('A'), { reasons: { 'same hand': 'as built' } }, []],
    [
      'no sides',
      turning('A'),
      turning('B'),
      { names: ['Inner', 'Outer'] },
      ['cannot tell rotation/inward-turning on proposed'],
    ],
    [
      'no sides and one hand',
      turning('A'),
      turning('A'),
      { names: ['Inner', 'Outer'] },
      ['fails rotation/same-hand on proposed'],
    ],
  ] as const)('%s', (_, port, starboard, more, expected) => {
    expect(findings(pair(port, starboard, more as never))).toEqual(expected);
  });

  test('propellers alone are judged too, and a hand that is missing, open or hearsay does not pass', () => {
    expect(findings(pair({ propeller: { hand: 'left' } }, { propeller: { hand: 'right' } }))).toEqual([]);
    for (const hand of [undefined, open<'left'>()]) {
      expect(findings(pair({ propeller: { hand: 'left' } }, { propeller: { hand } }))).toEqual([
        'cannot tell rotation/same-hand on proposed',
      ]);
    }
    const weak = findings(
      pair({ propeller: { hand: 'left' } }, { propeller: { hand: evidently('right', 'hearsay') } }),
    );
    expect(weak).toEqual(['fails rotation/unproven-source on proposed.Starboard']);
  });

  test('a hand missing in a whole line is asked for once', () => {
    const open = { ...turning('B'), propeller: {} };
    expect(findings(pair(turning('A'), open))).toEqual([
      'cannot tell rotation/propeller-hand on proposed.Starboard',
    ]);
    expect(findings(pair({ ...turning('A'), propeller: {} }, open))).toEqual([
      'cannot tell rotation/propeller-hand on proposed.Port',
      'cannot tell rotation/propeller-hand on proposed.Starboard',
    ]);
  });

  test('a wrong hand is told on its line, not again as a pair of one hand', () => {
    expect(findings(pair(turning('A'), line({ gear: { ahead: 'B' }, propeller: { hand: 'left' } })))).toEqual(
      ['fails rotation/propeller-hand on proposed.Starboard'],
    );
  });

  test('one hand: the way to turn outward', () => {
    expect(routesOf(only(pair(turning('B'), turning('B'))))).toEqual([
      'Port runs ahead on clutch A instead of B; port propeller becomes left-hand: propellers then turn outward ' +
        '[proposed.Port.gear.ahead clutch := A; proposed.Port.propeller: hand left]',
    ]);
  });

  test('ways that turn inward are offered where a reason asks for them', () => {
    const routes = routesOf(
      only(pair(turning('B'), turning('B'), { reasons: { 'inward turning': 'tunnels' } })),
    );
    expect(routes).toHaveLength(2);
    expect(routes[1]).toMatch(/: propellers then turn inward \[/);
  });

  test('a clutch that may not run ahead all day is no way out', () => {
    const from = gear({ clutches: [{ ...KEEPS, ahead: 'never' }, REVERSES] });
    const right = line({ gear: { from } });
    expect(routesOf(only(pair(right, right)))).toEqual([]);
  });

  test('motors that run either way need only the hands', () => {
    const electric = (hand: 'left' | 'right'): PlainLine => ({
      motor: { from: motorEntry('Tern-40', { rotation: rotation('either') }) },
      propeller: { hand },
    });
    expect(findings(pair(electric('left'), electric('right')))).toEqual([]);
    expect(routesOf(only(pair(electric('right'), electric('left'))))[0]).toBe(
      'Port engine turns the other way; port propeller becomes left-hand; starboard engine turns the other way; starboard propeller becomes right-hand: ' +
        'propellers then turn outward [proposed.Port.propeller: hand left; proposed.Starboard.propeller: hand right]',
    );
  });
});

describe('rotation/turning-requirement', () => {
  test.each([
    ['outward wanted and got', turning('A'), turning('B'), { require: 'outward' }, []],
    [
      'inward wanted and got, the requirement being the reason',
      turning('B'),
      turning('A'),
      { require: 'inward' },
      [],
    ],
    [
      'inward wanted and got, with a reason',
      turning('B'),
      turning('A'),
      { require: 'inward', reasons: { 'inward turning': 'x' } },
      [],
    ],
    [
      'outward required, inward got',
      turning('B'),
      turning('A'),
      { require: 'outward' },
      ['fails rotation/turning-requirement on proposed'],
    ],
    [
      'outward required, one hand got',
      turning('A'),
      turning('A'),
      { require: 'outward' },
      ['fails rotation/turning-requirement on proposed'],
    ],
    [
      'inward required, outward got',
      turning('A'),
      turning('B'),
      { require: 'inward' },
      ['fails rotation/turning-requirement on proposed'],
    ],
    [
      'no sides',
      turning('A'),
      turning('B'),
      { require: 'outward', names: ['Inner', 'Outer'] },
      ['cannot tell rotation/turning-requirement on proposed'],
    ],
  ] as const)('%s', (_, port, starboard, more, expected) => {
    expect(findings(pair(port, starboard, more as never))).toEqual(expected);
  });

  test('offers the ways that turn as required', () => {
    const verdict = only(pair(turning('A'), turning('B'), { require: 'inward' }));
    expect(routesOf(verdict)).toHaveLength(1);
    expect(routesOf(verdict)[0]).toMatch(/: propellers then turn inward \[/);
  });

  test('binds the arrangement to be built, not the one that it replaces', () => {
    const before = arrangement(
      'existing',
      { Port: turning('B'), Starboard: turning('A') },
      { reasons: { 'inward turning': 'x' } },
    );
    const after = arrangement('proposed', { Port: turning('A'), Starboard: turning('B') }, { before });
    const require = [{ origin: place('require'), written: '', about: 'propellers turn', word: 'outward' }];
    expect(found(vessel({ arrangements: [before, after], requirements: require }))).toEqual([]);
  });
});

describe('handed choices left open on a planned line', () => {
  const { ahead: _, ...unchosen } = line({}).gear!;
  const bare: PlainLine = { ...line({}), gear: unchosen, propeller: {}, mirrors: 'Port' };

  test('offers each consistent pair of clutch and hand that turns the propellers outward', () => {
    expect(routesOf(only(pair(turning('A'), bare)))).toEqual([
      'Starboard: run ahead on clutch B and fit a right-hand propeller: the shaft turns clockwise ahead; propellers then turn outward ' +
        '[proposed.Starboard.gear: ahead clutch B; proposed.Starboard.propeller: hand right]',
      expect.stringMatching(/^\(stub\) Write "ahead clutch unknown"/),
      expect.stringMatching(/^\(stub\) Write "hand unknown"/),
    ]);
  });

  test('offers the hand alone where the clutch is written, and the clutch alone where the hand is', () => {
    expect(routesOf(only(pair(turning('A'), { ...bare, gear: { ...unchosen, ahead: 'B' } })))[0]).toBe(
      'Starboard: fit a right-hand propeller: the shaft turns clockwise ahead; propellers then turn outward [proposed.Starboard.propeller: hand right]',
    );
    expect(routesOf(only(pair(turning('A'), { ...bare, propeller: { hand: 'right' } })))[0]).toBe(
      'Starboard: run ahead on clutch B: the shaft turns clockwise ahead; propellers then turn outward [proposed.Starboard.gear: ahead clutch B]',
    );
  });

  test('what is in the boat already is looked at, not chosen', () => {
    const before = arrangement('existing', {
      Port: turning('A'),
      Starboard: { ...turning('B'), propeller: {} },
    });
    const after = arrangement('proposed', { Port: turning('A'), Starboard: turning('B') }, { before });
    expect(routesOf(only(vessel({ arrangements: [before, after] })))).toEqual([
      expect.stringMatching(/^\(stub\) Write "hand unknown"/),
    ]);
  });
});
