import type { Origin } from '@tailshaft/mechanics';

/** An edit in terms of the model; whoever owns the text turns it into text. */
export type ModelEdit =
  /** Writes a property of a block or statement: replaces its value, or adds it where it is absent. */
  | { readonly do: 'set'; readonly host: Origin; readonly property: string; readonly text: string }
  /** Puts other words in the place of a declared value or name. */
  | { readonly do: 'replace'; readonly at: Origin; readonly text: string }
  /** Declares an entry, in front of the vessel that a place belongs to. */
  | { readonly do: 'declare'; readonly before: Origin; readonly text: string }
  /**
   * Declares an entry in front of a vessel that says what another one says, but for some words. It is a part to be found: no
   * document vouches for it, so its source is an open question.
   */
  | {
      readonly do: 'declare like';
      readonly before: Origin;
      readonly entry: Origin;
      readonly name: string;
      readonly title: string;
      readonly changes: readonly WordChange[];
    }
  /** Puts another part in the place of one that is kept, in the words of the statement that fitted it, but for some. */
  | {
      readonly do: 'fit anew';
      readonly at: Origin;
      readonly like: Origin;
      readonly changes: readonly WordChange[];
    }
  /** Takes a whole statement out, with the lines it stands on. */
  | { readonly do: 'remove'; readonly at: Origin }
  /** Exchanges two declared places. */
  | { readonly do: 'swap'; readonly one: Origin; readonly other: Origin };

/** Other words for a declared value or name; of a block, for the word that tells it from others of its kind. */
export interface WordChange {
  readonly at: Origin;
  readonly text: string;
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
