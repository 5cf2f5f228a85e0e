import { PLACE_VOCABULARY, rowOf, wordsOf } from '@tailshaft/vocabulary';
import type { Needs } from '../judge/needs.js';
import { meaningOf } from '../model/meaning.js';
import { nameOf, type Part } from '../model/part.js';
import { aside } from '../model/reads.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { asRunningBefore } from './mode-before.js';

/** Where a kept part was last declared, and what has been changed about it since. */
export interface Kept<P extends Part = Part> {
  /** The part as it was there. */
  readonly was: P;
  /** The line it stood in: what it carried or took there is known to have been so. */
  readonly line: ShaftLine;
  /** Fields that mean something else now, whether they were written at a modification or with a retained part. */
  readonly changed: ReadonlySet<string>;
}

/** What a part is compared with, if it is kept at all. */
export function keptOf<P extends Part>(part: P, line: ShaftLine, vessel: Vessel): Kept<P> | undefined {
  const from = part.keptFrom;
  if (from) {
    const there = vessel.arrangements
      .find(one => one.name === from.arrangement)
      ?.lines.find(one => one.name === from.line);
    return (
      there && {
        was: from.part as P,
        line: asRunningBefore(line, there, vessel),
        changed: changedSince(from.part, part),
      }
    );
  }
  if ((part.change !== 'retained' && part.change !== 'modified') || !line.before) return undefined;
  const was = line.before.chain.filter(one => one.role === part.role);
  const at = line.chain.filter(one => one.role === part.role).indexOf(part);
  const same = was[at] ?? was.at(-1);
  return same && { was: same as P, line: line.before, changed: changedSince(same, part) };
}

/** What of a kept part has changed that a check rests on, in the words of the spec. */
export function changedOf<P extends Part>(
  { changed }: Kept<P>,
  restsOn: readonly NoInfer<FieldOf<P>>[],
): string[] {
  return restsOn.filter(field => changed.has(field));
}

/** A field that a part of one of these kinds has: a name that none has would never be among those that changed. */
export type FieldOf<P> = P extends unknown ? keyof P & string : never;

/** Notes each of some changed facts as what keeps a check from being made. */
export function missChanged(needs: Needs, part: Part, fields: readonly string[], why: string): void {
  for (const field of fields)
    needs.miss({
      what: `${why} with another ${fieldWords(part, field)} of ${nameOf(part)}`,
      host: part.origin,
      property: fieldWords(part, field),
    });
}

/** `area ratio` for `areaRatio`, as a spec says it. */
export function fieldWords({ role }: Part, field: string): string {
  return wordsOf(PLACE_VOCABULARY[role], field);
}

const NOT_FACTS = new Set([
  ...['role', 'path', 'change', 'stated', 'keptFrom', 'entry', 'origin', 'nameOrigin', 'source'],
  ...['grade', 'rating', 'variant'],
]);

/** To see what differs is to rest on none of it: a check rests on what it then reads. */
function changedSince(was: Part, is: Part): Set<string> {
  return aside(() => changedFields(was, is));
}

function changedFields(was: Part, is: Part): Set<string> {
  const [old, now] = [was, is] as unknown as Record<string, unknown>[];
  const fields = [...new Set([...Object.keys(old!), ...Object.keys(now!)])].filter(
    one => !NOT_FACTS.has(one),
  );
  return new Set(
    fields.filter(field => {
      // A fact that was not there before was found out since: it changes nothing about the thing. Where it was left out
      // with a meaning, whoever modifies the part and states it says that it is another now.
      if (old![field] === undefined)
        return is.change === 'modified' && rowOf(PLACE_VOCABULARY[is.role], field)?.absent !== undefined;
      if (now![field] === undefined) return false;
      // What only lapsed follows from another change, which is told.
      if ([now![field]].flat().some(one => (one as { lapsed?: string }).lapsed)) return false;
      return meaningOf(old![field]) !== meaningOf(now![field]);
    }),
  );
}
