import { uncapital } from '@tailshaft/mechanics';
import type { Missing } from './verdict.js';

/**
 * The one sentence of a check that cannot tell: `Port: cannot tell whether the engine mounts line up with the beds. Needed: bed centres of
 * the vessel.` `what` is what it would tell, with its line in front: `Port: whether the engine mounts line up with the beds`.
 */
export function cannotTellWords(what: string, missing: readonly Pick<Missing, 'what'>[]): string {
  const needed = [...new Set(missing.map(one => one.what))].join('; ');
  return `${cannotTell(what)}. Needed: ${needed}.`;
}

/** The same without its needs: `Port: cannot tell whether the engine mounts line up with the beds`. */
export function cannotTell(what: string): string {
  const at = ASKED.exec(what)?.index ?? LEAD.exec(what)?.[0].length ?? 0;
  const [lead, asked] = [what.slice(0, at), what.slice(at)];
  const small = uncapital(asked);
  return `${lead}${lead === '' ? 'Cannot' : 'cannot'} tell ${ASKED.test(asked) ? small : asked}`;
}

/** Where the question begins. */
const ASKED = /(?<=^|[:;] )(?:whether|what|which|where|how)\b/i;
const LEAD = /^[^:]{1,60}: /;

/** The same where a method was tried and does not apply. */
export function refusedWords(
  what: string,
  refusal: string | undefined,
  missing: readonly Pick<Missing, 'what'>[],
): string {
  if (!refusal) return cannotTellWords(what, missing);
  const needed = missing.map(one => one.what).join('; ');
  return `${cannotTell(what)}: the method does not apply here. ${refusal} Needed: ${needed}.`;
}
