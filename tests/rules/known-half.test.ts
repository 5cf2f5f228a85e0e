import { RULES, type Verdict } from '@tailshaft/drivetrain';
import { type Value, valuesBehind } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { Bench, type Judged } from '../silence/rejudge.js';
import { edited, factsOf, type WrittenFact } from '../silence/written.js';
import { share } from '../support/share.js';
import { HALF_NOT_TOLD } from './half-not-told.js';

const own = ({ check }: Judged, id: string): Verdict[] =>
  [...check.vessels, ...check.entries]
    .flatMap(one => one.verdicts)
    .flatMap(one => [one, ...(one.folds ?? [])])
    .filter(one => one.rule === id && !one.asFound);

const valuesOf = ({ capacity, demand, workings }: Verdict): Value[] =>
  [capacity, demand, ...workings].filter(one => one !== undefined);

const placesBehind = (value: Value): number[] =>
  [...valuesBehind(value)].flatMap(one => (one.origin as { start?: number } | undefined)?.start ?? []);

/** What a check computed and told, with the places that each number rests on; read before the text is judged again. */
interface Told {
  readonly subject: string;
  readonly value: Value;
  readonly at: readonly number[];
}

const toldBy = (verdicts: readonly Verdict[]): Told[] =>
  verdicts
    .filter(one => one.outcome === 'holds' || one.outcome === 'fails')
    .flatMap(verdict =>
      valuesOf(verdict)
        .filter(value => value.working && Number.isFinite(value.si))
        .map(value => ({ subject: verdict.subject, value, at: placesBehind(value) })),
    );

const within = ({ value }: WrittenFact, at: number) => at >= value.start && at <= value.end;

/** Whether a number stands among what a verdict tells, itself or behind another one. */
const stands = (value: Value, verdict: Verdict): boolean =>
  valuesOf(verdict).some(top =>
    [...valuesBehind(top)].some(one => Math.abs(one.si / value.si - 1) < 1e-9 || one.si === value.si),
  );

describe.each(share(RULES, 50).map(rule => [rule.id, rule] as const))('%s', (id, rule) => {
  it('tells what it can compute while it waits for the rest', async () => {
    const missing: string[] = [];
    for (const text of new Set([rule.examples().passing, rule.examples().failing])) {
      const base = await new Bench().judge(text);
      const told = toldBy(own(base, id));
      const facts = factsOf(base.check).filter(fact => told.some(one => one.at.some(at => within(fact, at))));
      const bench = new Bench();
      for (const fact of share(facts, 3)) {
        const { start, end } = fact.value;
        const after = await bench.judge(edited(text, { start, end, text: 'unknown' }));
        const open = own(after, id).filter(one => one.outcome === 'cannot tell');
        for (const { subject, value, at } of told) {
          if (at.some(place => within(fact, place))) continue;
          const said = own(after, id).filter(one => one.subject === subject);
          if (open.some(one => said.includes(one)) && !said.some(one => stands(value, one)))
            missing.push(`without ${fact.property}: ${value.label}`);
        }
      }
    }
    const left = [...new Set(missing)].filter(one => !HALF_NOT_TOLD[id]?.some(([what]) => what.test(one)));
    expect(left).toEqual([]);
  }, 300_000);
});
