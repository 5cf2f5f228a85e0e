import { describe, expect, it } from 'vitest';
import { changed, passing, saidBy } from './verdicts.js';

const RULE = 'shafting/combined-stress';

/** The coupling end so thin that torque alone is too much for it, whatever the propeller weighs. */
const thin = () => changed(passing(RULE), ['overhang 60 mm', 'coupling end diameter 40 mm  overhang 60 mm']);

const MASS = /^ *mass \d+ kg\n| {2}mass \d+ kg/m;
const OVERHANG = / {2}overhang \d+ mm/;

describe('a shaft of which the bending is not known', () => {
  it.each([
    ['mass', MASS],
    ['overhang', OVERHANG],
  ])('fails without the %s where torque and thrust alone are too much', async (_, words) => {
    const text = thin().replace(words, '');
    expect(text).not.toBe(thin());
    const [said] = await saidBy(RULE, text);
    expect(said!.outcome).toBe('fails');
    expect(said!.message).toContain('no bending, as its weight or overhang is not known');
  });

  it('does not hold where they are not', async () => {
    for (const words of [MASS, OVERHANG]) {
      const left = await saidBy(RULE, passing(RULE).replace(words, ''));
      expect(left.filter(one => one.outcome === 'holds')).toEqual([]);
    }
  });

  it('is asked for the one that is said to be unknown, and tells what torque and thrust do', async () => {
    const open = passing(RULE).replace(/overhang \d+ mm/, 'overhang unknown');
    const [said] = await saidBy(RULE, open);
    expect(said!.outcome).toBe('cannot tell');
    expect(said!.message).toMatch(/so far: under .* no bending/);
  });
});
