import type { Change, Lost } from '../change.js';
import type { Judged } from '../rejudge.js';
import { fateOf, newRefusals, pairs, tallies } from './tally.js';

/** A fact was called hearsay or assumed: it fails as before, and nothing new holds. */
export function compareDoubted(_: Change, before: Judged, after: Judged): readonly Lost[] | undefined {
  if (newRefusals(before, after).length > 0) return undefined;
  return pairs(tallies(before), tallies(after)).flatMap(({ was, is }) => {
    const { rule, subject } = was;
    const fate = fateOf(was, is);
    if (fate) return [{ rule, subject, how: `fails became ${fate}` }];
    if (is.holds > was.holds && is.open < was.open)
      return [{ rule, subject, how: 'cannot tell became holds' }];
    return [];
  });
}
