import { describe, expect, it } from 'vitest';
import { changed, outcomesOf, REPOWER, repeated, verdictsBy } from './spec-of.js';

const OVERLOAD = 'capacity/retained-propeller-overload';

/** Less power at less speed behind a propeller that stays: more than it has. */
const OVERLOADED = changed(
  REPOWER,
  ['power 300 kW at 2300 rpm', 'power 280 kW at 2100 rpm'],
  ['high idle 2500 rpm', 'high idle 2310 rpm'],
);

describe('a revision of a proposal', () => {
  it.each([
    ['an overloaded propeller', OVERLOADED],
    ['a shaft with more torque', changed(REPOWER, ['peak torque 1530 N.m', 'peak torque 1300 N.m'])],
    ['nothing wrong', REPOWER],
  ])('that changes nothing has the verdicts of what it revises: %s', async (_what, spec) => {
    const proposed = await outcomesOf(spec);
    expect(await outcomesOf(repeated(spec), 'painted')).toEqual(proposed);
    expect(await outcomesOf(repeated(spec))).toEqual(proposed);
  });

  it('compares what it keeps with where that was last declared', async () => {
    const refitted = changed(OVERLOADED, [
      'retain propeller',
      'replace propeller { hand right  blades 4  diameter 25 in  pitch 22 in }',
    ]);
    const [verdict] = await verdictsBy(repeated(refitted), OVERLOAD, 'painted');
    // Fitted by the step before and kept behind the same engine: it asks what it asked.
    expect(verdict?.outcome).toBe('holds');
    const weaker = repeated(
      refitted,
      'replace engine Kittiwake-5 at medium { flywheel aft }  retain gear  retain shaft  retain propeller',
    );
    const half = `${weaker}${ENGINE_OF_HALF_POWER}`;
    const [kept] = await verdictsBy(half, OVERLOAD, 'painted');
    expect(kept?.outcome).toBe('fails');
  });
});

const ENGINE_OF_HALF_POWER = `
engine Kittiwake-5 "four-cylinder diesel" {
  source "Kittiwake 5 data sheet, issue 2" dated 2025-01-20
  rotation standard viewed from flywheel
  rating medium { power 150 kW at 2300 rpm  measured at crankshaft  standard ISO-8665  hours 3000 per year }
  peak torque 740 N.m at 1500 rpm
}
`;

describe('a modification', () => {
  const modified = (facts: string, spec = OVERLOADED) =>
    changed(spec, ['retain propeller', `modify propeller { ${facts} }`]);

  it.each(['material bronze', 'rudder clearance 90 mm', 'tolerance class II', 'diameter 660.4 mm'])(
    'of %s leaves the verdict on a kept propeller as it was',
    async facts => {
      const [was] = await verdictsBy(OVERLOADED, OVERLOAD);
      const [is] = await verdictsBy(modified(facts), OVERLOAD);
      expect([is?.outcome, is?.margin]).toEqual([was?.outcome, was?.margin]);
      expect(is?.outcome).toBe('fails');
    },
  );

  it.each([
    // 26 in and 24 in before: (25/26)^3 = 0.889 to (25/26)^5 = 0.822; similar with 23.08 in of pitch: 0.822.
    ['diameter 28 in', REPOWER, 'fails', 1.25, undefined],
    ['diameter 25 in', REPOWER, 'holds', 0.822, 0.889],
    ['diameter 25 in  pitch 23.08 in', REPOWER, 'holds', 0.822, 0.822],
    ['diameter 26.75 in', REPOWER, 'cannot tell', 1.089, 1.153],
    ['pitch 26 in', REPOWER, 'fails', 1.174, undefined],
    ['pitch 23 in', REPOWER, 'holds', undefined, 0.918],
    ['blades 5', REPOWER, 'cannot tell', undefined, undefined],
    ['pitch unknown', REPOWER, 'cannot tell', undefined, undefined],
  ] as const)(
    'of %s is scaled by a law that bounds it, or said to have none',
    async (facts, spec, outcome, least, most) => {
      const [verdict] = await verdictsBy(modified(facts, spec), OVERLOAD);
      expect(verdict?.outcome).toBe(outcome);
      // The capacity is 110 % of the power delivered to it: the rest is left to a trial.
      const share = verdict!.demand && (verdict!.demand.si / verdict!.capacity!.si) * 1.1;
      if (outcome === 'fails') expect(share).toBeCloseTo(least!, 2);
      if (outcome === 'holds') expect(share).toBeCloseTo(most!, 2);
      if (outcome === 'cannot tell') {
        const [field] = facts.split(/ (?=\d|unknown)/);
        expect(verdict!.missing.map(one => one.property)).toContain(field);
        if (least && most) expect(verdict!.message).toMatch(/between 109 % and 115 %/);
      }
    },
  );

  it('of the diameter of a kept shaft compares the factors before and after', async () => {
    const shaft = (facts: string) => changed(REPOWER, ['retain shaft', `modify shaft { ${facts} }`]);
    const outcome = async (facts: string) =>
      (await verdictsBy(shaft(facts), 'capacity/retained-shaft-torque'))[0]?.outcome;
    expect(await outcome('diameter 60 mm')).toBe('fails');
    expect(await outcome('diameter 70 mm')).toBe('holds');
    expect(await outcome('seal packed gland')).toBe('holds');
    expect(await outcome('diameter unknown')).toBe('cannot tell');
  });
});
