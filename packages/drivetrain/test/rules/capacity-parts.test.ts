import { describe, expect, it } from 'vitest';
import type { Certificate, EngineFacts, Vessel } from '../../src/index.js';
import { CAPACITY_RULES } from '../../src/rules/capacity/index.js';
import {
  count,
  motorEntry,
  open,
  type Plain,
  type PlainLine,
  place,
  quantity,
  ratio,
  sense,
  transferEntry,
} from '../build.js';
import {
  type Changes,
  craft,
  DUTY,
  line,
  offered,
  powerAt,
  rated,
  ruleOf,
  said,
} from './capacity-fixture.js';

const rule = (id: string) => ruleOf(CAPACITY_RULES, `capacity/${id}`);
const of = (changes: Changes) => craft({ Centre: line(changes) });
const first = (id: string, about: Vessel) => said(rule(id), about)[0];
const fact = <T>(value: T | undefined) => ({ value, written: String(value), origin: place('written') });

describe('capacity/clutch-holding', () => {
  // Bhandari, Design of Machine Elements, example 11.8: 8 faces, 75/150 mm, μ 0.1, 2650.72 N by uniform wear: 119.282 N·m.
  const BHANDARI = {
    faces: count(8),
    outerDiameter: quantity('length', '150 mm'),
    innerDiameter: quantity('length', '75 mm'),
    friction: ratio('0.1'),
    clampForce: quantity('force', '2650.72 N'),
  };
  const clutches = (plates: object): Changes => ({
    gear: {
      ratios: [
        offered('2.04:1', '2.043:1', '1 kW/rpm', {
          clutches: [
            { name: 'A', output: sense('same') },
            { name: 'B', output: sense('opposite'), ...plates },
          ],
        }),
      ],
    },
  });
  const small: Plain<EngineFacts> = {
    ratings: [rated('10 kW', '2300 rpm')],
    peakTorque: { y: quantity('torque', '79 N.m'), x: quantity('rotational speed', '1500 rpm') },
  };

  it('holds the published 119.28 N·m, and shows uniform pressure beside it', () => {
    const [verdict] = said(rule('clutch-holding'), of({ ...clutches(BHANDARI), engine: small }));
    expect(verdict!.outcome).toBe('holds');
    expect(verdict!.margin).toBeCloseTo(119.2824 / 79 - 1, 5);
    expect(verdict!.message).toContain('holds 119.3 N·m worn in (123.7 N·m new) against 79 N·m');
  });

  it.each([
    ['ahead', 'B', 'error'],
    ['astern', 'A', 'warning'],
  ])('fails below the service factor, %s', (direction, ahead, severity) => {
    const engine = {
      ...small,
      peakTorque: { y: quantity('torque', '90 N.m'), x: quantity('rotational speed', '1500 rpm') },
    };
    const [verdict] = said(rule('clutch-holding'), of({ ...clutches(BHANDARI), engine, ahead }));
    expect(verdict).toMatchObject({ outcome: 'fails', severity });
    expect(verdict!.message).toContain(`${direction} at peak torque: service factor 1.33, 1.5 required`);
  });

  it.each([
    ['its wanted factor', { clutchServiceFactor: 1.8 }, 'fails'],
    ['a lower one', { clutchServiceFactor: 1.2 }, 'holds'],
  ])('takes %s of the vessel', (_, criteria, outcome) => {
    const more = {
      criteria: {
        origin: DUTY.origin,
        clutchServiceFactor: fact({ ...ratio('1'), si: criteria.clutchServiceFactor }),
      },
    };
    expect(
      said(
        rule('clutch-holding'),
        craft({ Centre: line({ ...clutches(BHANDARI), engine: small }) }, more),
      )[0]!.outcome,
    ).toBe(outcome);
  });

  it('takes the piston at the lowest oil pressure less the springs', () => {
    const { clampForce: _, ...plates } = BHANDARI;
    const piston = {
      pistonOuterDiameter: quantity('length', '155 mm'),
      pistonInnerDiameter: quantity('length', '90 mm'),
      springForce: quantity('force', '900 N'),
    };
    const about = of({
      ...clutches({ ...plates, ...piston, oilPressure: quantity('pressure', '20 bar') }),
      engine: small,
    });
    // F = 2 MPa × π/4 (0.155² − 0.09²) − 900 = 24 114.6 N; T = 8 × 0.1 × F × 0.05625 = 1085.2 N·m
    expect(said(rule('clutch-holding'), about)[0]!.margin).toBeCloseTo(1085.16 / 79 - 1, 2);
    const without = of({ ...clutches({ ...plates, ...piston }), engine: small });
    expect(said(rule('clutch-holding'), without)[0]).toMatchObject({
      outcome: 'cannot tell',
      missing: ['oil pressure of clutch B of gear Alder-63'],
    });
  });

  it('counts faces from plates that alternate', () => {
    const { faces: _, ...plates } = BHANDARI;
    const packed = { ...plates, steelPlates: count(5), frictionPlates: count(4) };
    expect(said(rule('clutch-holding'), of({ ...clutches(packed), engine: small }))[0]!.message).toContain(
      '119.3 N·m',
    );
  });

  it('carries less torque at a clutch that turns faster than the input', () => {
    const fast = said(
      rule('clutch-holding'),
      of({ ...clutches({ ...BHANDARI, speedFactor: ratio('1.25') }), engine: small }),
    )[0]!;
    expect(fast.margin).toBeCloseTo((119.2824 * 1.25) / 79 - 1, 5);
  });

  it('is silent on a clutch of which nothing is said', () => {
    expect(said(rule('clutch-holding'), of({}))).toEqual([]);
  });
});

