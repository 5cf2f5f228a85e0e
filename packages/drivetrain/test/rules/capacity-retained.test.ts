import { describe, expect, it } from 'vitest';
import { LineAnalysis } from '../../src/index.js';
import { CAPACITY_RULES } from '../../src/rules/capacity/index.js';
import { SPEED_RULES } from '../../src/rules/speed/index.js';
import { gearEntry, type PlainLine, place, quantity, ratio } from '../build.js';
import {
  type Changes,
  craft,
  GEAR,
  line,
  offered,
  powerAt,
  rated,
  repower,
  ruleOf,
  said,
} from './capacity-fixture.js';

const shaftTorque = ruleOf(CAPACITY_RULES, 'capacity/retained-shaft-torque');
const overload = ruleOf(CAPACITY_RULES, 'capacity/retained-propeller-overload');
const light = ruleOf(CAPACITY_RULES, 'capacity/retained-propeller-light');
const perRpm = ruleOf(SPEED_RULES, 'speed/vessel-speed-per-engine-rpm');

/** An engine that gives its greatest torque at rated power. */
const at = (power: string, speed: string, gearRatio: string): Changes => ({
  engine: {
    ratings: [rated(power, speed)],
    peakTorque: { y: quantity('torque', '100 N.m'), x: quantity('rotational speed', '1500 rpm') },
  },
  gear: { ratios: [offered(gearRatio, gearRatio, '1 kW/rpm')] },
  ratio: gearRatio,
});
const GRADE = {
  name: 'high-strength-stainless',
  origin: place('shaft material'),
  torsionalYield: {
    value: quantity('pressure', '70000 psi'),
    written: '70000 psi',
    origin: place('shaft material.torsional yield'),
  },
};
const shafts = (facts: object, change?: 'retained') => [{ ...facts, ...(change ? { change } : {}) }];

/** Both shaft and propeller stay; engine and gear are new. */
function kept(before: Changes, after: Changes, shaft: object = {}): ReturnType<typeof repower> {
  const was = line(
    { ...before, line: { shafts: shafts(shaft) } as Partial<PlainLine> },
    { engine: 'Old-Eight', gear: 'Rowan-7' },
  );
  const is = line({
    ...after,
    propeller: { change: 'retained' },
    line: { shafts: shafts(shaft, 'retained') } as Partial<PlainLine>,
  });
  return repower(was, is);
}

