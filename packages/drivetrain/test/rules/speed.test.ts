import { describe, expect, it } from 'vitest';
import { LineAnalysis, type Requirement, type Vessel } from '../../src/index.js';
import { SPEED_RULES } from '../../src/rules/speed/index.js';
import { gearEntry, motorEntry, open, place, quantity, ratio, transferEntry } from '../build.js';
import { type Changes, craft, DUTY, GEAR, line, offered, powerAt, ruleOf, said } from './capacity-fixture.js';

const rule = (id: string) => ruleOf(SPEED_RULES, `speed/${id}`);
const of = (changes: Changes, more: Partial<Vessel> = {}) => craft({ Centre: line(changes) }, more);
const first = (id: string, about: Vessel) => said(rule(id), about)[0];
const rpm = (speed: string) => quantity('rotational speed', speed);
const fact = <T>(value: T, written = 'written') => ({ value, written, origin: place(written) });
const requires = (about: string, speed: string | undefined, condition?: string): Requirement => ({
  origin: place('require'),
  written: `require ${about} at most ${speed}`,
  about,
  bound: 'at most',
  quantity: speed === undefined ? open() : fact(quantity('speed', speed)),
  ...(condition ? { condition } : {}),
});

describe('speed/gear-input-maximum', () => {
  const limit = (speed: string) => ({ ...GEAR, inputSpeedMax: rpm(speed) });
  it.each([
    ['high idle under the limit', {}, 'holds'],
    ['high idle over it, rated speed under it', { gear: limit('2400 rpm') }, 'fails'],
    ['high idle at it', { gear: limit('2530 rpm') }, 'holds'],
    ['no high idle', { engine: { highIdle: undefined } }, 'cannot tell'],
    [
      'no high idle, but rated speed is over it',
      { engine: { highIdle: undefined }, gear: limit('2200 rpm') },
      'fails',
    ],
    ['no limit', { gear: { ...GEAR, inputSpeedMax: undefined } }, 'cannot tell'],
    ['an open limit', { gear: { ...GEAR, inputSpeedMax: open() } }, 'cannot tell'],
  ] as [string, Changes, string][])('%s', (_, changes, outcome) => {
    expect(first('gear-input-maximum', of(changes))!.outcome).toBe(outcome);
  });

  it('takes the top speed of a motor', () => {
    const motor = {
      from: motorEntry('Eddy-30', { power: powerAt('30 kW', '2000 rpm'), topSpeed: rpm('3600 rpm') }),
    };
    const about = craft({ Centre: { motor, gear: line().gear! } });
    expect(first('gear-input-maximum', about)).toMatchObject({ outcome: 'fails' });
  });

  it('offers a gear for faster engines', () => {
    const gears = [
      gearEntry('Alder-63', limit('2400 rpm')),
      gearEntry('Cedar-80', { ...GEAR, ratios: [offered('2.04:1', '2.043:1', '0.2 kW/rpm')] }),
    ];
    expect(said(rule('gear-input-maximum'), of({ gear: limit('2400 rpm') }), { gears })[0]!.routes).toEqual([
      'Replace the gear by Cedar-80 2.04:1, clutch B ahead: 29 % torque margin, shaft speed unchanged',
    ]);
  });
});

describe('speed/transfer-input-maximum', () => {
  const behind = (facts: object) =>
    of({ line: { transfers: [{ from: transferEntry('Reed-2', { exact: ratio('1:1'), ...facts }) }] } });
  it.each([
    // 2530 / 2.043 = 1238.4 rpm
    ['divided by the ratio before it', behind({ inputSpeedMax: rpm('1239 rpm') }), 'holds'],
    ['a little too fast', behind({ inputSpeedMax: rpm('1238 rpm') }), 'fails'],
    ['no limit', behind({}), 'cannot tell'],
  ])('%s', (_, about, outcome) => {
    expect(first('transfer-input-maximum', about)!.outcome).toBe(outcome);
  });
});

