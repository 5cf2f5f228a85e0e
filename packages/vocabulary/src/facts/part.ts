import type { Origin } from '@tailshaft/mechanics';
import type { Role } from '../words.js';
import type { Fact, SourceNote } from './fact.js';

/**
 * What becomes of a part between the arrangement as found and this one, through any number of steps. `new` where the
 * arrangement revises nothing, or the line is new.
 */
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
  /** What the statement of this arrangement does with it, where that differs: a part fitted by the step before is retained. */
  readonly stated?: Change;
  /** Set on a part that is kept: where it was last declared, through any number of arrangements that only keep it. */
  readonly keptFrom?: KeptFrom;
  readonly entry?: EntryNote;
  /** The statement in the line that puts the part there: where a fact of its installation is to be written. */
  readonly origin: Origin;
  /** The name of the catalogue entry as written in the line. */
  readonly nameOrigin?: Origin;
  readonly source?: Fact<SourceNote>;
  /** What is said at the place that the entry says as well. */
  readonly restated?: readonly Restated[];
}

/** One property said by a catalogue entry and at the place of a part. */
export interface Restated {
  readonly property: string;
  readonly inEntry: Fact<unknown>;
  readonly atPlace: Fact<unknown>;
  readonly same: boolean;
}

export interface KeptFrom {
  readonly arrangement: string;
  readonly line: string;
  /** The part as it was there. */
  readonly part: Part;
}

/** What the statement in the text does with the part: edits start from it. */
export function statementOf({ stated, change }: Pick<Part, 'stated' | 'change'>): Change {
  return stated ?? change;
}

/** Where a fact of the part itself belongs: its catalogue entry, or the line when it is declared in place. */
export function home(part: Part): Origin {
  return part.entry?.origin ?? part.origin;
}

/** A name for messages: `gear Alder-63`, or `the gear` when it has none. */
export function nameOf(part: Part): string {
  return part.entry ? `${part.role} ${part.entry.name}` : `the ${part.role}`;
}
