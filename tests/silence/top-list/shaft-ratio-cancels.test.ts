import { describe, expect, it } from 'vitest';
import { changed, passing, saidBy } from './verdicts.js';

const RULE = 'capacity/retained-shaft-torque';

/** A kept gear of which nobody knows the ratio, before a kept shaft: torque rises as that of the engine does. */
const kept = (torque: string, ratio = 'unknown') =>
  changed(passing(RULE).replaceAll(/gear Alder-63 ratio 2\.04:1/g, `gear Alder-63 ratio ${ratio}`), [
    'peak torque 1530 N.m',
    `peak torque ${torque}`,
  ]);

describe('torque of a kept shaft behind a ratio that stays and that nobody knows', () => {
  // Peak torque of the new engine is 1480 N.m.
  it.each([
    ['1300 N.m', 'fails', /rises 14 %.*it takes itself out.*cannot be said without the ratio/],
    ['1530 N.m', 'holds', /it takes itself out: it does not rise/],
  ])('behind an old engine of %s: %s', async (torque, outcome, words) => {
    const [said] = await saidBy(RULE, kept(torque));
    expect(said!.outcome).toBe(outcome);
    expect(said!.message).toMatch(words);
  });

  it('with the margin that any ratio gives', async () => {
    const [unknown] = await saidBy(RULE, kept('1300 N.m'));
    const [known] = await saidBy(RULE, kept('1300 N.m', '2.04:1'));
    expect(unknown!.margin).toBeCloseTo(known!.margin!, 9);
  });

  it('and not behind another gear', async () => {
    const other = kept('1300 N.m').replace(
      'retain gear',
      'replace gear Alder-63 ratio unknown ahead clutch B',
    );
    const [said] = await saidBy(RULE, other);
    expect(said!.outcome).toBe('cannot tell');
  });
});
