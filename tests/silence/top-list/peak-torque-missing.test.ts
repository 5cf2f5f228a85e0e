import { describe, expect, it } from 'vitest';
import { changed, outcomes, passing, saidBy } from './verdicts.js';

const PEAK = '  peak torque 1480 N.m at 1500 rpm\n';

/** Rule, what carries the torque in its passing example, and the same far too weak for rated torque alone. */
const WEAK: readonly (readonly [rule: string, enough: string, weak: string])[] = [
  ['capacity/gear-input-torque', 'rated medium 0.18 kW/rpm', 'rated medium 0.02 kW/rpm'],
  ['capacity/coupling-torque', 'torque at most 3600 N.m', 'torque at most 5 N.m'],
  ['capacity/transfer-torque', 'torque at most 3600 N.m', 'torque at most 5 N.m'],
  ['capacity/clutch-holding', 'faces 16', 'faces 2'],
  ['shafting/coupling-bolts', 'bolt class 8.8', 'bolt class 4.6'],
  ['shafting/key-strength', 'length 5 in', 'length 1 in'],
  ['shafting/mount-rating', 'torque at most 3200 N.m', 'torque at most 5 N.m'],
];

describe('without the peak torque of the engine', () => {
  it.each(WEAK)('%s fails what rated torque breaks already', async (rule, enough, weak) => {
    expect(passing(rule)).toContain(PEAK);
    const spec = changed(passing(rule), [PEAK, '']).replaceAll(enough, weak);
    expect(await outcomes(rule, spec)).toContain('fails');
  });

  it.each(WEAK)('%s waits for it where rated torque is borne, and prints what is known', async rule => {
    const [said] = await saidBy(rule, changed(passing(rule), [PEAK, '']));
    expect(said!.outcome).toBe('cannot tell');
    expect(said!.asked).toContain('peak torque');
    expect(said!.message).toMatch(/Known so far: .*\d|At rated power alone the margin is \d/);
  });
});

describe('a kept shaft', () => {
  const rule = 'capacity/retained-shaft-torque';
  // The peak torque of the new engine is 1480 N·m, of the old one 1300: the shaft gets more.
  const failing = changed(passing(rule), ['peak torque 1530 N.m', 'peak torque 1300 N.m']);

  it('fails while both peak torques are known', async () => {
    expect(await outcomes(rule, failing)).toEqual(['fails']);
  });

  it.each([
    ['of the new engine', PEAK],
    ['of the old engine', '  peak torque 1300 N.m at 1500 rpm\n'],
  ])('does not hold when the peak torque %s is taken away', async (_, peak) => {
    const [said] = await saidBy(rule, changed(failing, [peak, '']));
    expect(said!.outcome).toBe('cannot tell');
    expect(said!.asked).toContain('peak torque');
    expect(said!.message).toContain('Known so far: at rated power it goes from ');
  });

  it('fails without the new peak torque where rated torque alone is more than the old greatest', async () => {
    const more = changed(failing, [PEAK, '']).replace(
      /(engine Kittiwake-9 [\s\S]*?)power 300 kW at 2300 rpm/,
      '$1power 400 kW at 2300 rpm',
    );
    expect(await outcomes(rule, more)).toEqual(['fails']);
  });
});
