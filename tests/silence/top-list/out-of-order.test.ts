import { describe, expect, it } from 'vitest';
import { Bench } from '../rejudge.js';
import { changed, passing } from './verdicts.js';

async function failures(rule: string, spec: string) {
  const { told } = await new Bench().judge(spec);
  return told.filter(one => one.rule === rule && one.outcome === 'fails').map(one => one.message);
}

describe('speeds of one machine that cannot be in that order contradict each other', () => {
  const ENGINE = 'capacity/gear-input-torque';
  const MOTOR = 'capacity/motor-equivalent';

  it.each([
    [ENGINE, 'high idle 2530 rpm', 'high idle 1900 rpm', /rated power .* with high idle 1900 rpm/],
    [ENGINE, 'at 1500 rpm', 'at 2700 rpm', /peak torque .* with high idle 2530 rpm/],
    [ENGINE, 'low idle 650 rpm', 'low idle 2400 rpm', /low idle 2400 rpm with rated power/],
    [MOTOR, /top speed \d+ rpm/, 'top speed 700 rpm', /power .* with top speed 700 rpm/],
  ] as const)('%s: %s becomes %s', async (rule, from, to, says) => {
    const spec = passing(rule);
    expect(await failures('capacity/power-and-torque', spec)).toEqual([]);
    const other = spec.replace(from, to);
    expect(other).not.toBe(spec);
    const [message, ...more] = await failures('capacity/power-and-torque', other);
    expect(message).toMatch(says);
    expect(more).toEqual([]);
  });
});

it('a bearing past the end of its shaft contradicts the length', async () => {
  const spec = passing('shafting/overhang');
  const [, at] = /bearing strut \{\s+kind strut\s+at ([\d.]+) m/.exec(spec)!;
  const other = changed(spec, [`at ${at} m`, `at ${Number(at) + 20} m`]);
  expect(await failures('shafting/section-places', spec)).toEqual([]);
  expect(await failures('shafting/section-places', other)).toHaveLength(1);
});
