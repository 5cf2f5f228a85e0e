import { named } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { CAPACITY_RULES } from '../../src/rules/capacity/index.js';
import { gearEntry, quantity } from '../build.js';
import {
  type Changes,
  craft,
  DUTY,
  GEAR,
  line,
  offered,
  rated,
  ruleOf,
  said,
  torqueAt,
} from './capacity-fixture.js';

const torque = ruleOf(CAPACITY_RULES, 'capacity/gear-input-torque');
const ratings = (...list: readonly object[]): Changes => ({
  gear: { ratios: [offered('2.04:1', '2.043:1', '0.18 kW/rpm', { ratings: list })] },
});
const perSpeed = (written: string) => quantity('power per speed', written);
const rpm = (low: number, high: number) => ({
  low: quantity('rotational speed', `${low} rpm`),
  high: quantity('rotational speed', `${high} rpm`),
});
const of = (changes: Changes) => craft({ Centre: line(changes) });
const outcomes = (changes: Changes, more = {}) =>
  said(torque, craft({ Centre: line(changes) }, more)).map(one => one.outcome);

describe('capacity/gear-input-torque', () => {
  it('compares at rated power and at peak torque, and the worse one judges', () => {
    const [verdict] = said(torque, of({}));
    // 0.18 kW/rpm is 0.18 × 9549.297 = 1718.87 N·m; peak torque is 1480 N·m.
    expect(verdict!.margin).toBeCloseTo(1718.8734 / 1480 - 1, 6);
    expect(verdict!.outcome).toBe('holds');
  });

  it('passes at rated power and fails at peak torque', () => {
    const [verdict] = said(torque, of(ratings({ duty: 'medium', powerPerSpeed: perSpeed('0.14 kW/rpm') })));
    expect(verdict).toMatchObject({ outcome: 'fails', severity: 'error' });
    expect(verdict!.message).toMatchInlineSnapshot(
      `"Centre: input 1480 N·m at peak torque (1500 rpm) exceeds the 1337 N·m that gear Alder-63 is rated for at 2.04:1 (0.14 kW/rpm, medium duty): 9.7 % short. Clutch and teeth wear out early. Choose another ratio, a larger gear or a lower engine rating."`,
    );
  });

  it.each([
    ['no rating', ratings(), 'cannot tell'],
    ['only a lighter one', ratings({ duty: 'light', powerPerSpeed: perSpeed('0.3 kW/rpm') }), 'cannot tell'],
    [
      'a heavier one stands in',
      ratings({ duty: 'continuous', powerPerSpeed: perSpeed('0.18 kW/rpm') }),
      'holds',
    ],
    [
      'the wanted one before a heavier one, though it is higher',
      ratings(
        { duty: 'continuous', powerPerSpeed: perSpeed('0.12 kW/rpm') },
        { duty: 'medium', powerPerSpeed: perSpeed('0.18 kW/rpm') },
      ),
      'holds',
    ],
    ['a word of its own', ratings({ duty: 'M3', powerPerSpeed: perSpeed('0.18 kW/rpm') }), 'cannot tell'],
    [
      'another fuel',
      ratings({ duty: 'medium', powerPerSpeed: perSpeed('0.18 kW/rpm'), fuel: 'petrol' }),
      'cannot tell',
    ],
    [
      'this fuel',
      ratings({ duty: 'medium', powerPerSpeed: perSpeed('0.18 kW/rpm'), fuel: 'diesel' }),
      'holds',
    ],
    [
      'speeds that leave rated speed out are not carried over',
      ratings({ duty: 'medium', powerPerSpeed: perSpeed('0.18 kW/rpm'), speeds: rpm(800, 2100) }),
      'cannot tell',
    ],
    [
      'speeds that leave peak torque out are not carried over',
      ratings({ duty: 'medium', powerPerSpeed: perSpeed('0.18 kW/rpm'), speeds: rpm(1800, 2600) }),
      'cannot tell',
    ],
    [
      'two ranges of one duty, each where it holds',
      ratings(
        { duty: 'medium', powerPerSpeed: perSpeed('0.18 kW/rpm'), speeds: rpm(800, 2000) },
        { duty: 'medium', powerPerSpeed: perSpeed('0.14 kW/rpm'), speeds: rpm(2000, 2600) },
      ),
      'holds',
    ],
    [
      'power at a lower speed than rated',
      ratings({
        duty: 'medium',
        power: { y: quantity('power', '400 kW'), x: quantity('rotational speed', '2100 rpm') },
      }),
      'cannot tell',
    ],
    [
      'power at a higher speed than rated, by torque',
      ratings({
        duty: 'medium',
        power: { y: quantity('power', '450 kW'), x: quantity('rotational speed', '2600 rpm') },
      }),
      'holds',
    ],
    ['torque', ratings({ duty: 'medium', torque: quantity('torque', '1500 N.m') }), 'holds'],
    ['torque too small', ratings({ duty: 'medium', torque: quantity('torque', '1400 N.m') }), 'fails'],
    ['peak torque missing', { engine: { peakTorque: undefined } }, 'cannot tell'],
    [
      'rated power too much with peak torque missing',
      { engine: { peakTorque: undefined, ratings: [rated('420 kW', '2300 rpm')] } },
      'fails',
    ],
    [
      'no rating chosen among two',
      {
        at: undefined,
        engine: { ratings: [rated('300 kW', '2300 rpm'), rated('250 kW', '2300 rpm', { duty: 'heavy' })] },
      },
      'cannot tell',
    ],
  ] as [string, Changes, string][])('%s', (_, changes, expected) => {
    expect(outcomes(changes)).toEqual([expected]);
  });

  it('keeps the margin that the vessel wants', () => {
    const criteria = (written: string, si: number) => ({
      criteria: {
        origin: DUTY.origin,
        gearTorqueMargin: {
          value: { label: 'margin', symbol: 'm', dimension: 'ratio' as const, si, written },
          written,
          origin: DUTY.origin,
        },
      },
    });
    expect(outcomes({}, criteria('16 %', 0.16))).toEqual(['holds']);
    expect(outcomes({}, criteria('17 %', 0.17))).toEqual(['fails']);
  });

  it('judges ahead and astern apart when the sheet does, an astern shortage as a warning', () => {
    const both = ratings(
      { duty: 'medium', powerPerSpeed: perSpeed('0.18 kW/rpm'), direction: 'ahead' },
      { duty: 'medium', powerPerSpeed: perSpeed('0.1 kW/rpm'), direction: 'astern' },
    );
    expect(said(torque, of(both)).map(one => [one.outcome, one.severity])).toEqual([
      ['holds', 'error'],
      ['fails', 'warning'],
    ]);
    const aheadOnly = ratings({ duty: 'medium', powerPerSpeed: perSpeed('0.18 kW/rpm'), direction: 'ahead' });
    expect(outcomes(aheadOnly)).toEqual(['holds', 'cannot tell']);
  });

  it('takes a rating that was measured at the propeller shaft back to the crankshaft', () => {
    const peakTorque = torqueAt('1200 N.m', '1500 rpm');
    const margin = (measuredAt: 'crankshaft' | 'propeller shaft') =>
      said(torque, of({ engine: { peakTorque, ratings: [rated('300 kW', '2300 rpm', { measuredAt })] } }))[0]!
        .margin!;
    expect((1 + margin('crankshaft')) / (1 + margin('propeller shaft'))).toBeCloseTo(1 / 0.97, 9);
  });

  it('ranks the gears that carry it by margin, and names margin and shaft speed', () => {
    const weak = {
      ratios: [offered('2.04:1', '2.043:1', '0.14 kW/rpm'), offered('2.52:1', '2.524:1', '0.16 kW/rpm')],
    };
    const gears = [
      gearEntry('Alder-63', { ...GEAR, ...weak }),
      gearEntry('Birch-70', { ...GEAR, ratios: [offered('2:1', '2.01:1', '0.19 kW/rpm')] }),
      gearEntry('Cedar-80', { ...GEAR, ratios: [offered('2.03:1', '2.043:1', '0.25 kW/rpm')] }),
      gearEntry('Elm-50', { ...GEAR, ratios: [offered('2.04:1', '2.043:1', '0.15 kW/rpm')] }),
      gearEntry('Hazel-90', {
        ...GEAR,
        inputSpeedMax: quantity('rotational speed', '2400 rpm'),
        ratios: [offered('2.04:1', '2.043:1', '0.3 kW/rpm')],
      }),
      gearEntry('Larch-90', {
        ...GEAR,
        ratios: [
          offered('2.04:1', '2.043:1', '0.3 kW/rpm', {
            ratings: [{ duty: 'light', powerPerSpeed: perSpeed('0.3 kW/rpm') }],
          }),
        ],
      }),
    ];
    const [verdict] = said(torque, of({ gear: weak }), { gears });
    expect(verdict!.routes).toMatchInlineSnapshot(`
      [
        "Replace the gear by Cedar-80 2.03:1, clutch B ahead: 61 % torque margin, shaft speed unchanged",
        "Replace the gear by Birch-70 2:1, clutch B ahead: 23 % torque margin, the shaft turns 1.6 % faster",
        "Use 2.52:1 of Alder-63, clutch B ahead: 3.2 % torque margin, the shaft turns 19 % slower",
      ]
    `);
    expect(verdict!.edits[0]).toMatchObject([
      { do: 'replace', value: named('Cedar-80') },
      { do: 'replace', value: { is: 'as stated', fact: { written: '2.043:1' } } },
    ]);
  });
});

