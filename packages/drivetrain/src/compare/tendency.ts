import { compareDuty } from '../analysis/duty-class.js';
import type { Movement, SpecChange, StatementChange } from './change.js';
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

/** A lighter class, fewer hours, or no passengers any more: everything is judged for an easier service. */
export function dutyTendency(was: FlatFact | undefined, is: FlatFact | undefined): Tendency {
  if (was === undefined || is === undefined) return undefined;
  const [old, now] = [siOf(was), siOf(is)];
  if (old !== undefined && now !== undefined) return now < old ? 'relaxed' : 'tightened';
  const words = [was, is].map(one => (typeof one.value === 'string' ? one.value : undefined));
  if (words[0] === undefined || words[1] === undefined) return undefined;
  const way = compareDuty(words[1], words[0]);
  if (way === 'same') return undefined;
  if (way !== 'not comparable') return way === 'lighter' ? 'relaxed' : 'tightened';
  return NOTHING.has(words[1]) ? 'relaxed' : NOTHING.has(words[0]) ? 'tightened' : 'chosen otherwise';
}

const NOTHING = new Set(['none', 'no']);

/** An assumption is the author's own: with what holds better for it, it is easily the milder one. */
export function assumedOtherwise(
  statements: readonly StatementChange[],
  moves: readonly SpecChange[],
): StatementChange[] {
  const eased = moves.some(
    one => one.kind === 'verdict' && one.severity !== 'note' && EASED.has(one.movement),
  );
  return statements.map(one =>
    eased && one.about === 'assumption' ? { ...one, tendency: 'chosen otherwise' } : one,
  );
}

const EASED = new Set<Movement>(['newly holds', 'margin larger', 'fails by less']);

function siOf(fact: FlatFact | undefined): number | undefined {
  const value = fact?.value;
  return typeof value === 'object' && value !== null && 'si' in value ? Number(value.si) : undefined;
}