describe('capacity/retained-shaft-torque', () => {
  it('computes torque: 150 hp at 2400 through 2.0 and at 3600 through 3.0 are both 656 lbf·ft', () => {
    const slow = at('150 hp', '2400 rpm', '2:1');
    const fast = at('150 hp', '3600 rpm', '3:1');
    const lossless = {
      assumptions: [
        {
          about: 'gear efficiency',
          origin: place('assume'),
          quantity: { value: ratio('100 %'), written: '100 %', origin: place('assume') },
        },
      ],
    };
    for (const one of [slow, fast]) {
      const about = craft({ Centre: line(one) }, lossless);
      const analysis = new LineAnalysis(about.arrangements[0]!.lines[0]!, about);
      const torque = analysis.loads(analysis.rated.value!).shaft!.torque;
      // 5252.113 × 150 / 2400 × 2 = 656.51 lbf·ft
      expect(torque.si / 1.35581795).toBeCloseTo(656.514, 2);
    }
    const about = kept(slow, fast);
    for (const rule of [shaftTorque, overload, light, perRpm]) {
      expect(said(rule, about).map(one => one.outcome)).toSatisfy((list: string[]) =>
        list.every(one => one === 'holds'),
      );
    }
    expect(said(shaftTorque, about)[0]!.message).toBe(
      'Centre: torque of the retained shaft goes from 636.8 lbf·ft to 636.8 lbf·ft: it does not rise.',
    );
  });

  it('speaks when the ratio deepens at the same power and speed', () => {
    const about = kept(at('150 hp', '2400 rpm', '2:1'), at('150 hp', '2400 rpm', '2.5:1'));
    const [verdict] = said(shaftTorque, about);
    expect(verdict).toMatchObject({ outcome: 'fails', severity: 'warning' });
    expect(verdict!.message).toMatchInlineSnapshot(
      `"Centre: torque of the retained shaft rises 25 %, from 636.8 lbf·ft to 796 lbf·ft; its capacity is unknown without its diameter and the torsional yield of its grade. Prove that it is strong enough, fit a larger or stronger shaft, or choose a shallower ratio."`,
    );
  });

  it.each([
    ['1.75 in', 'warning', 'its factor against torsional yield falls from 9.6 to 7.7'],
    ['1 in', 'error', 'its factor against torsional yield falls from 1.8 to 1.4'],
  ])('gives the factor of a %s shaft of known grade before and after', (diameter, severity, words) => {
    // St π d³/16 ÷ T: 70000 psi × π × 1.75³/16 = 73 662 lbf·in over 636.8 × 12 = 7641.8 lbf·in is 9.64.
    const shaft = {
      material: 'high-strength-stainless',
      diameter: quantity('length', diameter),
      grade: GRADE,
    };
    const about = kept(at('150 hp', '2400 rpm', '2:1'), at('150 hp', '2400 rpm', '2.5:1'), shaft);
    const [verdict] = said(shaftTorque, about);
    expect(verdict!.severity).toBe(severity);
    expect(verdict!.message).toContain(words);
  });

  it.each([
    [
      'new engine unrated',
      at('150 hp', '2400 rpm', '2:1'),
      { ...at('150 hp', '2400 rpm', '2:1'), engine: { ratings: [] } },
    ],
    [
      'old engine unrated',
      { ...at('150 hp', '2400 rpm', '2:1'), engine: { ratings: [] } },
      at('150 hp', '2400 rpm', '2:1'),
    ],
  ] as [string, Changes, Changes][])('cannot tell with the %s', (_, before, after) => {
    expect(said(shaftTorque, kept(before, after)).map(one => one.outcome)).toEqual(['cannot tell']);
  });

  it('takes peak torque where both engines give it', () => {
    const peak = (torque: string): Changes => ({
      engine: { peakTorque: { y: quantity('torque', torque), x: quantity('rotational speed', '1500 rpm') } },
    });
    expect(said(shaftTorque, kept(peak('1300 N.m'), peak('1480 N.m')))[0]!.message).toContain('rises 14 %');
    const [open] = said(shaftTorque, kept({ engine: { peakTorque: undefined } }, peak('1480 N.m')));
    expect(open!.outcome).toBe('cannot tell');
    expect(open!.message).toContain('Known so far: at rated power it goes from ');
  });

  it('offers the ratio with which torque does not rise', () => {
    const gear = { ...GEAR };
    const about = kept({ ratio: '2.04:1' }, { ratio: '2.52:1' });
    const [verdict] = said(shaftTorque, about, { gears: [gearEntry('Alder-63', gear)] });
    expect(verdict!.routes).toEqual(['Use 2.04:1: shaft torque does not rise, the shaft turns 24 % faster']);
  });

  it('says nothing of a shaft that is new, or of a line as found', () => {
    const about = repower(
      line({ ...at('150 hp', '2400 rpm', '2:1') }),
      line({ ...at('150 hp', '2400 rpm', '4:1') }),
    );
    expect(said(shaftTorque, about)).toEqual([]);
  });
});

