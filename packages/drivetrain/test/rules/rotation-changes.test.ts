import { describe, expect, test } from 'vitest';
import { arrangement, open, ratio, rotation, sense, vessel } from '../build.js';
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
} from './rotation-parts.js';

const EITHER = { inputRotation: rotation('either') };
const OLD = engine({}, 'Old-Eight');
const OTHER = engine({ rotation: OPPOSITE }, 'Kittiwake-9C');

/** Old engine, gear and propeller; then the same with some of it changed. */
function repower(proposed: Change, existing: Change = {}) {
  const before = arrangement('existing', {
    Centre: line({ engine: { from: OLD }, gear: { from: gear(EITHER) }, ...existing }),
  });
  const { engine: newEngine, gear: newGear, propeller } = proposed;
  const after = arrangement(
    'proposed',
    {
      Centre: line({
        engine: { from: OLD, change: newEngine ? 'replaced' : 'retained', ...newEngine },
        gear: { from: gear(EITHER), change: newGear ? 'replaced' : 'retained', ...newGear },
        propeller: { change: propeller ? 'replaced' : 'retained', ...propeller },
      }),
    },
    { before },
  );
  return vessel({ arrangements: [before, after] });
}

describe('rotation/engine-changed', () => {
  test.each([
    ['the same rotation', { engine: { from: engine() } }, []],
    [
      'the other rotation, all else kept',
      { engine: { from: OTHER } },
      ['fails rotation/engine-changed on proposed.Centre'],
    ],
    [
      'the other rotation and the other clutch',
      { engine: { from: OTHER }, gear: { from: gear(EITHER), ahead: 'A' } },
      [],
    ],
    [
      'the other rotation and the other hand',
      { engine: { from: OTHER }, propeller: { hand: 'left' as const } },
      [],
    ],
    [
      'rotation not stated',
      { engine: { from: engine({ rotation: undefined }) } },
      ['cannot tell rotation/engine-changed on proposed.Centre'],
    ],
    [
      'rotation left open',
      { engine: { from: engine({ rotation: open() }) } },
      ['cannot tell rotation/engine-changed on proposed.Centre'],
    ],
    [
      'the other way round in the boat',
      { engine: { from: engine(), flywheelFaces: 'forward' as const } },
      ['fails rotation/line-turns-back on proposed.Centre'],
    ],
  ])('%s', (_, change, expected) => {
    expect(findings(repower(change))).toEqual(expected);
  });

  test('names both rotations and offers the ways out of a wrong hand', () => {
    const verdict = only(repower({ engine: { from: OTHER } }));
    expect(verdict.message).toBe(
      'Centre: engine rotation changes from standard to opposite, so the shaft turns counter-clockwise ahead instead of clockwise. ' +
        'The right-hand propeller no longer drives ahead: the vessel would go astern with the lever ahead.',
    );
    expect(routesOf(verdict).map(one => one.slice(0, 49))).toEqual([
      'Replace the propeller of Centre by a left-hand on',
      'Run Centre ahead on clutch A: the shaft then turn',
    ]);
  });

  test('a hand that was wrong before is not the fault of the engine', () => {
    const verdicts = findings(
      repower({ engine: { from: OTHER } }, { gear: { from: gear(EITHER), ahead: 'A' } }),
    );
    expect(verdicts).toContain('fails rotation/propeller-hand on existing.Centre');
    expect(verdicts).toContain('fails rotation/propeller-hand on proposed.Centre');
  });

  test('when the hand is missing as well, both gaps stay in sight', () => {
    const about = repower({ engine: { from: engine({ rotation: open() }) }, propeller: { hand: open() } });
    expect(found(about).map(one => [one.rule, one.missing.map(gap => gap.property)])).toEqual([
      ['rotation/propeller-hand', ['rotation', 'hand']],
      ['rotation/engine-changed', ['hand', 'rotation']],
    ]);
  });
});

describe('rotation/ratio-flips-output', () => {
  const family = (clutchB: (typeof REVERSES)['output']) =>
    gear({
      ...EITHER,
      ratios: [
        { nominal: ratio('2.04:1'), clutches: [KEEPS, REVERSES] },
        { nominal: ratio('1.93:1'), clutches: [KEEPS, { name: 'B', ahead: 'continuous', output: clutchB }] },
      ],
    });
  const regeared = (output: (typeof REVERSES)['output'], more: Change = {}) =>
    repower({ gear: { from: family(output), ratio: '1.93:1' }, ...more }, { gear: { from: family(output) } });

  test.each([
    ['the same sense', sense('opposite'), {}, []],
    ['the other sense', sense('same'), {}, ['fails rotation/ratio-flips-output on proposed.Centre']],
    ['the other sense with the other hand', sense('same'), { propeller: { hand: 'left' as const } }, []],
    ['sense not stated', undefined, {}, ['cannot tell rotation/ratio-flips-output on proposed.Centre']],
    ['sense left open', open<never>(), {}, ['cannot tell rotation/ratio-flips-output on proposed.Centre']],
  ])('another ratio with %s', (_, output, more, expected) => {
    expect(findings(regeared(output, more))).toEqual(expected);
  });

  test('names both ratios', () => {
    expect(only(regeared(sense('same'))).message).toBe(
      'Centre: gear Alder-63 reverses the rotation at 2.04:1 and keeps it at 1.93:1. ' +
        'The shaft turns counter-clockwise ahead, so the right-hand propeller no longer drives ahead.',
    );
  });

  test('offers to stay at the ratio that keeps the sense', () => {
    expect(routesOf(only(regeared(sense('same'))))[0]).toBe(
      'Stay at 2.04:1: the shaft then turns clockwise ahead, as the right-hand propeller needs [proposed.Centre.gear.ratio := 2.04:1]',
    );
  });

  test('another gear altogether is the concern of the hand', () => {
    const other = gear(
      {
        ...EITHER,
        clutches: [
          { ...REVERSES, name: 'A' },
          { ...KEEPS, name: 'B' },
        ],
        at: '2:1',
      },
      'Rowan-7',
    );
    expect(findings(repower({ gear: { from: other, ratio: '2:1' } }))).toEqual([
      'fails rotation/propeller-hand on proposed.Centre',
    ]);
  });
});

