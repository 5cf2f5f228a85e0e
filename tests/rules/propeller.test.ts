import { findRule, LineAnalysis, predictedPoints } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';

const base = (id: string) => findRule(id)!.examples().passing;
const change = (text: string, ...changes: readonly (readonly [string, string])[]) =>
  changes.reduce((all, [from, to]) => {
    expect(all).toContain(from);
    return all.replace(from, to);
  }, text);

async function verdictsOf(text: string, rule: string) {
  const checked = await checkText(text);
  expect(checked.findings.filter(one => one.problem).map(one => one.message)).toEqual([]);
  return checked.check.vessels.flatMap(one => one.verdicts).filter(one => one.rule === rule);
}

async function propulsionOf(text: string) {
  const { check } = await checkText(text);
  const { vessel } = check.vessels[0]!;
  const analysis = new LineAnalysis(vessel.arrangements.at(-1)!.lines[0]!, vessel);
  return { analysis, result: analysis.propulsion! };
}

const HULL = / {2}hull planing \{[\s\S]*?\n {2}\}/;
const withHull = (hull: string) => base('propeller/absorbed-power').replace(HULL, `  hull ${hull}`);

describe('how propeller, hull and engine go together', () => {
  it('takes the torque of the published series at the given speed', async () => {
    // B6-65, P/D 1.4, J 1.2: 10KQ 0.420257 by a third-party evaluation of Oosterveld and van Oossanen's polynomials.
    const turns = 2300 / 2.043 / 60;
    const knots = (1.2 * turns * 3600) / 1852;
    const text = change(
      withHull(`planing { speed at rated power ${knots.toFixed(6)} kn  wake fraction 0 }`),
      [
        'blades 4  diameter 30 in  pitch 27 in  area ratio 0.72',
        'blades 6  diameter 1 m  pitch 1.4 m  area ratio 0.65',
      ],
    );
    const { result } = await propulsionOf(text);
    const asked = 2 * Math.PI * 1025 * turns ** 3 * 0.0420257;
    expect(result.value!.rated.power.si / asked).toBeCloseTo(1, 4);
    expect(result.value!.method).toBe('given speed');
  });

  it('balances thrust with the resistance that is given', async () => {
    const { result, analysis } = await propulsionOf(base('propeller/absorbed-power'));
    const { full, screws } = result.value!;
    if (!full.applies) throw new Error(full.reason);
    // Between the given rows of 18 kN at 19 kn and 23 kN at 23 kn, and nearly straight there.
    const knots = (full.vesselSpeed.si * 3600) / 1852;
    const drag = 18000 + ((23000 - 18000) * (knots - 19)) / 4;
    expect((screws * full.thrust.si * (1 - 0.1)) / drag).toBeCloseTo(1, 2);
    expect(full.loadFraction!.si).toBeCloseTo(1, 3);
    const points = predictedPoints(analysis).map(({ name, run }) => [name, run.applies]);
    expect(points.at(-1)).toEqual(['rated power', true]);
  });

  it.each([
    ['planing { speed at rated power 19 kn }', 'wake fraction of the hull'],
    ['planing { speed at rated power unknown  wake fraction 0.1 }', 'speed at rated power of the hull'],
    [
      'planing { displacement 12 t  deadrise 18 deg  LCG 4 m  VCG 1 m  wake fraction 0.1  thrust deduction 0.1 }',
      'chine beam of the hull',
    ],
    [
      'displacement { waterline length 11 m  displacement 12 t  beam 3.4 m  draft 1 m  LCB -2 %  midship coefficient 0.8 }',
      'waterplane coefficient of the hull',
    ],
    [
      'planing { resistance 10 kN at 12 kn  wake fraction 0.1  thrust deduction 0.1 }',
      'resistance of the hull at two speeds or more',
    ],
    [
      'planing { shaft power 90 kW at 12 kn  shaft power 290 kW at 20 kn  wake fraction 0.1  thrust deduction 0.1 }',
      'propulsive efficiency of the hull',
    ],
  ])('waits for what the method needs: %s', async (hull, what) => {
    const [verdict] = await verdictsOf(withHull(hull), 'propeller/absorbed-power');
    expect(verdict!.outcome).toBe('cannot tell');
    expect(verdict!.missing.map(one => one.what)).toContain(what);
  });

  it('says plainly where a method does not apply', async () => {
    // A heavy hull with its weight far forward does not plane at any speed that this propeller reaches.
    const heavy =
      'planing { displacement 60 t  chine beam 2.4 m  deadrise 25 deg  LCG 9 m  VCG 1 m  wake fraction 0.1  thrust deduction 0.1 }';
    const [verdict] = await verdictsOf(withHull(heavy), 'propeller/absorbed-power');
    expect(verdict!.outcome).toBe('cannot tell');
    expect(verdict!.message).toContain('does not apply here');
    const pitch = change(base('propeller/absorbed-power'), ['pitch 27 in', 'pitch 60 in']);
    const [steep] = await verdictsOf(pitch, 'propeller/absorbed-power');
    expect(steep!.message).toContain('does not apply here');
    expect(steep!.message).toContain('pitch ratio');
  });

  it('flags a displacement hull that is broader than the method was made for', async () => {
    const broad =
      'displacement { waterline length 11 m  displacement 12 t  beam 3.6 m  draft 1 m  LCB -2 %  midship coefficient 0.75  waterplane coefficient 0.8 }';
    const { result } = await propulsionOf(withHull(broad));
    const said = result.value?.outside.join(' ') ?? result.refusal!;
    expect(said).toMatch(/length over beam|says nothing/);
  });
});

