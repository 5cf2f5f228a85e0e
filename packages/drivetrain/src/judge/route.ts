import type { Origin } from '@tailshaft/mechanics';
import type { EntryKind, Fact, NewBlock, NewFact, NewStatement, NewValue } from '@tailshaft/vocabulary';

/**
 * An edit in terms of the model: where, and what as data. Whoever owns the text turns it into text, in its layout; nothing here
 * holds a fragment of it.
 */
export type ModelEdit =
  /** Writes a property of a block or statement: replaces its value, or adds it where it is absent. */
  | { readonly do: 'set'; readonly host: Origin; readonly property: string; readonly value: NewValue }
  /** Adds a block to a part at its place. */
  | { readonly do: 'add'; readonly host: Origin; readonly block: NewBlock }
  /** Puts another value or name in the place of a declared one. */
  | { readonly do: 'replace'; readonly at: Origin; readonly value: NewValue }
  /** States a part anew where it stands: another one, or the same one with what is modified. */
  | { readonly do: 'state'; readonly at: Origin; readonly statement: NewStatement }
  /** Requires something else in the place of a requirement. */
  | { readonly do: 'require'; readonly at: Origin; readonly requirement: NewRequirement }
  /** Assumes something for a whole vessel, with the reason. */
  | { readonly do: 'assume'; readonly vessel: Origin; readonly assumption: NewAssumption }
  /** Declares an entry, in front of the vessel that a place belongs to. */
  | { readonly do: 'declare'; readonly before: Origin; readonly entry: NewEntry }
  | PlacedEdit<ValueChange>;

/** What moves or copies statements as they stand, with changes in them. */
export type PlacedEdit<Change> =
  /**
   * Declares an entry in front of a vessel that says what another one says, but for some values. It is a part to be found: no
   * document vouches for it, so its source is an open question.
   */
  | {
      readonly do: 'declare like';
      readonly before: Origin;
      readonly entry: Origin;
      readonly name: string;
      readonly title: string;
      readonly changes: readonly Change[];
    }
  /** Puts another part in the place of one that is kept, as the statement that fitted it says, but for some values. */
  | {
      readonly do: 'fit anew';
      readonly at: Origin;
      readonly like: Origin;
      readonly changes: readonly Change[];
    }
  /** Takes a whole statement out, with the lines it stands on. */
  | { readonly do: 'remove'; readonly at: Origin }
  /** Exchanges two declared places. */
  | { readonly do: 'swap'; readonly one: Origin; readonly other: Origin };

/** Another value in a declared place; of a block, for the word that tells it from others of its kind. */
export interface ValueChange {
  readonly at: Origin;
  readonly value: NewValue;
}

/** A catalogue entry that is declared anew. */
export interface NewEntry {
  readonly kind: EntryKind;
  readonly name: string;
  readonly title: string;
  readonly facts: readonly NewFact[];
}

/** What is assumed in the place of a default. */
export interface NewAssumption {
  readonly about: string;
  readonly value: NewValue;
  readonly because: string;
}

/** What is required of a computed quantity. */
export interface NewRequirement {
  readonly about: string;
  readonly bound: 'at least' | 'at most';
  readonly quantity: Fact<unknown>;
  readonly condition?: string;
  readonly mode?: string;
  readonly note?: string;
}

/**
 * What a way out is. It *corrects the record* where the text is wrong about the vessel, *changes the design* where the
 * vessel would be built otherwise, and *asks* where it leaves a blank for the author to fill.
 */
export type RouteKind = 'corrects the record' | 'changes the design' | 'asks';

/** A way to put a finding right, offered with what it leads to; never applied by itself. */
export interface Route {
  /** The change and its computed consequence: `Set the hand to right: the shaft turns clockwise ahead`. */
  readonly title: string;
  readonly edits: readonly ModelEdit[];
  /** The one that changes least, when there is exactly one such. */
  readonly preferred?: boolean;
  /** What it is, where it is not what its rule's ways out are. */
  readonly kind?: RouteKind;
  /** True where the edit leaves a blank for the author to fill: it turns one cannot-tell into an open question. */
  readonly stub?: boolean;
}
