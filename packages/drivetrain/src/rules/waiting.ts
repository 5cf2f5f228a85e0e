import type { Origin } from '@tailshaft/mechanics';
import { cannotTellWords } from '../judge/cannot-tell-words.js';
import type { Needs } from '../judge/needs.js';
import type { Said, sayFor } from '../judge/say.js';
import type { Verdict } from '../judge/verdict.js';
import { stubRoutes } from './rotation/edits.js';

/**
 * The verdict of a check that waits for facts: names all of them, and offers to write each as an open question. `known`
 * is the half that can be told already.
 */
export function waits(
  say: ReturnType<typeof sayFor>,
  needs: Needs,
  place: Origin,
  what: string,
  { known, ...more }: Partial<Said> & { readonly known?: string } = {},
): Verdict {
  const half = known ? ` Known so far: ${known}.` : '';
  return say.cannotTell(needs, {
    place: needs.missing[0]?.at ?? place,
    message: `${cannotTellWords(what, needs.missing)}${half}`,
    routes: () => stubRoutes(needs.missing),
    ...more,
  });
}
