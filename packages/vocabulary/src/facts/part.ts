import type { Origin } from '@tailshaft/mechanics';
import type { Fact, SourceNote } from './fact.js';

export type Role = 'engine' | 'motor' | 'coupling' | 'gear' | 'transfer' | 'shaft' | 'propeller';

/** What a repower does with a part. `new` where the arrangement revises nothing. */
export type Change = 'new' | 'replaced' | 'retained' | 'modified';

/** A catalogue entry as a part refers to it. */
export interface EntryNote {
  readonly name: string;
  readonly title?: string;
  /** The entry's block: where its missing facts are to be written. */
  readonly origin: Origin;
  readonly doc?: string;
}

/** A part at its place in a line: catalogue facts overlaid by the facts written in place. */
export interface Part<R extends Role = Role> {
  readonly role: R;
  /** Path in the vessel, e.g. `proposed.Port.gear`. */
  readonly path: string;
  readonly change: Change;
  readonly entry?: EntryNote;
  /** The statement in the line that puts the part there: where a fact of its installation is to be written. */
  readonly origin: Origin;
  /** The name of the catalogue entry as written in the line. */
  readonly nameOrigin?: Origin;
  readonly source?: Fact<SourceNote>;
}

/** Where a fact of the part itself belongs: its catalogue entry, or the line when it is declared in place. */
export function home(part: Part): Origin {
  return part.entry?.origin ?? part.origin;
}

/** A name for messages: `gear Alder-63`, or `the gear` when it has none. */
export function nameOf(part: Part): string {
  return part.entry ? `${part.role} ${part.entry.name}` : `the ${part.role}`;
}
