import { describe, expect, it } from 'vitest';
import { changed, REPOWER, verdictsBy, withStatements } from './spec-of.js';

/** 15 % of 26 in is 99 mm, of 27 in 103 mm. */
const CLEAR = withStatements(
  changed(REPOWER, [
    'area ratio 0.72 }',
    'area ratio 0.72  tip clearance 102 mm [measured]  rudder clearance 130 mm [measured] }',
  ]),
  '  criteria { tip clearance at least 15 %  rudder clearance at least 12 % }',
);
const modified = (facts: string) => changed(CLEAR, ['retain propeller', `modify propeller { ${facts} }`]);
const verdict = async (spec: string, rule: string) => (await verdictsBy(spec, rule))[0];

it('holds as long as the propeller is the one that it was measured with', async () => {
  expect((await verdict(CLEAR, 'propeller/tip-clearance'))?.outcome).toBe('holds');
  expect((await verdict(modified('material bronze'), 'propeller/tip-clearance'))?.outcome).toBe('holds');
});

it('of a tip is worked out anew for another diameter: half the change', async () => {
  // 102 mm less half of an inch is 89.3 mm, which is 13 % of 27 in.
  const larger = await verdict(modified('diameter 27 in'), 'propeller/tip-clearance');
  expect(larger?.outcome).toBe('fails');
  expect(larger?.capacity?.si).toBeCloseTo(0.102 - 0.0127, 4);
  // Said anew, it counts as said.
  const said = await verdict(
    modified('diameter 27 in  tip clearance 104 mm [measured]'),
    'propeller/tip-clearance',
  );
  expect(said?.outcome).toBe('holds');
});

it('of which nothing follows by itself is unknown, and says with what it was measured', async () => {
  const rudder = (await verdictsBy(modified('diameter 27 in'), 'propeller/other-clearances'))[0];
  expect(rudder?.outcome).toBe('cannot tell');
  expect(rudder?.missing[0]?.what).toContain('measured with diameter 26 in, which is 27 in now');
});

it('lapses in a later step too, and stays worked out', async () => {
  const later = withStatements(
    modified('diameter 27 in'),
    '  arrangement painted revises proposed { shaftline Centre { retain engine  retain gear  retain shaft  retain propeller } }',
  );
  const [verdict] = await verdictsBy(later, 'propeller/tip-clearance', 'painted');
  expect(verdict?.outcome).toBe('fails');
});

describe('what the hull states of the propeller that was there', () => {
  /** With an old propeller as found, and a hull whose figures were taken with it. */
  const hull = (propeller: string, wake = 'wake fraction 0.1 [measured]') =>
    changed(
      REPOWER,
      [
        '  arrangement existing {',
        `  hull planing { resistance 10 kN at 12 kn  resistance 18 kN at 19 kn  resistance 28 kN at 26 kn  ${wake}  thrust deduction 0.1 [drawing "S-2"] }
  require speed at least 12 kn at full power
  arrangement existing {`,
      ],
      ['retain propeller', propeller],
    );
  const speed = async (spec: string) => (await verdict(spec, 'trace/requirement-met'))!;
  const LARGER =
    'replace propeller { hand right  blades 4  diameter 30 in  pitch 27 in  area ratio 0.72  cup none }';

  it('counts as long as that one is kept', async () => {
    expect((await speed(hull('modify propeller { cup none }'))).outcome).toBe('holds');
  });

  it('is used for another one, and nothing holds on it', async () => {
    const said = await speed(hull(LARGER));
    expect(said.outcome).toBe('cannot tell');
    expect(said.message).toContain(
      'only if the wake fraction 0.1 (stated with propeller diameter 26 in, which is 30 in now) is true',
    );
    expect(said.missing.map(one => one.property)).toEqual(['wake fraction']);
  });

  it('holds nothing back where it fails, and says on what it fails', async () => {
    const said = await speed(hull(LARGER).replace('at least 12 kn', 'at least 60 kn'));
    expect([said.outcome, said.message]).toEqual([
      'fails',
      expect.stringContaining('stated with propeller diameter 26 in'),
    ]);
  });

  it.each(['[drawing "S-1"]', '[sheet]', '[assumed]'])(
    'is of the plan where it stands in one: %s',
    async mark => {
      expect((await speed(hull(LARGER, `wake fraction 0.1 ${mark}`))).outcome).toBe('holds');
    },
  );

  it('says no speed at rated power of another engine', async () => {
    const given = 'speed at rated power 20 kn';
    const spec = hull('modify propeller { cup none }').replace(/resistance .* kn {2}/, `${given}  `);
    // Both engines give 300 kW at 2300 rpm: the speed at rated power stays.
    expect((await speed(spec)).outcome).toBe('holds');
    const said = await speed(changed(spec, ['power 300 kW at 2300 rpm', 'power 280 kW at 2300 rpm']));
    expect([said.outcome, said.message]).toEqual(['cannot tell', expect.stringContaining('another engine')]);
  });
});

describe('where a bearing stands on a shaft of another length', () => {
  const shaft = (revised: string) =>
    changed(
      REPOWER,
      [
        /\n {6}shaft \{[^\n]*?\}/.exec(REPOWER)![0],
        '\n      shaft { material high-strength-stainless  diameter 65 mm  length 3 m  bearing aft { kind strut  at 2.8 m  length 200 mm }  bearing forward { kind strut  at 0.4 m  length 150 mm } }',
      ],
      ['retain shaft', revised],
    );
  const whirl = async (revised: string) =>
    (await verdictsBy(shaft(revised), 'shafting/bearing-span')).map(one => [
      one.outcome,
      one.missing.map(each => each.what).filter(what => /measured with length 3 m/.test(what)).length > 0,
    ]);

  it('is not known any longer, until it is said anew', async () => {
    const [kept] = await whirl('retain shaft');
    expect(kept![1]).toBe(false);
    const [longer] = await whirl('modify shaft { length 3.2 m }');
    expect(longer).toEqual(['cannot tell', true]);
    const anew = 'modify shaft { length 3.2 m  bearing aft { at 3 m }  bearing forward { at 0.4 m } }';
    expect((await whirl(anew))[0]).toEqual(kept);
  });
});