it('says of the factors for four blades that they are from memory', async () => {
  const text = findRule('propeller/tip-clearance')!.examples().failing;
  const { check } = await checkText(
    change(text, ['blades 4', 'blades 3'], ['axis to hull 400 mm', 'axis to hull 415 mm']),
  );
  const titles = check.vessels
    .flatMap(one => one.verdicts)
    .filter(one => one.rule === 'propeller/tip-clearance')
    .flatMap(one => one.routes())
    .map(one => one.title);
  expect(
    titles.some(one => /^Take four blades .* by the handbook's factors \(from memory\): /.test(one)),
  ).toBe(true);
});

const BORE = base('propeller/keyway');
const ROOM = base('propeller/tip-clearance');

describe.each([
  // Job practice: 21 in leaves 2.4 in, 11 %; 15 % was chosen.
  [
    'propeller/tip-clearance',
    ROOM,
    [
      ['diameter 26 in', 'diameter 21 in'],
      ['axis to hull 430 mm', 'axis to hull 12.9 in'],
    ],
    'fails',
    /11 %/,
  ],
  [
    'propeller/tip-clearance',
    ROOM,
    [['axis to hull 430 mm', 'axis to hull 325 mm']],
    'fails',
    /does not fit/,
  ],
  ['propeller/other-clearances', ROOM, [['  strut clearance 110 mm', '']], 'cannot tell', /strut clearance/],
  [
    'propeller/bore-taper',
    BORE,
    [['bore taper 1:16', 'bore taper 1:10']],
    'fails',
    /propeller 1:10, shaft 1:16/,
  ],
  ['propeller/bore-taper', BORE, [['  taper 1:16', '  taper 1:12']], 'fails', /re-boring gives no contact/],
  // SAE J755: 9/16 in for 2 1/4 in.
  [
    'propeller/keyway',
    BORE,
    [
      ['diameter 2 1/2 in', 'diameter 2 1/4 in'],
      ['taper large end 2 1/2 in', 'taper large end 2 1/4 in'],
      ['keyway width 5/8 in }', 'keyway width 9/16 in }'],
      ['keyway width 5/8 in  hub', 'keyway width 1/2 in  hub'],
    ],
    'fails',
    /0\.5625 in for 2 1\/4 in/,
  ],
  [
    'propeller/bore-large-end',
    BORE,
    [['bore large end 2 1/2 in', 'bore large end 2.55 in']],
    'fails',
    /0\.8 in too far forward/,
  ],
  ['propeller/hub-length', BORE, [['hub length 7 1/2 in', 'hub length 8 3/4 in']], 'fails', /past the taper/],
  // An inch of diameter takes half an inch of clearance.
  [
    'propeller/clearance-by-diameter',
    base('propeller/clearance-by-diameter'),
    [['tip clearance 112 mm', 'tip clearance 99 mm']],
    'fails',
    /112 mm/,
  ],
  [
    'propeller/pair-pitch',
    base('propeller/pair-pitch'),
    [['pitch 24 in', 'pitch 24 in [measured 2026-01-14]']],
    'cannot tell',
    /measured pitch/,
  ],
  [
    'propeller/pair-pitch',
    base('propeller/pair-pitch'),
    [['pitch 24 in', 'pitch 23.6 in']],
    'holds',
    /1\.7 %/,
  ],
  [
    'propeller/stamped-size',
    base('propeller/stamped-size'),
    [['pitch 23.6 in [measured 2026-01-14]', '']],
    'fails',
    /no check has a pitch/,
  ],
  [
    'propeller/cup',
    base('propeller/cup'),
    [['cup none', 'cup light  effective pitch 27.5 in']],
    'holds',
    /27\.5 in/,
  ],
] as const)('%s', (rule, text, changes, outcome, says) => {
  it(`${outcome}: ${changes.map(([, to]) => to.trim() || 'a fact taken away').join(', ')}`, async () => {
    const [verdict] = await verdictsOf(change(text, ...changes), rule);
    expect(verdict!.outcome, verdict!.message).toBe(outcome);
    expect(verdict!.message).toMatch(says);
  });
});

describe('requirements', () => {
  const requiring = (text: string) =>
    change(base('propeller/absorbed-power'), [
      '  arrangement proposed {',
      `  require ${text}\n  arrangement proposed {`,
    ]);

  it.each([
    ['speed at least 18 kn at full power', 'holds'],
    ['speed at least 22 kn at full power', 'fails'],
    ['shaft speed at most 1130 rpm', 'holds'],
    ['shaft torque at most 2000 N.m at full power', 'fails'],
    ['tip speed at most 46 m/s', 'holds'],
    ['propeller demand at most 95 %', 'fails'],
    ['gear torque margin at least 5 %', 'holds'],
    ['tip clearance at least 15 %', 'cannot tell'],
    ['bollard thrust at least 60 kN', 'fails'],
  ])('require %s: %s', async (text, outcome) => {
    const verdicts = await verdictsOf(requiring(text), 'trace/requirement-met');
    expect(
      verdicts.map(one => one.outcome),
      verdicts[0]?.message,
    ).toEqual([outcome]);
    if (outcome !== 'cannot tell') expect(verdicts[0]!.margin).toBeTypeOf('number');
    expect(await verdictsOf(requiring(text), 'trace/requirement-unverified')).toMatchObject([
      { outcome: 'holds' },
    ]);
  });

  it.each([
    'draught at most 1 m',
    'speed at least 22 kn at half power',
    'tip clearance at least 15 % at full power',
    'shaft torque is 2000 N.m',
  ])('require %s: nothing verifies it', async text => {
    expect(await verdictsOf(requiring(text), 'trace/requirement-met')).toEqual([]);
    const [verdict] = await verdictsOf(requiring(text), 'trace/requirement-unverified');
    expect(verdict!.outcome).toBe('fails');
  });

  it('a bound in a unit that does not measure it is an error of units, and is not met', async () => {
    const text = requiring('speed at least 22 m');
    expect(await verdictsOf(text, 'units/miles')).toMatchObject([{ outcome: 'fails', severity: 'error' }]);
    expect(await verdictsOf(text, 'trace/requirement-met')).toMatchObject([{ outcome: 'cannot tell' }]);
  });
});