describe('couplings and transfers', () => {
  const coupling = (torque: string | undefined, kind: 'rigid' | 'flexible' = 'flexible') =>
    of({ line: { couplings: [{ kind, ...(torque ? { torque: quantity('torque', torque) } : {}) }] } });

  it.each([
    ['a damper that carries peak torque', coupling('1480 N.m'), 'holds'],
    ['one a little smaller', coupling('1479 N.m'), 'fails'],
    ['one without a figure', coupling(undefined), 'cannot tell'],
    ['a rigid one without a figure', coupling(undefined, 'rigid'), undefined],
  ])('%s', (_, about, outcome) => {
    expect(first('coupling-torque', about)?.outcome).toBe(outcome);
  });

  it('carries gear ratio and efficiency to a transfer behind the gear', () => {
    const behind = (torque: string) =>
      of({
        line: {
          transfers: [
            { from: transferEntry('Reed-2', { torque: quantity('torque', torque), exact: ratio('1:1') }) },
          ],
        },
      });
    // 1480 × 2.043 × 0.97 = 2932.9 N·m
    expect(first('transfer-torque', behind('2933 N.m'))!.margin).toBeCloseTo(2933 / 2932.93 - 1, 5);
    expect(first('transfer-torque', behind('2932 N.m'))!.outcome).toBe('fails');
  });
});

describe('what an engine rating says', () => {
  const rating = (more: object) => of({ engine: { ratings: [rated('300 kW', '2300 rpm', more)] } });
  it.each([
    ['rating-undefined', 'all of it', {}, 'holds'],
    ['rating-undefined', 'no standard', { standard: undefined }, 'fails'],
    ['rating-undefined', 'no hours', { hours: undefined }, 'fails'],
    ['rating-undefined', 'open hours', { hours: open() }, 'cannot tell'],
    ['power-point', 'crankshaft', {}, 'holds'],
    ['power-point', 'propeller shaft', { measuredAt: 'propeller shaft' }, 'holds'],
    ['power-point', 'no point', { measuredAt: undefined }, 'fails'],
    ['power-point', 'an open point', { measuredAt: open() }, 'cannot tell'],
    ['engine-duty', 'a lighter class', { duty: 'light' }, 'fails'],
    ['engine-duty', 'a heavier class without hours of the vessel', { duty: 'heavy' }, 'cannot tell'],
  ] as [string, string, object, string | undefined][])('%s: %s', (id, _, more, outcome) => {
    const at = (more as { duty?: string }).duty;
    const changes = { engine: { ratings: [rated('300 kW', '2300 rpm', more)] }, ...(at ? { at } : {}) };
    expect(first(id, at ? of(changes) : rating(more))?.outcome).toBe(outcome);
  });

  it.each([
    [1500, 'holds'],
    [3000, 'holds'],
    [3001, 'fails'],
    [undefined, 'cannot tell'],
  ])('engine-duty: a vessel that runs %s hours a year', (hours, outcome) => {
    const duty = { ...DUTY, hours: fact(hours === undefined ? undefined : count(hours)) };
    expect(first('engine-duty', craft({ Centre: line() }, { duty }))!.outcome).toBe(outcome);
  });

  it('loads the gear by the heavier reading until the point of measurement is said', () => {
    const margin = (measuredAt: string | undefined) =>
      first(
        'gear-input-torque',
        of({
          engine: {
            ratings: [rated('300 kW', '1500 rpm', { measuredAt })],
            peakTorque: { y: quantity('torque', '1000 N.m'), x: quantity('rotational speed', '1200 rpm') },
          },
        }),
      )!.margin;
    expect(margin(undefined)).toBe(margin('propeller shaft'));
    expect(margin(undefined)).toBeLessThan(margin('crankshaft')!);
  });
});

