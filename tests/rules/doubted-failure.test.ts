import { RULES } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { doubt } from '../silence/changes/doubt.js';
import { Bench } from '../silence/rejudge.js';
import { share } from '../support/share.js';

/** Rules about how a value is known: their failing examples fail by the evidence that a doubt replaces. */
const OF_EVIDENCE = new Set(['propeller/stamped-size', 'paper/sister-vessel', 'paper/record-stale']);

const judged = RULES.filter(rule => !OF_EVIDENCE.has(rule.id));
const turning = judged.filter(rule => rule.id.startsWith('rotation/'));
const others = judged.filter(rule => !turning.includes(rule));

/** Every fact of the failing example of every rule, doubted by itself. */
it.each([...share(turning, 5), ...share(others, 3)].map(rule => [rule.id, rule] as const))(
  '%s fails whichever of its facts is doubted',
  async (id, rule) => {
    const bench = new Bench();
    const base = await bench.judge(rule.examples().failing);
    const fails = (told: typeof base.told) =>
      told.filter(one => one.rule === id && one.outcome === 'fails').length;
    expect(fails(base.told)).toBeGreaterThan(0);
    const lost: string[] = [];
    for (const change of [...doubt(base)]) {
      const after = await bench.judge(change.text);
      if (after.refused.length === 0 && fails(after.told) === 0) lost.push(change.what);
    }
    expect(lost).toEqual([]);
  },
);
