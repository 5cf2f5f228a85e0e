import type { Dimension, Origin, Value } from '@tailshaft/mechanics';
import type { EvidenceKind, RotationWord, View } from '../words.js';

export interface Evidence {
  readonly kind: EvidenceKind;
  /** ISO date. */
  readonly dated?: string;
  /** Drawing number, document, person's role. */
  readonly note?: string;
}

/** One declared fact. `value` is undefined where the author wrote `unknown`: an open question, never a value. */
export interface Fact<T> {
  readonly value: T | undefined;
  /** The author's own words for the value. */
  readonly written: string;
  /** The value's place in the text. */
  readonly origin: Origin;
  readonly evidence?: Evidence;
  /** Parts of a compound value that are written `unknown`; where it means nothing without them, `value` is undefined. */
  readonly open?: readonly string[];
  /** What is known of such a value: the power of `350 hp at unknown`. */
  readonly known?: Readonly<Record<string, unknown>>;
  /** Why the number or its unit is a slip: it lies outside what such a thing can be. Nothing holds on such a fact. */
  readonly outOfRange?: string;
  /** Why a value that was declared no longer counts: `40 mm was measured with diameter 22 in, which is 24 in now`. */
  readonly lapsed?: string;
  /** Why a value that is still used may be true no longer, in the same words: nothing holds on it. */
  readonly outdated?: string;
}

/** A declared quantity. */
export type Quantity<D extends Dimension = Dimension> = Fact<Value<D>>;

/** What a fact holds: `Held<Trial['bottom']>` is a word. */
export type Held<F> = NonNullable<F> extends Fact<infer T> ? T : never;

/** `20 .. 24 bar`. */
export interface Span<D extends Dimension = Dimension> {
  readonly low: Value<D>;
  readonly high: Value<D>;
}

/** `300 kW at 2300 rpm`. */
export interface Point<Y extends Dimension = Dimension, X extends Dimension = Dimension> {
  readonly y: Value<Y>;
  readonly x: Value<X>;
}

export interface Rotation {
  readonly word: RotationWord;
  readonly viewedFrom?: View;
}

/** `source "title" dated 2025-02-10`. */
export interface SourceNote {
  readonly title: string;
  readonly dated?: string;
}

export interface Bolts {
  readonly count: number;
  readonly size: Value<'length'>;
}

/** The value of a fact, or undefined when absent or an open question. */
export function known<T>(fact: Fact<T> | undefined): T | undefined {
  return fact?.value;
}

/** Hearsay and assumption cannot close a rotation check. */
export function isWeak(fact: Fact<unknown> | undefined): boolean {
  return fact?.evidence?.kind === 'hearsay' || fact?.evidence?.kind === 'assumed';
}