describe('machinery on the wrong side', () => {
  const both = (port: Change, starboard: Change) =>
    vessel({
      arrangements: [
        arrangement('proposed', {
          Port: line({ ...port, propeller: { hand: 'left', ...port?.propeller } }),
          Starboard: line(starboard),
        }),
      ],
    });
  const STD = { engine: { from: engine() }, gear: { from: gear(EITHER) } };
  const OPP = { engine: { from: OTHER }, gear: { from: gear(EITHER) } };
  const MIRROR = gear(
    {
      clutches: [
        { ...REVERSES, name: 'A' },
        { ...KEEPS, name: 'B' },
      ],
    },
    'Alder-63C',
  );

  test('engines on their sides hold; exchanged they are one finding with one exchange', () => {
    expect(findings(both(OPP, STD))).toEqual([]);
    const verdict = only(both(STD, OPP));
    expect(`${verdict.rule} on ${verdict.subject}`).toBe('rotation/engines-exchanged on proposed');
    expect(verdict.message).toContain(
      'The engine to port, Kittiwake-9, has standard rotation, but the port side needs opposite',
    );
    expect(routesOf(verdict)).toEqual([
      'Exchange the engines: opposite to port, standard to starboard; both propellers then drive ahead ' +
        '[proposed.Port.engine.name <> proposed.Starboard.engine.name]',
      'Change both sides: Port runs ahead on clutch A; Starboard runs ahead on clutch A; propellers turn outward ' +
        '[proposed.Port.gear.ahead clutch := A; proposed.Starboard.gear.ahead clutch := A]',
    ]);
  });

  test('gears on their sides hold; exchanged they are one finding, and their ratios go with them', () => {
    const own = { engine: { from: engine() }, gear: { from: gear() } };
    const mirrored = { engine: { from: engine() }, gear: { from: MIRROR } };
    expect(findings(both(mirrored, own))).toEqual([]);
    const verdict = only(both(own, mirrored));
    expect(`${verdict.rule} on ${verdict.subject}`).toBe('rotation/gears-exchanged on proposed');
    expect(routesOf(verdict)[0]).toBe(
      'Exchange the gears: both propellers then drive ahead [proposed.Port.gear.name <> proposed.Starboard.gear.name; ' +
        'proposed.Port.gear.ratio <> proposed.Starboard.gear.ratio; proposed.Port.gear.ahead clutch <> proposed.Starboard.gear.ahead clutch]',
    );
  });

  test('one side wrong is no exchange', () => {
    expect(findings(both(OPP, { ...STD, gear: { from: gear(EITHER), ahead: 'A' } }))).toEqual([
      'fails rotation/propeller-hand on proposed.Starboard',
    ]);
  });

  test('the same gears with the clutches exchanged is told line by line, with the way that changes both', () => {
    const clutch = (ahead: string) => ({ gear: { from: gear(), ahead } });
    const verdicts = found(both(clutch('B'), clutch('A')));
    expect(verdicts.map(one => one.rule)).toEqual(['rotation/propeller-hand', 'rotation/propeller-hand']);
    expect(routesOf(verdicts[0]!)).toContainEqual(
      expect.stringMatching(
        /^Change both sides: Port runs ahead on clutch A; Starboard runs ahead on clutch B; propellers turn outward/,
      ),
    );
  });

  test.each([
    ['as expected', 'clockwise', {}, []],
    ['not as expected', 'counter-clockwise', {}, ['fails rotation/gears-exchanged on proposed.Centre']],
    [
      'not to be told',
      'clockwise',
      { engine: { from: engine({ rotation: open() }) } },
      ['cannot tell rotation/gears-exchanged on proposed.Centre'],
    ],
  ] as const)('expected output %s', (_, expectedOutput, more, expected) => {
    const about = vessel({
      arrangements: [arrangement('proposed', { Centre: line({ gear: { expectedOutput }, ...more }) })],
    });
    expect(findings(about)).toEqual(expected);
  });
});
