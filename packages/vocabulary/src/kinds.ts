import type { Datum, Dimension, Value } from '@tailshaft/mechanics';
import type { Bolts, Fact, Point, Rotation, SourceNote, Span } from './facts/fact.js';
import type {
  GearLayout,
  Lock,
  Mesh,
  OutputSense,
  Pilot,
  Ranking,
  ShaftCriterion,
  Variation,
} from './facts/values.js';

/** The form that a property's value takes in the text. `T` is what the reader makes of it. */
export type ValueKind<T = unknown> = KindShape & { readonly makes?: T };

export type KindShape =
  | { readonly form: 'quantity'; readonly dimension: Dimension; readonly datum?: Datum }
  | { readonly form: 'span'; readonly dimension: Dimension; readonly datum?: Datum }
  | { readonly form: 'point'; readonly of: Dimension; readonly at: Dimension }
  | { readonly form: 'ratio'; readonly slope?: true }
  | { readonly form: 'per year' }
  | { readonly form: 'word'; readonly words: readonly string[] }
  | { readonly form: 'any word'; readonly what: string }
  | { readonly form: 'name'; readonly of: 'shaft material' | 'clutch' }
  | { readonly form: 'text' }
  | { readonly form: 'rotation' }
  | { readonly form: 'output sense' }
  | { readonly form: 'layout' }
  | { readonly form: 'bolts' }
  | { readonly form: 'pilot' }
  | { readonly form: 'mesh' }
  | { readonly form: 'lock' }
  | { readonly form: 'date' }
  | { readonly form: 'shaft criterion' }
  | { readonly form: 'source' }
  | { readonly form: 'variation' }
  | { readonly form: 'rule name' }
  | { readonly form: 'ranking' };

export const quantity = <D extends Dimension>(dimension: D): ValueKind<Value<D>> => ({
  form: 'quantity',
  dimension,
});
export const span = <D extends Dimension>(dimension: D): ValueKind<Span<D>> => ({ form: 'span', dimension });
/** Pressures of oil as a gauge shows them, and of the air, which is counted from nothing. */
export const gauge: ValueKind<Value<'pressure'>> = {
  form: 'quantity',
  dimension: 'pressure',
  datum: 'gauge',
};
export const gaugeSpan: ValueKind<Span<'pressure'>> = { form: 'span', dimension: 'pressure', datum: 'gauge' };
export const absolute: ValueKind<Value<'pressure'>> = {
  form: 'quantity',
  dimension: 'pressure',
  datum: 'absolute',
};
export const point = <Y extends Dimension, X extends Dimension>(of: Y, at: X): ValueKind<Point<Y, X>> => ({
  form: 'point',
  of,
  at,
});
export const ratio: ValueKind<Value<'ratio'>> = { form: 'ratio' };
/** Of a taper: `1:16`, or `3/4 in/ft`. */
export const slope: ValueKind<Value<'ratio'>> = { form: 'ratio', slope: true };
export const perYear: ValueKind<Value<'number'>> = { form: 'per year' };
export const word = <const W extends readonly string[]>(...words: W): ValueKind<W[number]> => ({
  form: 'word',
  words,
});
export const anyWord = (what: string): ValueKind<string> => ({ form: 'any word', what });
export const name = (of: 'shaft material' | 'clutch'): ValueKind<string> => ({ form: 'name', of });
export const text: ValueKind<string> = { form: 'text' };
export const rotation: ValueKind<Rotation> = { form: 'rotation' };
export const outputSense: ValueKind<OutputSense> = { form: 'output sense' };
export const layout: ValueKind<GearLayout> = { form: 'layout' };
export const bolts: ValueKind<Bolts> = { form: 'bolts' };
export const pilot: ValueKind<Pilot> = { form: 'pilot' };
export const mesh: ValueKind<Mesh> = { form: 'mesh' };
export const lock: ValueKind<Lock> = { form: 'lock' };
export const date: ValueKind<string> = { form: 'date' };
export const shaftCriterion: ValueKind<ShaftCriterion> = { form: 'shaft criterion' };
export const source: ValueKind<SourceNote> = { form: 'source' };
export const variation: ValueKind<Variation> = { form: 'variation' };
export const ruleName: ValueKind<string> = { form: 'rule name' };
export const ranking: ValueKind<Ranking> = { form: 'ranking' };

/** One property of a block: its words, the model field that it fills, its form, and what it means. `T` is its value. */
export interface Row<F extends string = string, W extends string = string, T = unknown> {
  readonly words: W;
  readonly field: F;
  readonly kind: ValueKind<T>;
  readonly doc: string;
  /** As a person would write it, words and value. */
  readonly example: string;
  /** May stand more than once; the field is then a list. */
  readonly many?: boolean;
  /** The words may be left out: the value alone tells (`rated medium 0.112 kW/rpm`). */
  readonly bare?: boolean;
  /** Its number may be below zero: a place along a line, an angle, a share that can turn about. */
  readonly signed?: boolean;
  /** What the number bounds, by its words: a limit raised is a relaxation of the one and a tightening of the other. */
  readonly bound?: Bound;
  /** Has a hand: one side never gives it to the other unsaid. */
  readonly handed?: true;
  /**
   * What it was measured or worked out with, as fields of the same block, `^field` of the one around it or `part.field`: when one changes and
   * this is not said anew, the old value no longer counts.
   */
  readonly measuredWith?: readonly string[];
  /** Least and greatest value that such a thing has, written with its unit. Outside it the number or the unit is a slip. */
  readonly range?: Range;
  /** What the property is taken as when it is left out, in words. Without it an absent property is an open question. */
  readonly absent?: string;
  /** Why its absence says that, and is no open question. */
  readonly because?: string;
  /** It says what kind of thing its block is: a check that it would choose asks it where it is left out. */
  readonly selects?: true;
  /** The product estimates it, and says so: then `unknown` is met by the same estimate, and is no open question. */
  readonly estimated?: true;
  /** It comes of how a part is made and kept, and nobody orders it: no check names a figure of it as its cure. */
  readonly unordered?: true;
  /** `strict` where hearsay and assumption do not settle what rests on it. */
  readonly evidence?: 'strict';
}

