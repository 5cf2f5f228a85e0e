import { describe, expect, it } from 'vitest';
import { Offers } from '../packages/language/test/actions/actions.js';
import { joinedExample } from './support/examples.js';

const SPEC = joinedExample('pilot-cutter/ternhaven.shaft');
const PROPOSED = SPEC.indexOf('arrangement proposed');

/** The example with another text in its proposal, and the cursor behind `at` there. */
function asked(at: string, ...changes: (readonly [string, string])[]): string {
  let proposed = SPEC.slice(PROPOSED);
  for (const [from, to] of changes) {
    expect(proposed).toContain(from);
    proposed = proposed.replace(from, to);
  }
  const end = proposed.indexOf(at) + at.length;
  expect(end).toBeGreaterThan(at.length);
  return `${SPEC.slice(0, PROPOSED)}${proposed.slice(0, end)}<|>${proposed.slice(end)}`;
}

const suits = async (...args: Parameters<typeof asked>) => {
  const offers = await Offers.at(asked(...args), 'refactor.rewrite');
  return { offers, titles: offers.titles.split('\n').filter(one => one.startsWith('What would suit')) };
};

const UNKNOWN = [
  ['diameter 28.5 in', 'diameter unknown'],
  ['pitch 34 in', 'pitch unknown'],
] as const;

describe('what would suit', () => {
  it('sizes a propeller of which nothing is known, within the opening', async () => {
    const { offers, titles } = await suits('replace propeller', ...UNKNOWN);
    expect(titles).toMatchInlineSnapshot(`
      [
        "What would suit: take 735 mm by 1025 mm, of best efficiency at this shaft speed and smaller than the opening allows: 75 % in open water; it absorbs 98 % of the power, at full throttle about 2304 rpm and 34.2 kn; but then "Speed in gear at idle is within the requirement" fails and "Thrust at the bollard is within the thrust bearing rating" fails",
      ]
    `);
    const after = offers.after('What would suit');
    expect(after).not.toContain('diameter unknown');
    expect(after).not.toContain('pitch unknown');
  });

  it('gives the pitch for a diameter', async () => {
    const { titles } = await suits('replace propeller', UNKNOWN[1]);
    expect(titles[0]).toMatchInlineSnapshot(
      `"What would suit: take a pitch of 39 1/2 in, which absorbs the rated power at this diameter: 95 % of the power, at full throttle about 2311 rpm and 33.1 kn; but then "Speed in gear at idle is within the requirement" fails"`,
    );
  });

  it('sizes a shaft of which no diameter is known, and one that is too thick', async () => {
    const open = await suits('replace shaft', ['diameter 2 1/4 in', 'diameter unknown']);
    const thick = await suits('replace shaft');
    expect(open.titles).toMatchInlineSnapshot(`
      [
        "What would suit: take a 2 in shaft, the least stock size: small-craft formula, factor 5 (published for racing or commercial) asks for 49.5 mm, and the margin is 7.9 %; bearings, seal, coupling and propeller bore follow; but then "Propeller overhang is within the guide" fails",
      ]
    `);
    expect(thick.titles).toHaveLength(1);
    expect(open.offers.after('What would suit')).toContain('diameter 2 in');
  });

  it('takes a ratio nearer to what the propeller asks for', async () => {
    const { titles } = await suits(
      'replace gear',
      ['pitch 34 in', 'pitch 24 in'],
      ['ratio 2.04:1', 'ratio 2.52:1'],
    );
    expect(titles).toMatchInlineSnapshot(`
      [
        "What would suit: take 1.53:1 (1.53:1 would suit best): the shaft turns 65 % faster, and the propeller absorbs 101 % of the power, at full throttle about 2284 rpm and 27.0 kn, where it absorbs 42 % now",
      ]
    `);
  });

  it('sizes nothing where the opening is not known, and nothing of the vessel as found', async () => {
    const unbounded = await suits('replace propeller', ...UNKNOWN, [
      'axis to hull 490 mm [measured 2026-01-14]',
      '',
    ]);
    expect(unbounded.titles).toEqual([]);
    const found = SPEC.indexOf('propeller', SPEC.indexOf('arrangement existing'));
    const offers = await Offers.at(
      `${SPEC.slice(0, found + 2)}<|>${SPEC.slice(found + 2)}`,
      'refactor.rewrite',
    );
    expect(offers.titles).not.toContain('What would suit');
  });
});

describe('a check that waits for a size', () => {
  it.each([
    { at: 'diameter unknown', changes: [...UNKNOWN] },
    { at: 'pitch unknown', changes: [UNKNOWN[1]] },
    { at: 'diameter unknown', changes: [['diameter 2 1/4 in', 'diameter unknown']] as const },
  ])('is offered one that settles it: $at, $changes.length open', async ({ at, changes }) => {
    const offers = await Offers.at(asked(at, ...changes), 'quickfix');
    expect(offers.titles).toContain('Take ');
  });
});
