import { describe, expect, it } from 'vitest';
import type { Vessel } from '../../src/index.js';
import { RATIO_RULES } from '../../src/rules/ratio/index.js';
import { arrangement, open, quantity, ratio, sense, vessel } from '../build.js';
import { type Changes, craft, DUTY, line, offered, ruleOf, said } from './capacity-fixture.js';

const rule = (id: string) => ruleOf(RATIO_RULES, `ratio/${id}`);
const of = (changes: Changes) => craft({ Centre: line(changes) });
const first = (id: string, about: Vessel) => said(rule(id), about)[0];
const only = (nominal: string, exact: string | undefined, more: object = {}): Changes => ({
  gear: { ratios: [offered(nominal, exact, '0.18 kW/rpm', more)] },
  ratio: nominal,
});

describe('ratio/nominal-for-exact', () => {
  it('says what the difference does to shaft speed and propeller power', () => {
    const verdict = first('nominal-for-exact', of(only('2:1', '1.958:1')))!;
    expect(verdict.outcome).toBe('fails');
    expect(verdict.message).toMatchInlineSnapshot(
      `"Centre: the exact ratio ahead is 1.958:1, the line says 2:1. Shaft speed is 2.1 % higher (1175 rpm instead of 1150 rpm at rated speed) and propeller power about 6.6 % higher than the line suggests."`,
    );
    expect(verdict.edits).toMatchObject([
      [{ do: 'replace', value: { is: 'as stated', fact: { written: '1.958:1' } } }],
    ]);
  });

  it.each([
    ['within half a percent', only('2.04:1', '2.043:1'), 'holds'],
    ['not declared', only('2.04:1', undefined), 'cannot tell'],
    ['left open', only('2.04:1', undefined, { exact: open() }), 'cannot tell'],
    ['the exact one written', { ...only('2:1', '1.958:1'), ratio: '1.958:1' }, 'holds'],
    [
      'from tooth counts',
      only('2.04:1', undefined, {
        train: { meshes: [{ driver: 'A', driverTeeth: 23, driven: 'B', drivenTeeth: 47, kind: 'external' }] },
      }),
      'holds',
    ],
    [
      'from tooth counts that differ',
      only('2:1', undefined, {
        train: { meshes: [{ driver: 'A', driverTeeth: 23, driven: 'B', drivenTeeth: 47, kind: 'external' }] },
      }),
      'fails',
    ],
  ] as [string, Changes, string][])('%s', (_, changes, outcome) => {
    expect(first('nominal-for-exact', of(changes))!.outcome).toBe(outcome);
  });

  it('takes the tolerance of the vessel', () => {
    const criteria = {
      origin: DUTY.origin,
      ratioDifference: { value: ratio('3 %'), written: '3 %', origin: DUTY.origin },
    };
    expect(
      first('nominal-for-exact', craft({ Centre: line(only('2:1', '1.958:1')) }, { criteria }))!.outcome,
    ).toBe('holds');
  });
});

describe('ratio/clutch-ratio', () => {
  const UNEQUAL = only('2.05:1', undefined, {
    clutches: [
      { name: 'A', output: sense('same'), ahead: 'continuous', exact: ratio('2.05:1') },
      { name: 'B', output: sense('opposite'), ahead: 'continuous', exact: ratio('1.96:1') },
    ],
  });

  it('names the ratio of the clutch that runs ahead', () => {
    const verdict = first('clutch-ratio', of({ ...UNEQUAL, ahead: 'B' }))!;
    expect(verdict.message).toMatchInlineSnapshot(
      `"Centre: ahead is clutch B; its ratio is 1.96:1, not the 2.05:1 of clutch A. The shaft turns 4.6 % faster, which is about 14 % of propeller power."`,
    );
    expect(verdict.routes).toEqual(['Write 1.96:1, the ratio of clutch B that runs ahead']);
    expect(first('nominal-for-exact', of({ ...UNEQUAL, ahead: 'B' }))).toBeUndefined();
  });

  it.each([
    ['the ratio of the ahead clutch', { ...UNEQUAL, ahead: 'A' }, 'holds'],
    ['ratios that do not differ', only('2.04:1', '2.043:1'), undefined],
    [
      'no ahead clutch',
      { ...UNEQUAL, line: { gear: { ...line(UNEQUAL).gear, ahead: undefined } } },
      'cannot tell',
    ],
  ] as [string, Changes, string | undefined][])('%s', (_, changes, outcome) => {
    expect(first('clutch-ratio', of(changes))?.outcome).toBe(outcome);
  });
});