describe('what the rating is for', () => {
  const duty = ruleOf(CAPACITY_RULES, 'capacity/rating-duty');
  const fuel = ruleOf(CAPACITY_RULES, 'capacity/rating-fuel');
  const speed = ruleOf(CAPACITY_RULES, 'capacity/rating-speed');
  const light = { duty: 'light', powerPerSpeed: perSpeed('0.3 kW/rpm') };
  const medium = { duty: 'medium', powerPerSpeed: perSpeed('0.18 kW/rpm') };

  it.each([
    ['the wanted duty', duty, ratings(light, medium), ['holds']],
    ['only a lighter duty', duty, ratings(light), ['fails']],
    ['words that cannot be compared', duty, ratings({ ...light, duty: 'M3' }), ['cannot tell']],
    ['the same class by another word', duty, ratings({ ...light, duty: 'intermediate' }), ['holds']],
    ['no ratings at all are another rule’s matter', duty, ratings(), []],
    ['another fuel', fuel, ratings({ ...medium, fuel: 'petrol' }), ['fails']],
    ['another fuel beside a general one', fuel, ratings({ ...medium, fuel: 'petrol' }, medium), ['holds']],
    [
      'fuel of the engine unknown',
      fuel,
      { ...ratings({ ...medium, fuel: 'diesel' }), engine: { fuel: undefined } },
      ['cannot tell'],
    ],
    ['ratings without fuel', fuel, ratings(medium), []],
    ['speeds with rated speed', speed, ratings({ ...medium, speeds: rpm(800, 2600) }), ['holds']],
    ['speeds up to just rated speed', speed, ratings({ ...medium, speeds: rpm(800, 2300) }), ['holds']],
    ['speeds without rated speed', speed, ratings({ ...medium, speeds: rpm(800, 2299) }), ['fails']],
    ['no speeds stated', speed, ratings(medium), []],
  ] as [string, typeof duty, Changes, string[]][])('%s', (_, rule, changes, expected) => {
    expect(said(rule, of(changes)).map(one => one.outcome)).toEqual(expected);
  });

  it('folds the torque check under the reason why it cannot be made', () => {
    expect(said(duty, of(ratings(light)))[0]!.message).toBe(
      'Centre: the rating of gear Alder-63 is for light duty, the vessel is specified for medium. A lighter rating does not cover it: obtain the rating for this duty, or choose a larger gear.',
    );
  });
});
