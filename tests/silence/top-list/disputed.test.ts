import { RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { HYBRID } from '../../../packages/drivetrain/src/rules/hybrid-specs.js';
import { Bench } from '../rejudge.js';
import { passing } from './verdicts.js';

/** Rules that find two statements which contradict each other, with one that rests on one of them. */
const CONTRADICTIONS: readonly (readonly [rule: string, resting: string])[] = [
  ['capacity/power-and-torque', 'capacity/gear-input-torque'],
  ['ratio/train', 'ratio/nominal-for-exact'],
  ['rotation/train-sense', 'rotation/propeller-hand'],
];

async function judge(text: string) {
  return (await new Bench().judge(text)).check.vessels.flatMap(one => one.verdicts);
}

describe('what rests on facts that contradict cannot be told', () => {
  it.each(CONTRADICTIONS)('%s: %s waits for it, and is told under it', async (rule, resting) => {
    const all = await judge(RULES.find(one => one.id === rule)!.examples().failing);
    const said = all.find(one => one.rule === rule && one.outcome === 'fails')!;
    expect(said.disputes?.length).toBeGreaterThan(0);
    expect(said.folds?.map(one => one.outcome)).toEqual(said.folds?.map(() => 'cannot tell'));
    expect(said.folds?.map(one => one.rule)).toContain(resting);
    expect(all.filter(one => one.rule === resting && one.outcome === 'holds')).toEqual([]);
  });

  it('power, torque and base speed of a motor: what rests on one of them waits', async () => {
    const rule = 'capacity/motor-equivalent';
    const spec = passing(rule).replace(/power 30 kW at 1100 rpm/, 'power 45 kW at 1100 rpm');
    expect(spec).toContain('base speed');
    const all = await judge(spec);
    const said = all.find(one => one.rule === 'capacity/power-and-torque')!;
    expect(said.outcome).toBe('fails');
    expect(said.disputes?.map(one => one.written)).toContain('45 kW at 1100 rpm');
    expect(said.folds?.map(one => one.rule)).toContain(rule);
    expect(all.filter(one => one.rule === rule && one.outcome === 'holds')).toEqual([]);
  });

  it('weighs what the gravest failure weighs that it keeps from being told', async () => {
    const rule = 'capacity/power-and-torque';
    const weights = async (rating: string) =>
      (
        await judge(
          passing('capacity/gear-input-torque')
            .replace('rated medium 0.18 kW/rpm', `rated medium ${rating}`)
            .replace('peak torque 1480 N.m', 'peak torque 900 N.m'),
        )
      )
        .filter(one => one.rule === rule)
        .map(({ outcome, severity }) => `${outcome} ${severity}`);
    expect(await weights('0.18 kW/rpm')).toEqual(['fails warning']);
    expect(await weights('0.09 kW/rpm')).toEqual(['fails error']);
  });

  it('a preload past the yield of its bolts: both are disputed', async () => {
    const spec = passing('shafting/coupling-bolts')
      .replaceAll('bolts 4 x 1/2 in', 'bolts 4 x 6 mm')
      .replace('bolt class 8.8  bolt fit fitted', 'bolt fit clearance  bolt preload 80 kN');
    const said = (await judge(spec)).find(one => one.rule === 'shafting/coupling-bolts')!;
    expect(said.outcome).toBe('fails');
    expect(said.disputes?.map(one => one.written)).toEqual(['80 kN', '4 x 6 mm']);
  });

  it('in one mode of a line, and not in another that holds: what cannot be told is told', async () => {
    const spec = HYBRID.replace(/\n {6}mode [^\n]*/g, '').replace(
      'ahead clutch B',
      'ahead clutch B\n      mode passage { driven by engine }\n      mode harbour { driven by motor }',
    );
    const of = async (text: string) =>
      (await judge(text)).filter(one => one.rule === 'speed/gear-input-maximum').map(one => one.outcome);
    expect(await of(spec)).toEqual(['holds']);
    // Below the rated 2300 rpm: one of the two is wrong.
    expect(await of(spec.replace('high idle 2530 rpm', 'high idle 900 rpm'))).toEqual([]);
    const told = (await judge(spec.replace('high idle 2530 rpm', 'high idle 900 rpm')))
      .flatMap(one => [one, ...(one.folds ?? [])])
      .filter(one => one.rule === 'speed/gear-input-maximum');
    expect(told.map(one => one.outcome)).toEqual(['cannot tell']);
  });
});