export type Bound = 'at least' | 'at most';

export interface Range {
  readonly low: string;
  readonly high: string;
  /** Of a point, what the number behind "at" lies between. */
  readonly at?: Range;
  /** A count of things, of which there is no half. */
  readonly whole?: true;
}

export const between = (low: string, high: string, at?: Range): Range =>
  at ? { low, high, at } : { low, high };
/** The same of things that are counted. */
export const counted = (low: string, high: string): Range => ({ low, high, whole: true });

/** What a row may say beside its words and its form. */
export type RowMore = Pick<
  Row,
  | 'many'
  | 'bare'
  | 'signed'
  | 'handed'
  | 'measuredWith'
  | 'range'
  | 'absent'
  | 'because'
  | 'estimated'
  | 'evidence'
  | 'selects'
  | 'unordered'
>;

/** The words of a bound end in what they bound; this is the one place where they are looked at. */
function boundOf(words: string): Bound | undefined {
  return words.endsWith(' at least') ? 'at least' : words.endsWith(' at most') ? 'at most' : undefined;
}

/** A block inside a block: `clutch A ... { }`. */
export interface BlockRow<
  F extends string = string,
  W extends string = string,
  V extends Vocabulary = Vocabulary,
  H extends string = string,
> {
  readonly words: W;
  readonly field: F;
  readonly block: V;
  readonly doc: string;
  readonly example: string;
  readonly many?: boolean;
  /** Has a hand: one side never gives it to the other unsaid. */
  readonly handed?: true;
  /** What the block is taken as when it is left out, in words. Without it an absent block is an open question. */
  readonly absent?: string;
  /** Why its absence says that, and is no open question. */
  readonly because?: string;
  /** What stands between the words and the facts. */
  readonly head?: { readonly field: H; readonly kind: ValueKind; readonly range?: Range };
  /**
   * Properties of the block by which several with one head differ, or `freely` where each stands for itself. Without it
   * every head stands once: a second one would contradict the first.
   */
  readonly again?: readonly string[] | 'freely';
  /** Said anew it says all: nothing of what the entry or the arrangement before said in it stays. */
  readonly whole?: true;
}

/** The properties that one kind of block knows. Order is the order of completion and of the reference page. */
export interface Vocabulary<R extends Row = Row, B extends BlockRow = AnyBlock> {
  /** `engine`, `gear ratio`, `flange`. */
  readonly title: string;
  readonly rows: readonly R[];
  readonly blocks: readonly B[];
}

/** A block of any kind, named so that the two types may refer to each other. */
export interface AnyBlock extends BlockRow<string, string, Vocabulary> {}

/** Keeps the fields and words of its rows in its type, from which `Spelling` and the checks of the model follow. */
export function vocabulary<R extends Row, B extends BlockRow>(all: Vocabulary<R, B>): Vocabulary<R, B> {
  return all;
}

/** The model fields that the rows and blocks of a vocabulary fill. */
export type FieldsOf<V> =
  V extends Vocabulary<infer R extends Row, infer B extends BlockRow> ? R['field'] | B['field'] : never;

/** What one row puts into the model: a fact of its form, or a list of them where it may stand more than once. */
type FactOf<R> =
  R extends Row<string, string, infer T>
    ? R extends { readonly many: true }
      ? readonly Fact<T>[]
      : Fact<T>
    : never;

/** The facts that the rows of a block, or a list of rows, put into the model. */
export type FactsOf<V extends readonly Row[] | { readonly rows: readonly Row[] }> = {
  readonly [R in RowsOf<V> as R['field']]?: FactOf<R>;
};

type RowsOf<V> = V extends readonly (infer R extends Row)[]
  ? R
  : V extends { readonly rows: readonly (infer R extends Row)[] }
    ? R
    : never;

/** A row of a block. The field of the model follows from it, with its type. */
export function row<
  const F extends string,
  const W extends string,
  T,
  const M extends RowMore = Record<never, never>,
>(
  field: F,
  words: W,
  kind: ValueKind<T>,
  doc: string,
  example: string,
  more?: M,
): Row<F, W, T> & (M extends { readonly many: true } ? { readonly many: true } : unknown) {
  const bound = boundOf(words);
  return { words, field, kind, doc, example, ...(bound ? { bound } : {}), ...more } as never;
}

type BlockMore<H extends string> = Pick<
  BlockRow<string, string, Vocabulary, H>,
  'many' | 'handed' | 'absent' | 'because' | 'head' | 'again' | 'whole'
>;

/** A block inside a block. Its field stands in the interface of the outer one, with what heads it. */
export function block<
  const F extends string,
  const W extends string,
  V extends Vocabulary,
  const H extends string = never,
>(field: F, words: W, inner: V, doc: string, example: string, more?: BlockMore<H>): BlockRow<F, W, V, H> {
  return { words, field, block: inner, doc, example, ...more };
}
