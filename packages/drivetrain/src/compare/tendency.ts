import type { StatementChange } from './change.js';
import type { FlatFact } from './facts.js';

type Tendency = StatementChange['tendency'];

/** A larger number asks for more of what is at least so, and for less of what is at most so. */
export function criterionTendency(was: FlatFact | undefined, is: FlatFact | undefined): Tendency {
  const [old, now] = [siOf(was), siOf(is)];
  if (was === undefined) return undefined;
  // Without it the default judges, and another formula asks for something else: which is less cannot be said.
  const bound = (is ?? was).row?.bound;
  if (old === undefined || now === undefined || !bound) return 'chosen otherwise';
  return now > old === (bound === 'at least') ? 'tightened' : 'relaxed';
}

/** What a certificate states is a limit, of which more allows more. */
export function certificateTendency(was: FlatFact | undefined, is: FlatFact | undefined): Tendency {
  if (was === undefined) return 'tightened';
  const [old, now] = [siOf(was), siOf(is)];
  if (old === undefined || now === undefined) return 'chosen otherwise';
  return now > old ? 'relaxed' : 'tightened';
}

function siOf(fact: FlatFact | undefined): number | undefined {
  const value = fact?.value;
  return typeof value === 'object' && value !== null && 'si' in value ? Number(value.si) : undefined;
}