describe('capacity/take-off', () => {
  const takeOff = (engine: Plain<EngineFacts>) => first('take-off', of({ engine }));
  it.each([
    ['none', {}, undefined],
    ['state not said', { takeOff: quantity('power', '12 kW') }, 'fails'],
    ['on', { takeOff: quantity('power', '12 kW'), takeOffState: 'on' }, 'holds'],
    ['power open', { takeOff: open(), takeOffState: 'on' }, 'cannot tell'],
    ['more than the engine gives', { takeOff: quantity('power', '310 kW'), takeOffState: 'on' }, 'fails'],
  ] as [string, Plain<EngineFacts>, string | undefined][])('%s', (_, engine, outcome) => {
    expect(takeOff(engine)?.outcome).toBe(outcome);
  });

  it('is deducted from the shaft and stays on the gear', () => {
    // (300 − 12) × 0.97 = 279.36 kW
    expect(takeOff({ takeOff: quantity('power', '12 kW'), takeOffState: 'on' })!.message).toContain(
      '279.4 kW is delivered to the propeller shaft',
    );
    const margin = (engine: Plain<EngineFacts>) => first('gear-input-torque', of({ engine }))!.margin;
    expect(margin({ takeOff: quantity('power', '12 kW'), takeOffState: 'on' })).toBe(margin({}));
  });
});

describe('capacity/certificate', () => {
  const paper = (
    certificate: Omit<Certificate, 'origin'>,
    lines = { Centre: line() } as Record<string, PlainLine>,
  ) => first('certificate', craft(lines, { certificate: { origin: place('certificate'), ...certificate } }));
  const two = { Port: line(), Starboard: line() };
  it.each([
    ['enough for one', { power: fact(quantity('power', '300 kW')) }, undefined, 'holds'],
    ['not enough for two', { power: fact(quantity('power', '300 kW')) }, two, 'fails'],
    [
      'limited by a document',
      { power: fact(quantity('power', '300 kW')), limitedBy: fact('statement 4') },
      two,
      'holds',
    ],
    [
      'limited by an open document',
      { power: fact(quantity('power', '300 kW')), limitedBy: fact<string>(undefined) },
      two,
      'fails',
    ],
    ['an open power', { power: fact(undefined) }, undefined, 'cannot tell'],
  ] as [string, Omit<Certificate, 'origin'>, Record<string, PlainLine> | undefined, string][])(
    '%s',
    (_, certificate, lines, outcome) => {
      expect(paper(certificate, lines)!.outcome).toBe(outcome);
    },
  );
  it('is silent without a certificate', () => {
    expect(first('certificate', craft({ Centre: line() }))).toBeUndefined();
  });
});

describe('capacity/motor-equivalent', () => {
  const motor = (facts: object) =>
    first(
      'motor-equivalent',
      craft({
        Centre: {
          motor: { from: motorEntry('Eddy-30', { saidToEqual: powerAt('40 hp', '1100 rpm'), ...facts }) },
        },
      }),
    );

  it('reproduces 40 hp at 1100 rpm against 90 lbf·ft: 191 lbf·ft needed, about 755 rpm and 13 hp', () => {
    const verdict = motor({
      torque: quantity('torque', '90 lbf.ft'),
      baseSpeed: quantity('rotational speed', '1100 rpm'),
    })!;
    expect(verdict.outcome).toBe('fails');
    expect(verdict.message).toMatchInlineSnapshot(
      `"Centre: 40 hp at 1100 rpm of shaft speed needs 191 lbf·ft; motor Eddy-30 gives 90 lbf·ft. Expect about 755 rpm and 13 hp with the same propeller. Fit a reduction gear or a larger motor."`,
    );
  });

  it.each([
    ['enough torque', { torque: quantity('torque', '191 lbf.ft') }, 'holds'],
    ['torque of its power', { power: powerAt('40 hp', '1100 rpm') }, 'holds'],
    [
      'enough torque at low speed, too little power',
      { torque: quantity('torque', '250 lbf.ft'), power: powerAt('30 hp', '600 rpm') },
      'fails',
    ],
    [
      'too slow',
      { torque: quantity('torque', '250 lbf.ft'), topSpeed: quantity('rotational speed', '1000 rpm') },
      'fails',
    ],
    ['neither torque nor power', {}, 'cannot tell'],
  ])('%s', (_, facts, outcome) => {
    expect(motor(facts)!.outcome).toBe(outcome);
  });
});
