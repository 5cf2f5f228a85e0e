import { describe, expect, it } from 'vitest';
import { share, times } from '../../support/share.js';
import { randomSpecs, writtenSpecs } from '../base-specs.js';
import { Bench } from '../rejudge.js';
import { changed, passing, saidBy } from './verdicts.js';

describe('margin and verdict agree', () => {
  it('nothing holds below nil, over every written spec and some random ones', async () => {
    const bench = new Bench();
    const below: string[] = [];
    let margins = 0;
    for (const spec of [...share(writtenSpecs(), 120), ...randomSpecs(7000, times(8, 40))]) {
      for (const one of (await bench.judge(spec.text)).told) {
        if (one.margin === undefined) continue;
        margins += 1;
        if (one.outcome === 'holds' && one.margin < -1e-9)
          below.push(`${spec.name}: ${one.rule} ${one.margin.toFixed(3)}`);
      }
    }
    expect(margins).toBeGreaterThan(times(700, 1000));
    expect(below).toEqual([]);
  });
});

describe('at the limit of an estimate', () => {
  const rule = 'shafting/overhang';
  // The guide is one diameter, 65 mm here: nobody's stated limit.
  const standing = (overhang: string) => changed(passing(rule), ['overhang 60 mm', `overhang ${overhang}`]);

  it.each([
    ['65 mm', 'holds', /1\.0 diameters/],
    ['66 mm', 'fails', /^Centre: at the limit, short by no more than the 2 %/],
    ['68 mm', 'fails', /^Centre: the propeller hub is 68 mm/],
  ])('an overhang of %s: %s', async (overhang, outcome, words) => {
    const [said] = await saidBy(rule, standing(overhang));
    expect(said!.outcome).toBe(outcome);
    expect(said!.message).toMatch(words);
  });

  it('a limit that the owner stated has no such room', async () => {
    const own = standing('66 mm').replace('criteria {', 'criteria { overhang at most 1 ');
    const spec = own.includes('overhang at most')
      ? own
      : own.replace(
          '  arrangement proposed {',
          '  criteria { overhang at most 1 }\n  arrangement proposed {',
        );
    const [said] = await saidBy(rule, spec);
    expect(said!.outcome).toBe('fails');
    expect(said!.message).not.toContain('at the limit');
  });
});
