import type { StatementChange, VerdictMove } from './change.js';
import type { Side } from './side.js';

/** Acceptances that still stand in the text but cover nothing any more, because what they waived now holds. */
export function uselessAcceptances(after: Side, moves: readonly VerdictMove[]): StatementChange[] {
  const found: StatementChange[] = [];
  for (const move of moves) {
    if (move.before?.outcome !== 'accepted') continue;
    if (move.movement !== 'newly holds' && move.movement !== 'no longer judged') continue;
    const acceptance = after.vessel.acceptances.find(
      one => one.rule === move.rule && (move.subject === one.on || move.subject.includes(one.on)),
    );
    if (!acceptance) continue;
    found.push({
      kind: 'statement',
      about: 'acceptance',
      subject: move.subject,
      before: move.rule,
      after: move.rule,
      weight: 51,
      words: `acceptance of ${move.rule} is no longer needed: take it out, so that it cannot cover a later failure`,
      placeAfter: acceptance.origin,
    });
  }
  return found;
}
