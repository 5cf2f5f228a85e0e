import type { Dimension } from '../core/dimension.js';
import type { Source } from '../core/source.js';
import type { RangeResult, Value } from '../core/value.js';

/** A method that cannot speak for the case at hand says why, and what would let it. */
export interface DoesNotApply {
  readonly applies: false;
  /** What is wrong and why it matters, with numbers. */
  readonly reason: string;
}

/** Either a result, or the plain statement that the method does not apply here. Never NaN, never an exception. */
export type Outcome<T> = ({ readonly applies: true } & T) | DoesNotApply;

export function doesNotApply(reason: string): DoesNotApply {
  return { applies: false, reason };
}

/** What an algorithm with several results says of each: the same facts a formula gives about its one. */
export interface Method {
  readonly name: string;
  readonly text: string;
  readonly source: Source;
}

/** One result of an algorithm with several, as a value with its working. */
export function computed<D extends Dimension>(
  label: string,
  symbol: string,
  dimension: D,
  si: number,
  method: Method,
  inputs: readonly Value[],
  range: readonly RangeResult[] = [],
  notes?: readonly string[],
): Value<D> {
  const working = {
    name: method.name,
    text: method.text,
    inputs,
    source: method.source,
    range,
    ...(notes ? { notes } : {}),
  };
  return { label, symbol, dimension, si, working };
}

/** The conditions in a list that are not met, as words. */
export function unmet(range: readonly RangeResult[]): string[] {
  return range.filter(one => !one.met).map(one => one.condition);
}