describe('ratio/unequal-sides', () => {
  const side = (nominal: string, pitch = '24 in', speed = '2300 rpm') =>
    line({
      ...only(nominal, nominal),
      propeller: { pitch: quantity('length', pitch) },
      ...(speed === '2300 rpm'
        ? {}
        : {
            engine: {
              ratings: [
                {
                  duty: 'medium',
                  power: { y: quantity('power', '300 kW'), x: quantity('rotational speed', speed) },
                },
              ],
            },
          }),
    });
  const pair = (port: ReturnType<typeof line>, starboard: ReturnType<typeof line>, reason?: string) =>
    vessel({
      duty: DUTY,
      arrangements: [
        arrangement(
          'proposed',
          { Port: port, Starboard: starboard },
          { reasons: reason ? { 'unequal ratios': reason } : {} },
        ),
      ],
    });

  it('says that 2.00 against 1.80 with equal pitches is about 37 % more power', () => {
    const verdict = first('unequal-sides', pair(side('2:1'), side('1.8:1')))!;
    expect(verdict).toMatchObject({ outcome: 'fails', severity: 'error' });
    expect(verdict.message).toMatchInlineSnapshot(
      `"Port 2:1, starboard 1.8:1 with equal pitches: at equal engine speed the starboard propeller takes about 37 % more power. Use one ratio on both sides."`,
    );
  });

  it.each([
    ['equal', pair(side('2:1'), side('2:1')), 'holds', 'warning'],
    ['different pitches, no reason', pair(side('2:1'), side('1.8:1', '22 in')), 'fails', 'warning'],
    [
      'different pitches and a reason',
      pair(side('2:1'), side('1.8:1', '22 in'), 'starboard drives a pump'),
      'holds',
      'warning',
    ],
    ['equal pitches and a reason', pair(side('2:1'), side('1.8:1'), 'what was in stock'), 'fails', 'error'],
    [
      'engines whose speeds make up for it',
      pair(side('2:1'), side('1.8:1', '24 in', '2070 rpm')),
      'holds',
      'warning',
    ],
    ['a single line', craft({ Centre: side('2:1') }), undefined, undefined],
  ] as [string, Vessel, string | undefined, string | undefined][])('%s', (_, about, outcome, severity) => {
    const verdict = first('unequal-sides', about);
    expect([verdict?.outcome, verdict?.severity]).toEqual([outcome, severity]);
  });

  it('cannot tell while one ratio is open, and offers the ratio of the other side', () => {
    const unknown = { ...side('2:1'), gear: { ratioUsed: open() } } as unknown as ReturnType<typeof line>;
    expect(first('unequal-sides', pair(side('2:1'), unknown))!.outcome).toBe('cannot tell');
    const two = (chosen: string) =>
      line({
        gear: { ratios: [offered('2:1', '2:1', '0.18 kW/rpm'), offered('1.8:1', '1.8:1', '0.18 kW/rpm')] },
        ratio: chosen,
      });
    expect(first('unequal-sides', pair(two('2:1'), two('1.8:1')))!.routes).toEqual([
      'Give starboard the ratio 2:1 of the other side: its shaft turns 10 % slower',
      'Give port the ratio 1.8:1 of the other side: its shaft turns 11 % faster',
    ]);
  });
});

