import { type Needed, RULES, type Verdict } from '@tailshaft/drivetrain';
import { placeOf } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { type Checked, checkText } from '../support/check.js';
import { share } from '../support/share.js';

/*
 * The figure that would put a failure right is the least that does: with one that falls short of it by a little the check
 * still fails (or cannot tell, where the figure contradicts another then). So each rule is held to its own limit from the failing side as well, in the unit of the
 * author and for every declared figure that it rests on.
 */

/** More than any rounding of a figure, and less than any choice of one. */
const SHORT = 0.03;

const own = (checked: Checked, id: string): Verdict[] =>
  [...checked.check.vessels, ...checked.check.entries]
    .flatMap(one => one.verdicts)
    .flatMap(one => [one, ...(one.folds ?? [])])
    .filter(one => one.rule === id && !one.asFound);

const failing = (checked: Checked, id: string) => own(checked, id).filter(one => one.outcome === 'fails');
const open = (checked: Checked, id: string) => own(checked, id).filter(one => one.outcome !== 'holds');

/** The figure as it would be written, a little short of what is needed, where that is still better than what stands. */
function shortOf({ bound, si, now, written }: Needed): string | undefined {
  const change = bound === 'at least' ? 1 - SHORT : 1 + SHORT;
  const better = bound === 'at least' ? si * change > now.si : si * change < now.si;
  if (bound === 'exactly' || !better) return undefined;
  return written.replace(/\d+(?:\.\d+)?/, figure => `${Number((Number(figure) * change).toPrecision(8))}`);
}

describe('a figure that a failing check names is the least that puts it right', () => {
  const rules = RULES.filter(one => one.noFigure === undefined);
  it.each(share(rules, 30).map(rule => [rule.id, rule] as const))('%s', async (id, rule) => {
    const text = rule.examples().failing;
    const wrong: string[] = [];
    const checked = await checkText(text);
    for (const verdict of failing(checked, id))
      for (const one of verdict.needed ?? []) {
        const written = shortOf(one);
        if (written === undefined) continue;
        const { start, end } = placeOf(one.at);
        const then = await checkText(text.slice(0, start) + written + text.slice(end));
        // A part of a count, as half a collar, is refused.
        if (then.findings.some(finding => finding.code.startsWith('text/'))) continue;
        if (open(then, id).length < open(checked, id).length)
          wrong.push(`${one.of} ${one.property} ${written} does as well as ${one.bound} ${one.written}`);
      }
    expect(wrong).toEqual([]);
  });
});
