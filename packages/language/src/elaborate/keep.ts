import type { Change } from '@tailshaft/drivetrain';
import type { PartLayers } from './part.js';

/** The line before, as far as keeping a part of it goes. */
interface LineBefore {
  readonly arrangement: string;
  readonly reading: { readonly name: string };
  readonly isBase: boolean;
}

/** A part of the line before that is kept, with what is said of it now laid over what it had. */
export function keep(own: PartLayers, old: PartLayers, before: LineBefore): PartLayers {
  return {
    ...over(own, old),
    change: sinceFound(own.stated, old.change, before.isBase),
    stated: own.stated,
    said: own.said,
    old,
    kept: old.kept ?? { arrangement: before.arrangement, line: before.reading.name, layers: old },
  };
}

/** One layer over another. */
export function over(own: PartLayers, beneath: PartLayers): PartLayers {
  const renamed = own.entry !== undefined || (own.name !== undefined && own.name !== beneath.name);
  return {
    ...beneath,
    path: own.path,
    origin: own.origin,
    ...(renamed
      ? {
          ...(own.name ? { name: own.name } : {}),
          ...(own.namePlace ? { namePlace: own.namePlace } : {}),
          ...(own.entry ? { entry: own.entry } : {}),
        }
      : {}),
    facts: [...beneath.facts, ...own.facts],
    said: { ...beneath.said, ...own.said },
  };
}

/** What became of a part since the vessel was found: one that a step before has fitted is fitted, however often it is kept. */
function sinceFound(stated: Change, old: Change, oldIsFound: boolean): Change {
  return oldIsFound || old === 'retained' ? stated : old;
}
