import type { Origin } from '@tailshaft/mechanics';
import type { Vocabulary } from '../vocabulary/kinds.js';
import type { BlockReading } from './block.js';

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
  readonly insertAs?: string;
  /** The part names a catalogue entry that does not exist: what is missing of it is no separate finding. */
  readonly unresolved?: boolean;
  /** Facts of the header and the block together. Filled in when the block has been read. */
  reading?: BlockReading;
}

/** An origin seen as the place it is. */
export function placeOf(origin: Origin): Place {
  return origin as Place;
}

/** An origin seen as a host, when it is one. */
export function hostOf(origin: Origin): Host | undefined {
  return 'vocabulary' in origin ? (origin as Host) : undefined;
}
