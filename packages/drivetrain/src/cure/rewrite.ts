import type { ModelEdit } from '../judge/route.js';
import { type Part, statementOf } from '../model/part.js';
import { type Rewritten, replacementFor } from './statement.js';

/** Other sizes of a part: written over the old ones where it is new, and as another part where it is kept. */
export function rewrite(part: Part, sizes: Rewritten): ModelEdit[] {
  const stated = statementOf(part);
  if (stated !== 'retained' && stated !== 'modified')
    return [...sizes].map(([fact, value]) => ({ do: 'replace', at: fact.origin, value }));
  const statement = replacementFor(part, sizes);
  return statement ? [{ do: 'state', at: part.origin, statement }] : [];
}
