import type { Place } from '../reading/place.js';

/** What carries a name. A ratio and a duty class are called by what they are, which is no name to change. */
export type NameKind =
  | 'engine'
  | 'motor'
  | 'gear'
  | 'transfer'
  | 'coupling'
  | 'propeller'
  | 'shaft material'
  | 'clutch'
  | 'shaft line'
  | 'arrangement'
  | 'vessel'
  | 'ratio'
  | 'rating';

/** One place where something is called by its name. */
export interface Occurrence extends Place {
  readonly kind: NameKind;
  readonly name: string;
  /** The same for all occurrences of one thing, and for those only. */
  readonly key: string;
  /** The declaration with everything that belongs to it; absent where the name is only used. */
  readonly declares?: Place;
  /** Which of several declarations is meant here, when that is known. */
  readonly means?: Place;
}

/** The thing that a place declares, for keys of what is declared inside it. */
export function keyAt({ uri, start }: Place): string {
  return `${uri}#${start}`;
}

export function entryKey(kind: string, namePlace: Place): string {
  return `${kind} ${keyAt(namePlace)}`;
}
