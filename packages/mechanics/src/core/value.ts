import type { Dimension } from './dimension.js';
import type { Source } from './source.js';

/** A place in a text, meaningful only to whoever made it; carried along, never looked into. */
export type Origin = object;

/**
 * A quantity in SI that remembers what it is, how it was written or computed, and what was assumed for it.
 * Declared values have an `origin`, computed ones a `working`, defaults an `assumed` sentence.
 */
export interface Value<D extends Dimension = Dimension> {
  /** What it is, in words: `input torque`. */
  readonly label: string;
  /** Its symbol in formulas: `T`. */
  readonly symbol: string;
  readonly dimension: D;
  /** Magnitude in the coherent SI unit of its dimension. May be NaN when a formula has no finite result. */
  readonly si: number;
  /** The author's own words: `300 kW`. */
  readonly written?: string;
  /** Symbol of the unit that the author wrote: `kW`, `%`; `1` behind a number without one. Absent of computed values. */
  readonly unit?: string;
  /** The number as the author wrote it. Absent of computed values. */
  readonly figure?: Figure;
  readonly origin?: Origin;
  /** Why this default stands where nothing was declared. */
  readonly assumed?: string;
  /** What a person writes to put another value in the place of this default: a property, or `assume` with its thing. */
  readonly replaceWith?: string;
  readonly working?: Working;
  /** Chosen as the greatest or the least of several; those, with itself among them. */
  readonly among?: { readonly pick: 'greatest' | 'least'; readonly values: readonly Value[] };
}

/** A number as it was written, and how fine it is. */
export interface Figure {
  /** Without its unit: `1 3/4`, `2.04`. */
  readonly text: string;
  /** Digits behind the point; none of a fraction, which is exact. A whole number means itself. */
  readonly decimals?: number;
  /** Digits from the first that is not nil; none of a fraction. */
  readonly digits?: number;
  /** What it is to, of a ratio: 1 in `2.04:1`. */
  readonly to?: number;
}

/** How a value was computed. Text is made from it only when somebody looks. */
export interface Working {
  /** Name of the formula, which is its key in the list of formulas. */
  readonly name: string;
  /** The formula in symbols: `T = P / ω`. */
  readonly text: string;
  readonly inputs: readonly Value[];
  /**
   * Letter (or else name) that each input goes by in `text`, in the order of `inputs`; none where the text is written in
   * other terms.
   */
  readonly keys?: readonly string[];
  /** Name that the formula takes each input by, in the order of `inputs`: with it the result can be worked out again. */
  readonly names?: readonly string[];
  /** The same of a working that no formula made: its result for other figures of its inputs. */
  readonly again?: (inputs: readonly number[]) => number;
  /** Symbols of the units that `text` takes these inputs in, and of the one that its result is in, where it asks for any. */
  readonly units?: readonly (string | undefined)[];
  readonly unit?: string;
  /** Letters of `text` that the source tabulates, with their numbers. */
  readonly tabulated?: Readonly<Record<string, number>>;
  readonly source: Source;
  /** Conditions of validity, with whether these inputs meet them. */
  readonly range: readonly RangeResult[];
  /** Remarks that belong to this one computation. */
  readonly notes?: readonly string[];
}

export interface RangeResult {
  readonly condition: string;
  readonly met: boolean;
}

/** A declared or assumed input. */
export function given<D extends Dimension>(
  label: string,
  symbol: string,
  dimension: D,
  si: number,
  more: Pick<Partial<Value>, 'written' | 'unit' | 'figure' | 'origin' | 'assumed' | 'replaceWith'> = {},
): Value<D> {
  return { label, symbol, dimension, si, ...more };
}

/** The same value under the name and symbol that another formula or a reader uses for it. */
export function renamed<D extends Dimension>(
  value: Value<D>,
  label: string,
  symbol = value.symbol,
): Value<D> {
  return { ...value, label, symbol };
}

/** How a value came to be: an author declared it, a formula computed it, or it stands because nothing was declared. */
export type Provenance = 'declared' | 'computed' | 'default' | 'constant';

export function provenanceOf(value: Value): Provenance {
  if (value.origin) return 'declared';
  if (value.assumed) return 'default';
  return value.working ? 'computed' : 'constant';
}

/** Every value below this one, itself first, each once. */
export function* valuesBehind(value: Value, seen = new Set<Value>()): Generator<Value> {
  if (seen.has(value)) return;
  seen.add(value);
  yield value;
  for (const input of value.working?.inputs ?? []) yield* valuesBehind(input, seen);
}

/** Conditions of validity not met anywhere behind a value. */
export function outsideRange(value: Value): string[] {
  const broken: string[] = [];
  for (const one of valuesBehind(value)) {
    for (const range of one.working?.range ?? []) {
      if (!range.met) broken.push(`${one.working?.name}: ${range.condition}`);
    }
  }
  return broken;
}

/** Assumptions made anywhere behind a value. */
export function assumptionsBehind(value: Value): string[] {
  const all: string[] = [];
  for (const one of valuesBehind(value)) if (one.assumed) all.push(`${one.label}: ${one.assumed}`);
  return all;
}
