import type { Verdict } from '@tailshaft/drivetrain';
import { placeOf } from '@tailshaft/language';
import { expect, it } from 'vitest';
import { randomSpecs, writtenSpecs } from '../silence/base-specs.js';
import { Bench, type Judged } from '../silence/rejudge.js';
import { edited } from '../silence/written.js';
import { share } from '../support/share.js';

const SEED = Number(process.env.SEED ?? 1);

const failing = ({ check }: Judged): Verdict[] =>
  [...check.vessels, ...check.entries]
    .flatMap(one => one.verdicts)
    .flatMap(one => [one, ...(one.folds ?? [])])
    .filter(one => one.outcome === 'fails');

const keyOf = ({ rule, subject }: Verdict) => `${rule} ${subject}`;

/** How often each check fails. */
function tally(judged: Judged): Map<string, number> {
  const found = new Map<string, number>();
  for (const one of failing(judged)) found.set(keyOf(one), (found.get(keyOf(one)) ?? 0) + 1);
  return found;
}

it('a figure that a failing check names puts it right, in any spec', async () => {
  const wrong: string[] = [];
  let tried = 0;
  const specs = share([...randomSpecs(SEED * 3000, 60), ...share(writtenSpecs(), 12)], 14);
  for (const { name, text } of specs) {
    const base = await new Bench().judge(text);
    const was = tally(base);
    const bench = new Bench();
    const all = failing(base).flatMap(verdict => (verdict.needed ?? []).map(one => ({ verdict, one })));
    for (const { verdict, one } of share(all, 10)) {
      const { start, end } = placeOf(one.at);
      const then = await bench.judge(edited(text, { start, end, text: one.written }));
      const what = `${name}: ${keyOf(verdict)}: ${one.quantity} ${one.bound} ${one.written} instead of ${text.slice(start, end)}`;
      // A figure out of all proportion is refused, which is another finding.
      if (then.refused.length > base.refused.length) wrong.push(`${what} is refused: ${then.refused.at(-1)}`);
      else if ((tally(then).get(keyOf(verdict)) ?? 0) >= was.get(keyOf(verdict))!)
        wrong.push(`${what}: ${failing(then).find(other => keyOf(other) === keyOf(verdict))?.message}`);
      tried += 1;
    }
  }
  expect(tried).toBeGreaterThan(50);
  expect(wrong).toEqual([]);
}, 900_000);