describe('speed at idle', () => {
  it('reproduces 650 rpm through 2:1 with 0.76 m of pitch and 30 % slip: 2.88 m/s, 5.6 kn', () => {
    const about = of({
      gear: { ratios: [offered('2:1', '2:1', '0.2 kW/rpm')] },
      ratio: '2:1',
      propeller: { pitch: quantity('length', '0.76 m') },
    });
    const analysis = new LineAnalysis(about.arrangements[0]!.lines[0]!, about);
    expect(analysis.idleVesselSpeed.value!.si).toBeCloseTo(2.8817, 3);
    expect(analysis.tell(analysis.idleVesselSpeed.value!, 2)).toBe('5.6 kn');
  });

  // 24 in × 650 / 2.043 rpm × 0.7 = 4.40 kn
  it.each([
    ['slow enough', {}, '4.5 kn', 'holds'],
    ['too fast', {}, '4.3 kn', 'fails'],
    ['no low idle', { engine: { lowIdle: undefined } }, '4.5 kn', 'cannot tell'],
    ['no pitch', { propeller: { pitch: open() } }, '4.5 kn', 'cannot tell'],
    ['an open requirement', {}, undefined, 'cannot tell'],
  ] as [string, Changes, string | undefined, string][])('%s', (_, changes, speed, outcome) => {
    const about = of(changes, { requirements: [requires('speed', speed, 'at idle ahead')] });
    expect(first('idle-in-gear', about)!.outcome).toBe(outcome);
  });

  it('says the speed at idle, and which ratios would do', () => {
    const about = of({}, { requirements: [requires('speed', '3.5 kn', 'at idle ahead')] });
    const verdict = said(rule('idle-in-gear'), about, { gears: [gearEntry('Alder-63', GEAR)] })[0]!;
    expect(verdict.message).toMatchInlineSnapshot(
      `"Centre: about 4.4 kn in gear at idle (318.2 rpm of shaft speed, 30 % slip assumed); at most 3.5 kn is required. A slip device also meets it."`,
    );
    expect(verdict.routes).toEqual([]);
    const easier = of({}, { requirements: [requires('speed', '3.6 kn', 'at idle ahead')] });
    expect(said(rule('idle-in-gear'), easier, { gears: [gearEntry('Alder-63', GEAR)] })[0]!.routes).toEqual([
      'Use 2.52:1: about 3.6 kn at idle, the shaft turns 19 % slower at every engine speed',
    ]);
  });

  it('takes the slip that the vessel assumes', () => {
    const assumptions = [
      {
        about: 'slip',
        origin: place('assume slip'),
        quantity: fact(ratio('45 %')),
        because: 'trial of sister',
      },
    ];
    const about = of({}, { assumptions, requirements: [requires('speed', '3.5 kn', 'at idle ahead')] });
    expect(first('idle-in-gear', about)!.outcome).toBe('holds');
  });

  it('is silent where nothing is required at idle', () => {
    expect(
      first('idle-in-gear', of({}, { requirements: [requires('speed', '30 kn', 'at full power')] })),
    ).toBeUndefined();
  });
});

describe('speed/idle-pressure', () => {
  it.each([
    ['enough', {}, 'holds'],
    ['too slow', { engine: { lowIdle: rpm('550 rpm') } }, 'fails'],
    ['no low idle', { engine: { lowIdle: undefined } }, 'cannot tell'],
    ['an open least speed', { gear: { ...GEAR, inputSpeedMin: open() } }, 'cannot tell'],
    ['no least speed stated', { gear: { ...GEAR, inputSpeedMin: undefined } }, undefined],
  ] as [string, Changes, string | undefined][])('%s', (_, changes, outcome) => {
    expect(first('idle-pressure', of(changes))?.outcome).toBe(outcome);
  });
});

describe('speed/slow-running', () => {
  const trolling = (slipDevice: string | undefined, speed = '2 kn', changes: Changes = {}) =>
    first(
      'slow-running',
      of(
        { ...changes, gear: { ...GEAR, ...(slipDevice ? { slipDevice } : {}) } as typeof GEAR },
        { requirements: [requires('trolling speed', speed)] },
      ),
    )!.outcome;
  it.each([
    ['offered', '2 kn', {}, 'holds'],
    ['fitted', '2 kn', {}, 'holds'],
    ['not offered', '2 kn', {}, 'fails'],
    [undefined, '2 kn', {}, 'cannot tell'],
    ['not offered', '5 kn', {}, 'holds'],
    ['not offered', '5 kn', { engine: { lowIdle: undefined } }, 'fails'],
  ] as [string | undefined, string, Changes, string][])(
    'slip device %s, at most %s',
    (device, speed, changes, outcome) => {
      expect(trolling(device, speed, changes)).toBe(outcome);
    },
  );
});

describe('speed/tip-speed', () => {
  const wants = (speed: string) => ({
    criteria: { origin: DUTY.origin, tipSpeed: fact(quantity('speed', speed)) },
  });
  // π × 0.6604 m × 2300 / 2.043 / 60 = 38.93 m/s
  it.each([
    ['no limit chosen: advice only', {}, {}, 'does not apply'],
    ['under it', {}, wants('39 m/s'), 'holds'],
    ['over it', {}, wants('38.9 m/s'), 'fails'],
    ['no diameter', { propeller: { diameter: undefined } }, wants('39 m/s'), 'cannot tell'],
    ['no diameter and no limit', { propeller: { diameter: undefined } }, {}, undefined],
  ] as [string, Changes, Partial<Vessel>, string | undefined][])('%s', (_, changes, more, outcome) => {
    expect(first('tip-speed', of(changes, more))?.outcome).toBe(outcome);
  });

  it('is 227 ft/s for 26 in at 2000 rpm', () => {
    const about = of({ gear: { ratios: [offered('1:1', '1.15:1', '1 kW/rpm')] }, ratio: '1:1' });
    expect(first('tip-speed', about)!.message).toContain('69.16 m/s');
    expect(69.16 / 0.3048).toBeCloseTo(227, 0);
  });
});

describe('the operating points of a line', () => {
  const about = of({ engine: { torqueCurve: [{ y: quantity('torque', '1430 N.m'), x: rpm('1300 rpm') }] } });
  const points = new LineAnalysis(about.arrangements[0]!.lines[0]!, about).operatingPoints;

  it('are idle, full load, peak torque, rated, governed and astern', () => {
    expect(points.map(point => point.name)).toEqual([
      'idle ahead',
      'full load',
      'peak torque',
      'rated power',
      'governed maximum',
      'idle astern',
      'rated power astern',
    ]);
  });

  it('give the speed behind every part', () => {
    const stations = points.find(point => point.name === 'rated power')!.stations;
    expect(stations.map(one => [one.part.role, Math.round((one.speed.si * 30) / Math.PI)])).toEqual([
      ['engine', 2300],
      ['gear', 1126],
      ['propeller', 1126],
    ]);
  });
});
