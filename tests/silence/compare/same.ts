import type { Change, Lost } from '../change.js';
import type { Judged } from '../rejudge.js';
import { fateOf, newRefusals, pairs, tallies } from './tally.js';

/** The same was said in other words: every failure is still one. Undefined where the other words cannot be read. */
export function compareSame(change: Change, before: Judged, after: Judged): readonly Lost[] | undefined {
  if (newRefusals(before, after).length > 0) return undefined;
  return pairs(tallies(before, change.renamed), tallies(after)).flatMap(({ was, is }) => {
    const { rule, subject } = was;
    if (change.touches?.includes(rule)) return [];
    const fate = fateOf(was, is);
    if (fate) return [{ rule, subject, how: `fails became ${fate}` }];
    // A name decides nothing, so that a new one changes nothing at all.
    if (change.letter !== 'h') return [];
    if (is.fails === was.fails && is.holds === was.holds && is.open === was.open) return [];
    return [{ rule, subject, how: `${wordOf(was)} became ${wordOf(is)}` }];
  });
}

function wordOf({ fails, open, holds }: { fails: number; open: number; holds: number }): string {
  if (fails > 0) return 'fails';
  if (open > 0) return 'cannot tell';
  return holds > 0 ? 'holds' : 'silence';
}
