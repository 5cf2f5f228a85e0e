import type { Change, Lost } from '../change.js';
import type { Judged } from '../rejudge.js';
import { newRefusals, pairs, tallies } from './tally.js';

/**
 * A number was pushed out of all proportion: what holds then and did not before says so on that number, or else the text
 * is refused.
 */
export function comparePushed(change: Change, before: Judged, after: Judged): readonly Lost[] {
  if (newRefusals(before, after).length > 0) return [];
  return pairs(tallies(before), tallies(after)).flatMap(({ was, is }) => {
    if (is.holds <= was.holds) return [];
    // Two statements that the other number reconciles hold back nothing any longer.
    if (was.told.some(one => one.disputed)) return [];
    const stands = is.told
      .filter(one => one.outcome === 'holds')
      .every(
        one =>
          one.readAt().has(change.at!) || one.message.includes(change.number!) || had(before, one.message),
      );
    if (stands) return [];
    const from = was.fails > is.fails ? 'fails' : was.open > is.open ? 'cannot tell' : 'silence';
    return [{ rule: was.rule, subject: was.subject, how: `${from} became holds` }];
  });
}

function had(before: Judged, message: string): boolean {
  return before.told.some(one => one.outcome === 'holds' && one.message === message);
}
