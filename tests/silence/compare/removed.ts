import type { Change, Lost } from '../change.js';
import type { Judged } from '../rejudge.js';
import { fateOf, newRefusals, pairs, tallies } from './tally.js';

/**
 * Something was left out: a failure may become an open question, of the same rule or one that names what is gone, and
 * nothing that could not be told may hold now.
 */
export function compareRemoved(change: Change, before: Judged, after: Judged): readonly Lost[] {
  if (newRefusals(before, after).length > 0) return [];
  const asked = newlyAsked(before, after);
  const named = (change.gone ?? []).some(words =>
    asked.some(one => one.includes(words) || words.includes(one)),
  );
  return pairs(tallies(before), tallies(after)).flatMap(({ was, is }) => {
    const { rule, subject } = was;
    const fate = fateOf(was, is);
    if (fate === 'holds') return [{ rule, subject, how: 'fails became holds' }];
    // Of two statements that contradict each other one is left: it says nothing against itself, and holds nothing back.
    const wasOfTwo = was.told.some(one => one.disputes.some(words => change.gone?.includes(words)));
    if (fate === 'silence' && !named && !wasOfTwo) return [{ rule, subject, how: 'fails became silence' }];
    if (was.told.some(one => one.disputed)) return [];
    if (is.open < was.open && is.holds > was.holds)
      return [{ rule, subject, how: 'cannot tell became holds' }];
    return [];
  });
}

/** Properties that more open questions ask for than before: one word may be asked for in several blocks. */
function newlyAsked(before: Judged, after: Judged): string[] {
  const counts = (judged: Judged) => {
    const found = new Map<string, number>();
    for (const words of judged.told.filter(one => one.outcome === 'cannot tell').flatMap(one => one.asked))
      found.set(words, (found.get(words) ?? 0) + 1);
    return found;
  };
  const had = counts(before);
  return [...counts(after)].flatMap(([words, count]) => (count > (had.get(words) ?? 0) ? [words] : []));
}
