import type { Evidence, Fact, UnitConcern } from '@tailshaft/drivetrain';
import type { Origin } from '@tailshaft/mechanics';
import type { BlockRow, Role, Row, Vocabulary } from '@tailshaft/vocabulary';
import type { Problem } from './problem.js';

/** A stretch of one file: the origin that model objects carry. Offsets are UTF-16 code units. */
export interface Place {
  readonly uri: string;
  readonly start: number;
  readonly end: number;
}

/** A place that holds facts: a block with its header. `start`..`end` is the header, what a finding underlines. */
export interface Host extends Place {
  readonly vocabulary: Vocabulary;
  /** Where header facts are added: just behind the header. */
  readonly headEnd: number;
  /** What may stand behind the header without a block: facts of a part's header, facts on the same line, or nothing. */
  readonly form?: 'part' | 'nested' | 'line';
  /** Offsets of the opening brace and of the end behind the closing one. */
  readonly block?: { readonly start: number; readonly end: number };
  /** Set for a part that stands nowhere in the text: new facts are written as a statement of this role in that block. */
  readonly insertInto?: Host;
  readonly insertAs?: Role;
  /** Set for a block of a kept part that is written in an arrangement before: what is said of it now goes into the part. */
  readonly saidIn?: { readonly host: Host; readonly words: string };
  /** Set for a part that is kept by one statement with others of its role, or by one that stands before its place. */
  readonly keeps?: Kept;
  /** The weak evidence of its head, `rated medium [hearsay] { }`: what it holds is no better, unless it says of itself. */
  readonly doubt?: Evidence;
  /** The part names a catalogue entry that does not exist: what is missing of it is no separate finding. */
  readonly unresolved?: boolean;
  /** Facts of the header and the block together. Filled in when the block has been read. */
  reading?: BlockReading;
}

/** What is to be said as well when another part comes in the place of one that is kept. */
export interface Kept {
  /** All parts that the statement keeps, in order, and which of them it is. */
  readonly names: readonly (string | undefined)[];
  readonly own: number;
  /** The statement that another part must be written behind, for it to stand where this one does. */
  readonly behind?: Host;
}

export interface Range {
  readonly start: number;
  readonly end: number;
}

/** A property as it was found in the text. */
export interface FactReading {
  readonly row: Row;
  /** The property's words; empty range at the value for a bare one. */
  readonly words: Range;
  /** The value without its evidence; undefined when it could not be read at all. */
  readonly value?: Range;
  readonly evidence?: Range;
  readonly fact?: Fact<unknown>;
  /** Something of the value could not be read as meant, and a problem says so. */
  readonly doubtful?: boolean;
}

/** A stretch that says nothing yet, with its words. */
export interface Unread extends Range {
  readonly text: string;
}

/** A block inside the block: `clutch A ... { }`. */
export interface NestedReading {
  readonly row: BlockRow;
  readonly words: Range;
  readonly head?: FactReading;
  readonly host: Host;
}

/** All that a block of facts says. */
export interface BlockReading {
  readonly host: Host;
  readonly facts: FactReading[];
  readonly nested: NestedReading[];
  /** Model fields by name, as the vocabulary's rows say. */
  readonly fields: Record<string, unknown>;
  readonly problems: Problem[];
  readonly concerns: UnitConcern[];
  /** Words of properties of which nothing more was typed yet, and other unread stretches: for completion. */
  readonly unread: Unread[];
}

/** An origin seen as the place it is. */
export function placeOf(origin: Origin): Place {
  return origin as Place;
}

/** An origin seen as a host, when it is one. */
export function hostOf(origin: Origin): Host | undefined {
  return 'vocabulary' in origin ? (origin as Host) : undefined;
}