describe('ratio/train', () => {
  const mesh = (
    driver: string,
    driverTeeth: number,
    driven: string,
    drivenTeeth: number,
    kind = 'external',
  ) => ({ driver, driverTeeth, driven, drivenTeeth, kind });
  const with_ = (exact: string | undefined, train: object) =>
    first('train', of(only('2.04:1', exact, { train })));

  it.each([
    ['a pair of wheels', '2.043:1', { meshes: [mesh('A', 23, 'B', 47)] }, 'holds'],
    ['a sheet that cuts off', '2.047:1', { meshes: [mesh('A', 21, 'B', 43)] }, 'holds'],
    ['another wheel', '2.043:1', { meshes: [mesh('A', 45, 'B', 92)] }, 'fails'],
    [
      'an idler changes nothing',
      '2.043:1',
      { meshes: [mesh('A', 23, 'I', 31), mesh('I', 31, 'B', 47)] },
      'holds',
    ],
    ['two stages', '6:1', { meshes: [mesh('A', 20, 'B', 40), mesh('B', 15, 'C', 45)] }, 'holds'],
    ['a chain of equal wheels', '1:1', { meshes: [mesh('A', 31, 'B', 31, 'chain')] }, 'holds'],
    [
      'a planetary set, ring held',
      '5:1',
      { sunTeeth: 16, ringTeeth: 64, input: 'sun', output: 'carrier', held: ['ring'] },
      'holds',
    ],
    [
      'a planetary reverse',
      '4:1',
      { sunTeeth: 16, ringTeeth: 64, input: 'sun', output: 'ring', held: ['carrier'] },
      'holds',
    ],
    [
      'a set with two planets in a row',
      '2:1',
      { sunTeeth: 30, ringTeeth: 60, planetRow: 'double', input: 'sun', output: 'ring', held: ['carrier'] },
      'holds',
    ],
    [
      'a locked set',
      '1:1',
      { sunTeeth: 16, ringTeeth: 64, input: 'sun', output: 'carrier', held: ['none'] },
      'holds',
    ],
    [
      'a set with nothing held',
      '5:1',
      { sunTeeth: 16, ringTeeth: 64, input: 'sun', output: 'carrier' },
      'cannot tell',
    ],
    ['an open exact ratio', undefined, { meshes: [mesh('A', 23, 'B', 47)] }, 'holds'],
  ] as [string, string | undefined, object, string][])('%s', (_, exact, train, outcome) => {
    const counts = Object.fromEntries(
      Object.entries(train).map(([key, value]) => [
        key,
        typeof value === 'number' ? { label: key, symbol: 'Z', dimension: 'number', si: value } : value,
      ]),
    );
    expect(with_(exact, counts)!.outcome).toBe(outcome);
  });

  it('offers the ratio of the tooth counts', () => {
    const verdict = with_('2.043:1', { meshes: [mesh('A', 45, 'B', 92)] })!;
    expect(verdict.routes).toEqual(['Write 2.044:1, as the tooth counts give it']);
    expect(verdict.message).toContain('give 2.0444:1, but 2.043:1 is declared');
  });
});

describe('ratio/not-offered', () => {
  it('offers the nearest ones with what they do to the shaft', () => {
    expect(first('not-offered', of({ ratio: '2.3:1' }))).toMatchObject({
      outcome: 'fails',
      routes: [
        'Use 2.52:1, the nearest offered: the shaft turns 8.9 % slower than with 2.3:1',
        'Use 2.04:1: the shaft turns 13 % faster than with 2.3:1',
      ],
    });
  });

  it.each([
    ['an offered one', of({}), 'holds'],
    ['an exact one', of({ ratio: '2.043:1' }), 'holds'],
    [
      'left open',
      craft({
        Centre: {
          ...line(),
          gear: { ...line().gear, ratio: undefined, ratioUsed: open() },
        } as unknown as ReturnType<typeof line>,
      }),
      'cannot tell',
    ],
    ['a gear in place without a list', of({ gear: { ratios: [] } }), undefined],
  ] as [string, Vessel, string | undefined][])('%s', (_, about, outcome) => {
    expect(first('not-offered', about)?.outcome).toBe(outcome);
  });
});
