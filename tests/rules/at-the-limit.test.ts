import { RULES, type Verdict } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { Bench } from '../silence/rejudge.js';
import { edited, factsOf, type WrittenFact } from '../silence/written.js';
import { share } from '../support/share.js';

async function judged(bench: Bench, text: string): Promise<readonly Verdict[]> {
  const { check } = await bench.judge(text);
  const all = [...check.vessels, ...check.entries].flatMap(one => one.verdicts);
  return all.flatMap(one => [one, ...(one.folds ?? [])]);
}

/** The text with one number times so much. */
function scaled(text: string, { value }: WrittenFact, times: number): string | undefined {
  const written = text.slice(value.start, value.end);
  const found = /^(\d+(?:\.\d+)?)(?![\d/:]| \d)/.exec(written);
  if (!found) return undefined;
  const number = String(Number((Number(found[1]) * times).toPrecision(9)));
  return edited(text, { ...value, text: number + written.slice(found[1]!.length) });
}

/** A verdict of the rule that misses its criterion by less than that is good for, found by moving one number of the text. */
async function nearTheLimit(id: string, estimate: number): Promise<Verdict | undefined> {
  const text = RULES.find(one => one.id === id)!.examples().failing;
  const bench = new Bench();
  const first = (await judged(bench, text)).find(one => one.rule === id && one.outcome === 'fails')!;
  const facts = factsOf((await new Bench().judge(text)).check);
  const at = async (fact: WrittenFact, times: number) => {
    const other = scaled(text, fact, times);
    if (!other) return undefined;
    const all = (await judged(bench, other)).filter(one => one.rule === id && one.subject === first.subject);
    return all.sort((one, two) => (two.over ?? 0) - (one.over ?? 0))[0];
  };
  for (const fact of facts) {
    // Along a straight line through two tries, again and again, until one is on either side; then halfway between them.
    let [before, now] = [
      { times: 1, over: first.over! },
      { times: 1.01, over: (await at(fact, 1.01))?.over },
    ];
    let [fails, holds]: (number | undefined)[] = [1, undefined];
    // Where it is none, step by step.
    let wide = 0.3;
    for (let step = 0; step < 30 && now.over !== undefined && now.over !== before.over; step += 1) {
      const slope = (now.over - before.over) / (now.times - before.times);
      const times: number =
        holds === undefined ? now.times + (1 + estimate / 2 - now.over) / slope : (fails! + holds) / 2;
      if (!(times > 0.05 && times < 20)) {
        while (wide < 3.3 && (await at(fact, wide))?.outcome !== 'holds') wide *= 1.04;
        if (wide >= 3.3) break;
        [fails, holds] = [wide / 1.04, wide];
        continue;
      }
      const said = await at(fact, times);
      if (said?.outcome === 'fails' && said.over! > 1 && said.over! <= 1 + estimate * 0.9) return said;
      if (said?.outcome === 'holds') holds = times;
      else fails = times;
      [before, now] = [
        { times: now.times, over: now.over },
        { times, over: said?.over },
      ];
    }
  }
  return undefined;
}

describe('a criterion that is an estimate or a guide', () => {
  const estimated = RULES.filter(one => one.estimate !== undefined);

  it.each(share(estimated, 3).map(one => [one.id, one] as const))(
    '%s: what misses it by less is at the limit',
    async (id, rule) => {
      const said = await nearTheLimit(id, rule.estimate!);
      expect(said, 'a number of its failing example that leads to the limit').toBeDefined();
      expect(said!.over).toBeGreaterThan(1);
      // What the author chose is a limit, and has no such room.
      if (said!.criterionChosenBy === 'author') return expect(said!.message).not.toContain('at the limit');
      expect(said!.severity).not.toBe('error');
      expect(said!.message).toContain('at the limit');
    },
  );

  it('every other rule that compares numbers says whose limit it is', async () => {
    const bench = new Bench();
    const open: string[] = [];
    for (const rule of RULES.filter(one => one.estimate === undefined)) {
      const all = await judged(bench, rule.examples().failing);
      const said = all.find(one => one.rule === rule.id && one.outcome === 'fails');
      const compares = said && (said.over !== undefined || said.workings.length > 0);
      if (compares && rule.limitOf === undefined) open.push(rule.id);
    }
    expect(open).toEqual([]);
  });
});
