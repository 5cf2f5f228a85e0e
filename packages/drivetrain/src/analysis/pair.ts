import { renamed, type Value } from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import { home, nameOf } from '../model/part.js';
import { isSaid } from '../model/reads.js';
import type { Propeller } from '../model/shafting.js';

/** Two propellers on one leg that turn against each other: the kind says so, or a fact that only such a pair has. */
export function isPair(propeller: Propeller): boolean {
  return propeller.kind?.value === 'counter-rotating pair' || isSaid(() => propeller.afterHand);
}

/** The diameter of a propeller; of a pair the greater of the two. */
export function greatestDiameter(propeller: Propeller, needs: Needs): Value<'length'> | undefined {
  const wanted = (property: string, of: string) => ({
    what: `diameter of ${of}${nameOf(propeller)}`,
    host: home(propeller),
    property,
  });
  const own = needs.fact(propeller.diameter, wanted('diameter', ''));
  if (!isPair(propeller)) return own;
  const after = needs.fact(propeller.afterDiameter, wanted('after diameter', 'the after one of '));
  return own && after && (after.si > own.si ? renamed(after, 'diameter of the after propeller', 'D') : own);
}

/** Notes that a check covers single propellers only, where the line has a pair. */
export function missPair(propeller: Propeller, what: string, needs: Needs): void {
  if (isPair(propeller))
    needs.miss({
      what: `${what} of both propellers of the pair, each on its shaft, by the maker of the leg`,
      host: propeller.origin,
      property: 'kind',
      example: 'unknown',
    });
}
