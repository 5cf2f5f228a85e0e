import type { Change, Lost } from '../change.js';
import type { Judged } from '../rejudge.js';
import { newRefusals, pairs, tallies } from './tally.js';

/** A fact was added: what held or failed on what was known does not turn about. */
export function compareAdded(_: Change, before: Judged, after: Judged): readonly Lost[] | undefined {
  if (newRefusals(before, after).length > 0) return undefined;
  return pairs(tallies(before), tallies(after)).flatMap(({ was, is }) => {
    const { rule, subject } = was;
    if (is.fails > was.fails && is.holds < was.holds) return [{ rule, subject, how: 'holds became fails' }];
    if (is.fails < was.fails && is.holds > was.holds) return [{ rule, subject, how: 'fails became holds' }];
    return [];
  });
}
