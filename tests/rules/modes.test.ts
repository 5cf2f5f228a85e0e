import { RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { HYBRID } from '../../packages/drivetrain/src/rules/hybrid-specs.js';
import { changed, verdictsBy, withStatements } from '../silence/top-list/spec-of.js';
import { checkText } from '../support/check.js';

const of = async (spec: string, rule: string) => (await verdictsBy(spec, rule))[0]!;
const AHEAD = 'ahead clutch B';
/** The line with these modes in the place of its own. */
const withModes = (...modes: string[]) =>
  HYBRID.replace(/\n {6}mode [^\n]*/g, '').replace(
    `ratio 2.04:1 ${AHEAD}`,
    `ratio 2.04:1 ${AHEAD}${modes.map(one => `\n      ${one}`).join('')}`,
  );

describe('a line with several movers', () => {
  it('adds the torque of the motor to that of the engine at the gear, and tells the mode', async () => {
    const engine = await of(withModes('mode passage { driven by engine }'), 'capacity/gear-input-torque');
    const boost = await of(HYBRID, 'capacity/gear-input-torque');
    expect(boost.message).toContain('Centre, boost:');
    // 30 kW at the speed of the engine's own worst point, by hand: T = P / ω.
    const point = boost.demand!.si - engine.demand!.si;
    const speeds = [2600, 1800, 1700, 1600, 1500, 1400].map(rpm => 30_000 / ((rpm * Math.PI) / 30));
    expect(Math.min(...speeds.map(one => Math.abs(one - point)))).toBeLessThan(0.5);
  });

  it('leaves the gear what the engine gives where the motor stands behind it, and the shaft both', async () => {
    const motor = '      motor Eider-40\n';
    const behind = changed(
      changed(HYBRID, [motor, '']),
      ['ahead clutch B\n      mode', `ahead clutch B\n${motor}      mode`],
      ['top speed 2950 rpm', 'top speed 2000 rpm'],
    );
    const alone = withModes('mode passage { driven by engine }');
    const demand = async (spec: string, rule: string) => (await of(spec, rule)).demand!.si;
    expect(await demand(behind, 'capacity/gear-input-torque')).toBeCloseTo(
      await demand(alone, 'capacity/gear-input-torque'),
      6,
    );
    expect(await demand(behind, 'shafting/thrust-capacity').catch(() => 1)).toBeGreaterThan(0);
    const [shaft] = await verdictsBy(behind, 'shafting/diameter');
    const [before] = await verdictsBy(alone, 'shafting/diameter');
    expect(shaft!.demand!.si).toBeGreaterThan(before!.demand!.si);
  });

  it('is judged in each mode as a line with that mover alone', async () => {
    const alone = await checkText(
      SINGLE_LINE.replace('rated medium 0.18 kW/rpm', 'rated medium 0.24 kW/rpm'),
    );
    const moded = await checkText(withModes('mode passage { driven by engine }'));
    const said = (one: typeof alone) =>
      one.check.vessels
        .flatMap(vessel => vessel.verdicts)
        .filter(verdict => verdict.subject.startsWith('proposed.Centre'))
        .filter(
          ({ rule }) =>
            ![
              'interface/load-path',
              'speed/mover-turned-along',
              'paper/sheet-age',
              'rotation/viewpoint',
            ].includes(rule),
        )
        .map(({ rule, subject, outcome, capacity, demand }) =>
          [rule, subject, outcome, capacity?.si, demand?.si].join(' '),
        )
        .sort();
    expect(said(moded)).toEqual(said(alone));
  });

  it('fails in the one mode in which it fails, whatever the others come to', async () => {
    const wrong = changed(HYBRID, ['rotation either', 'rotation clockwise viewed from aft']);
    const hand = await of(wrong, 'rotation/propeller-hand');
    expect([hand.outcome, hand.message.startsWith('Centre, harbour:')]).toEqual(['fails', true]);
  });

  it.each([
    ['a mode that does not say what drives', 'mode passage { }'],
    ['a mode whose movers nobody knows', 'mode passage { driven by unknown }'],
    ['a mover that is not there', 'mode passage { driven by both engines }'],
    ['a first mode that leaves the engine out', 'mode harbour { driven by motor }'],
  ])('%s keeps every check from the movers', async (_, mode) => {
    const spec = withModes(mode);
    expect((await of(spec, 'interface/load-path')).outcome).toBe('cannot tell');
    for (const rule of ['capacity/gear-input-torque', 'rotation/propeller-hand', 'shafting/diameter'])
      expect([rule, (await of(spec, rule)).outcome]).toEqual([rule, 'cannot tell']);
  });

  it.each([
    ['power', ['  power 40 kW at 1500 rpm\n', '']],
    ['top speed', ['  top speed 2950 rpm\n', '']],
  ] as [string, [string, string]][])(
    'holds nothing together without the %s of the motor',
    async (_, edit) => {
      expect((await of(changed(HYBRID, edit), 'capacity/gear-input-torque')).outcome).toBe('cannot tell');
    },
  );

  it('says of a check that does not count two movers that it cannot be told', async () => {
    const certified = changed(HYBRID, [
      '  arrangement proposed {',
      '  certificate { power 320 kW }\n  arrangement proposed {',
    ]);
    const verdicts = (await checkText(certified)).check.vessels.flatMap(one => one.verdicts);
    const said = verdicts.filter(one => one.rule === 'capacity/certificate');
    expect(said.map(one => one.outcome)).toEqual(['cannot tell']);
  });
});

describe('two engines on one gear', () => {
  const engine = '      engine Kittiwake-9 at medium { flywheel aft }\n';
  const twin = (mode: string) =>
    changed(
      SINGLE_LINE,
      [engine, `${engine}${engine}`],
      [
        '      gear Alder-63 ratio 2.04:1 ahead clutch B',
        `      gear Alder-63 ratio 2.04:1 ahead clutch B\n      mode slow { driven by first engine }\n${mode}`,
      ],
    );

  it('turn the shaft with twice the torque, and no check says what enters the gear by which input', async () => {
    const slow = await of(twin(''), 'shafting/diameter');
    const both = twin('      mode full { driven by both engines }');
    const full = await of(both, 'shafting/diameter');
    expect(full.demand!.si / slow.demand!.si).toBeCloseTo(2, 9);
    expect((await of(both, 'capacity/gear-input-torque')).outcome).toBe('cannot tell');
  });

  it('must turn the shaft one way', async () => {
    const opposite = changed(twin('      mode full { driven by both engines }'), [
      `${engine}${engine}`,
      `${engine}${engine.replace('flywheel aft', 'flywheel forward')}`,
    ]);
    expect((await of(opposite, 'rotation/movers-agree')).outcome).toBe('fails');
  });
});

describe('a line with modes that is kept', () => {
  const MODES = ['passage { driven by engine }', 'harbour { driven by motor }'];
  const BOOST = 'boost { driven by engine and motor  motor power at most 30 kW }';
  const KEPT = 'retain engine  retain motor  retain gear  retain shaft  retain propeller';
  const later = (modes = '', spec = HYBRID) =>
    withStatements(spec, `  arrangement later revises proposed { shaftline Centre { ${KEPT}${modes} } }`);
  const COMPARED = [
    'capacity/retained-propeller-overload',
    'capacity/retained-propeller-light',
    'capacity/retained-shaft-torque',
    'interface/torsional-statement',
  ];
  const said = async (spec: string) =>
    (await checkText(spec)).check.vessels
      .flatMap(one => one.verdicts)
      .filter(one => one.subject === 'later.Centre' && COMPARED.includes(one.rule));
  const saying = (modes: readonly string[]) => modes.map(one => ` mode ${one}`).join('');

  it.each([
    ['with its modes as they were', ''],
    ['with them said again', saying([...MODES, BOOST])],
    ['with them in another order', saying([MODES[0]!, BOOST, MODES[1]!])],
    ['with them under other names', saying(['far { driven by engine }', 'near { driven by motor }'])],
  ])('is compared with what it was, %s', async (_, modes) => {
    const found = await said(later(modes));
    expect(found.filter(one => one.outcome !== 'holds').map(one => one.message)).toEqual([]);
    expect(found.map(one => one.rule)).toContain('capacity/retained-propeller-overload');
  });

  it('compares each mode with the one of its name, and not with the first', async () => {
    const half = `motor Eider-20 { rotation either  power 20 kW at 1500 rpm  torque 127.3 N.m  top speed 2950 rpm }\n${HYBRID}`;
    const less = later(saying(MODES), half).replace('retain motor', 'replace motor Eider-20');
    const [overload] = (await said(less)).filter(one => one.rule === COMPARED[0]);
    expect(overload!.message).toContain('Centre, harbour:');
    // Half of what the motor gave, at the same speed: 40 kW over 20 kW, by hand.
    expect(overload!.message).toContain('about 2.0 times');
  });

  it('compares a mode of which there was none like it with the most loaded, and says so', async () => {
    const without = changed(HYBRID, [`      mode ${MODES[1]}\n`, '']);
    const [overload] = (await said(later(saying(MODES), without))).filter(one => one.rule === COMPARED[0]);
    expect([overload!.outcome, overload!.message]).toEqual([
      'fails',
      expect.stringContaining('before, in mode boost'),
    ]);
  });
});

describe('a line with one mover and one mode is a line without modes', () => {
  it.each([
    ['capacity/motor-equivalent', 'motor'],
    ['shafting/thrust-path', 'motor'],
    ['trial/dock-steps', 'engine'],
    ['trial/no-load', 'engine'],
  ])('%s', async (rule, mover) => {
    const { failing, passing } = RULES.find(one => one.id === rule)!.examples();
    const inMode = (spec: string) =>
      spec.replace(/(shaftline Centre \{)/, `$1\n      mode passage { driven by ${mover} }`);
    const outcomes = async (spec: string) => (await verdictsBy(spec, rule)).map(one => one.outcome).sort();
    expect(await outcomes(inMode(failing))).toEqual(await outcomes(failing));
    expect(await outcomes(failing)).toContain('fails');
    expect(await outcomes(inMode(passing))).toEqual(await outcomes(passing));
  });
});
