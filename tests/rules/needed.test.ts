import { RULES, type Verdict } from '@tailshaft/drivetrain';
import { placeOf } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { type Checked, checkText } from '../support/check.js';

const own = (checked: Checked, id: string): Verdict[] =>
  [...checked.check.vessels, ...checked.check.entries]
    .flatMap(one => one.verdicts)
    .flatMap(one => [one, ...(one.folds ?? [])])
    .filter(one => one.rule === id);

const failing = (checked: Checked, id: string) =>
  own(checked, id).filter(one => one.outcome === 'fails' && !one.asFound);

describe.each(RULES.map(rule => [rule.id, rule] as const))('%s', (id, rule) => {
  const reason = rule.noFigure;
  it(reason ? 'names no figure, for a reason' : 'names the figures that would put it right', async () => {
    const text = rule.examples().failing;
    const checked = await checkText(text);
    const verdicts = failing(checked, id);
    expect(verdicts.length).toBeGreaterThan(0);
    const needed = verdicts.flatMap(verdict => (verdict.needed ?? []).map(one => ({ verdict, one })));
    expect(needed.length > 0, 'names a figure').toBe(reason === undefined);
    const wrong: string[] = [];
    for (const { verdict, one } of needed) {
      const { start, end } = placeOf(one.at);
      const then = await checkText(text.slice(0, start) + one.written + text.slice(end));
      const what = `${one.of} ${one.property} ${one.written} instead of ${text.slice(start, end)}`;
      if (then.findings.some(finding => finding.code.startsWith('text/')))
        wrong.push(`${what} does not read`);
      const left = failing(then, id).filter(other => other.subject === verdict.subject);
      if (left.length >= verdicts.filter(other => other.subject === verdict.subject).length)
        wrong.push(`${what}: ${left[0]!.message}`);
    }
    expect(wrong).toEqual([]);
  });
});
