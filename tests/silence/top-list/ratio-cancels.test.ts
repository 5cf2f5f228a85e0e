import { describe, expect, it } from 'vitest';
import { changed, passing, saidBy } from './verdicts.js';

/** A kept gear of which nobody knows the ratio, behind another engine: it is the same before and after. */
const kept = (old: string) =>
  changed(
    passing('capacity/retained-propeller-overload'),
    ['gear Alder-63 ratio 2.04:1 ahead clutch B', 'gear Alder-63 ratio unknown ahead clutch B'],
    ['power 300 kW at 2300 rpm', `power ${old}`],
  );

describe('an unknown ratio that is kept takes itself out', () => {
  // 2300 rpm against 2100 before: (2300/2100)³ = 1.31 times the 280 kW of before are asked of 300 kW.
  it.each([
    [
      '280 kW at 2100 rpm',
      'fails',
      /engine speed, whatever the ratio that stays.*The engine would not exceed/,
    ],
    ['300 kW at 2300 rpm', 'holds', /engine speed, whatever the ratio that stays/],
  ])('behind an old engine of %s: %s', async (old, outcome, words) => {
    const [said] = await saidBy('capacity/retained-propeller-overload', kept(old));
    expect(said!.outcome).toBe(outcome);
    expect(said!.message).toMatch(words);
  });

  it('with the numbers of the propeller law', async () => {
    const [unknown] = await saidBy('capacity/retained-propeller-overload', kept('280 kW at 2100 rpm'));
    const known = kept('280 kW at 2100 rpm').replace('ratio unknown', 'ratio 2.04:1');
    const [same] = await saidBy('capacity/retained-propeller-overload', known);
    expect(unknown!.margin).toBeCloseTo(same!.margin!, 9);
  });

  it('and does not where another gear comes', async () => {
    const other = kept('280 kW at 2100 rpm').replace(
      'retain gear',
      'replace gear Alder-63 ratio unknown ahead clutch B',
    );
    const [said] = await saidBy('capacity/retained-propeller-overload', other);
    expect(said!.outcome).toBe('cannot tell');
  });
});