describe('a retained propeller', () => {
  const both = (before: Changes, after: Changes) => {
    const about = kept(before, after);
    return { overload: said(overload, about)[0]!, light: said(light, about)[0]! };
  };

  it('asks the third power of its speed: without its 2.5:1 reduction about 16 times the power', () => {
    // 2.5³ = 15.6; the loss of the gear falls away, so a little less against what arrives.
    const before = at('40 hp', '2800 rpm', '2.5:1');
    const about = repower(line(before), {
      ...line({ ...before, propeller: { change: 'retained' } }),
      gear: undefined,
    } as unknown as PlainLine);
    const [verdict] = said(overload, about);
    expect(verdict!.outcome).toBe('fails');
    expect(verdict!.message).toContain('about 15.2 times the power');
  });

  it.each([
    [
      'the same power and speed',
      at('300 kW', '2300 rpm', '2:1'),
      at('300 kW', '2300 rpm', '2:1'),
      'holds',
      'holds',
    ],
    ['3 % faster', at('300 kW', '2300 rpm', '2:1'), at('300 kW', '2369 rpm', '2:1'), 'holds', 'holds'],
    ['4 % faster', at('300 kW', '2300 rpm', '2:1'), at('300 kW', '2392 rpm', '2:1'), 'fails', 'holds'],
    ['11 % more power', at('300 kW', '2300 rpm', '2:1'), at('333 kW', '2300 rpm', '2:1'), 'holds', 'holds'],
    ['12 % more power', at('300 kW', '2300 rpm', '2:1'), at('336 kW', '2300 rpm', '2:1'), 'holds', 'fails'],
    [
      'faster engine, ratio in step',
      at('150 hp', '2400 rpm', '2:1'),
      at('150 hp', '3600 rpm', '3:1'),
      'holds',
      'holds',
    ],
  ] as const)('%s', (_, before, after, tooMuch, tooLittle) => {
    const verdicts = both(before, after);
    expect([verdicts.overload.outcome, verdicts.light.outcome]).toEqual([tooMuch, tooLittle]);
  });

  it('counts a running take-off and hot air against what arrives', () => {
    const before = at('300 kW', '2300 rpm', '2:1');
    const after = (engine: Changes['engine']): Changes => ({
      ...before,
      engine: { ...before.engine, ...engine },
    });
    const takeOff = (state: 'on' | 'off') =>
      both(before, after({ takeOff: quantity('power', '40 kW'), takeOffState: state })).overload.outcome;
    expect([takeOff('off'), takeOff('on')]).toEqual(['holds', 'fails']);
    // ISO reference to 318 K air and 305 K coolant: α = 0.88694 at η_m 0.80, turbocharged and charge-cooled.
    const hot = {
      airTemperature: { label: 'T', symbol: 'T', dimension: 'temperature', si: 318 },
      coolantTemperature: { label: 'T', symbol: 'T', dimension: 'temperature', si: 305 },
    } as const;
    const warm = both(before, after({ ...hot, aspiration: 'turbocharged charge-cooled' })).overload;
    expect(warm.outcome).toBe('fails');
    // 110 % of the power delivered to it is the capacity.
    expect(1 + warm.margin!).toBeCloseTo(1.1 * 0.88694, 4);
    expect(both(before, after(hot)).overload).toMatchObject({ outcome: 'cannot tell' });
  });

  it('is silent on a controllable-pitch propeller and on a new one', () => {
    const about = repower(
      line(at('300 kW', '2300 rpm', '2:1')),
      line({
        ...at('600 kW', '2300 rpm', '2:1'),
        propeller: { change: 'retained', kind: 'controllable pitch' },
      }),
    );
    expect([...said(overload, about), ...said(light, about)]).toEqual([]);
  });
});

describe('speed/vessel-speed-per-engine-rpm', () => {
  it('tells the owner when the same engine turns the same propeller slower', () => {
    const [verdict] = said(perRpm, kept(at('300 kW', '2300 rpm', '2:1'), at('300 kW', '2300 rpm', '2.5:1')));
    expect(verdict).toMatchObject({ outcome: 'fails', severity: 'note' });
    expect(verdict!.message).toContain('needs about 25 % more engine speed');
  });

  it('cannot tell without the ratio', () => {
    const about = repower(line({}), {
      ...line({ propeller: { change: 'retained' } }),
      gear: { ratio: undefined },
    } as unknown as PlainLine);
    expect(said(perRpm, about)[0]).toMatchObject({ outcome: 'cannot tell', missing: ['ratio of the gear'] });
  });
});

it('keeps the figures of a rating: 300 kW at 2300 rpm is 1245.6 N·m, and 3020.5 N·m behind 2.5:1 at 97 %', () => {
  // 9549.297 × 300 / 2300, and × 2.5 × 0.97.
  const about = craft({
    Centre: line({ gear: { ratios: [offered('2.5:1', '2.5:1', '1 kW/rpm')] }, ratio: '2.5:1' }),
  });
  const analysis = new LineAnalysis(about.arrangements[0]!.lines[0]!, about);
  expect(analysis.rated.value!.torque.si).toBeCloseTo(1245.56, 2);
  expect(analysis.loads(analysis.rated.value!).shaft!.torque.si).toBeCloseTo(3020.48, 2);
  expect(powerAt('300 kW', '2300 rpm').y.si).toBe(300_000);
});
