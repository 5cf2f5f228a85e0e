import type { Acceptance } from '../model/vessel.js';
import type { StatementChange, VerdictMove } from './change.js';
import { pairUp } from './pairing.js';
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
      words: `acceptance of ${move.rule} is no longer needed: remove it, so that it cannot hide a later failure`,
      placeAfter: acceptance.origin,
    });
  }
  return found;
}

/** Acceptances by rule and place, then by rule: wider, longer or by somebody else is weaker than before. */
export function acceptanceChanges(
  before: readonly Acceptance[],
  after: readonly Acceptance[],
  subject: string,
): StatementChange[] {
  const { pairs, removed, added } = pairUp(before, after, {
    name: one => `${one.rule} on ${one.on}`,
    place: one => one.rule,
    traits: one => new Set([one.rule, `because ${one.because}`]),
    likeness: 0.3,
  });
  const changes: StatementChange[] = [];
  const tell = (was: Acceptance | undefined, is: Acceptance | undefined) => {
    const [from, to] = [was && acceptanceWords(was), is && acceptanceWords(is)];
    if (from === to) return;
    const { tendency, words } = tendencyOf(was, is);
    changes.push({
      kind: 'statement',
      about: 'acceptance',
      subject,
      before: from,
      after: to,
      weight: tendency === 'relaxed' ? 21 : 29,
      words: was && is ? `acceptance ${words}: ${from} → ${to}` : `acceptance ${words}: ${to ?? from}`,
      ...(tendency ? { tendency } : {}),
      ...(was ? { placeBefore: was.origin } : {}),
      ...(is ? { placeAfter: is.origin } : {}),
    });
  };
  for (const [was, is] of pairs) tell(was, is);
  for (const one of removed) tell(one, undefined);
  for (const one of added) tell(undefined, one);
  return changes;
}

function tendencyOf(
  was: Acceptance | undefined,
  is: Acceptance | undefined,
): { tendency: StatementChange['tendency']; words: string } {
  if (!is) return { tendency: 'tightened', words: 'taken out' };
  if (!was) return { tendency: 'relaxed', words: 'added' };
  const weaker: string[] = [];
  if (was.rule !== is.rule) weaker.push('of another rule');
  if (isWithin(was.on, is.on)) weaker.push('widened');
  else if (was.on !== is.on && !isWithin(is.on, was.on)) weaker.push('of another place');
  if ((is.until ?? FOREVER) > (was.until ?? FOREVER)) weaker.push('prolonged');
  if (was.by !== is.by) weaker.push('by somebody else');
  // Under a later date it is another decision, that its term and what it knew are counted from.
  if ((is.dated ?? '') > (was.dated ?? '')) weaker.push('dated anew');
  if (was.because !== is.because) weaker.push('for another reason');
  if (weaker.length > 0) return { tendency: 'relaxed', words: `weakened (${weaker.join(', ')})` };
  const narrower = isWithin(is.on, was.on) || (is.until ?? FOREVER) < (was.until ?? FOREVER);
  return narrower ? { tendency: 'tightened', words: 'narrowed' } : { tendency: undefined, words: 'changed' };
}

const FOREVER = '9999-12-31';

/** Whether one path lies below another: `Port.shaft` below `Port`. */
function isWithin(inner: string, outer: string): boolean {
  return inner !== outer && inner.startsWith(`${outer}.`);
}

function acceptanceWords(one: Acceptance): string {
  return [
    `${one.rule} on ${one.on}`,
    one.by ? `by ${one.by}` : 'by nobody',
    one.dated && `dated ${one.dated}`,
    one.until ? `until ${one.until}` : 'with no last day',
    one.because && `because "${one.because}"`,
  ]
    .filter(Boolean)
    .join(' ');
}
