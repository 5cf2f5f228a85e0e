import { type Dimension, findUnit, measures, toSI, type Value } from '@tailshaft/mechanics';
import { counted, type Range, type Row } from './kinds.js';

/** Both ends of a range in SI. */
export interface Limits {
  readonly low: number;
  readonly high: number;
}

/** One number of a value, with what it may lie between. Counts of a compound value are no quantities of their own. */
export interface Ranged {
  readonly si: number;
  readonly value?: Value;
  readonly dimension: Dimension;
  readonly range: Range;
}

/** What stands inside a compound value beside the number that its row tells about. */
const BOLTS = counted('1', '100');
const TEETH = counted('4', '1000');

/** Ends as they are written in a row, in SI. A row is tested to be readable, so this never fails in use. */
export function limitsOf(range: Range, dimension: Dimension): Limits {
  return { low: endOf(range.low, dimension), high: endOf(range.high, dimension) };
}

/** Whether nothing of the sort can be nil. */
export function neverZero(range: Range, dimension: Dimension): boolean {
  return limitsOf(range, dimension).low > 0;
}

/** Every number of a value, as the reader made it, with its range. */
export function rangedIn(row: Pick<Row, 'kind' | 'range'>, value: unknown): readonly Ranged[] {
  const { kind, range } = row;
  if (!range || typeof value !== 'object' || value === null) return meshTeeth(value);
  if ('si' in value) return [ranged(value as Value, range)];
  const parts = value as Record<string, unknown>;
  const found = Object.entries(parts).flatMap(([key, part]) =>
    isValue(part) ? [ranged(part, kind.form === 'point' && key === 'x' ? (range.at ?? range) : range)] : [],
  );
  const { count } = parts;
  return typeof count === 'number'
    ? [{ si: count, dimension: 'number', range: BOLTS }, ...found]
    : [...found, ...meshTeeth(value)];
}

function meshTeeth(value: unknown): readonly Ranged[] {
  if (typeof value !== 'object' || value === null) return [];
  return ['driverTeeth', 'drivenTeeth'].flatMap(key => {
    const teeth = (value as Record<string, unknown>)[key];
    return typeof teeth === 'number' ? [{ si: teeth, dimension: 'number' as const, range: TEETH }] : [];
  });
}

function ranged(value: Value, range: Range): Ranged {
  return { si: value.si, value, dimension: value.dimension, range };
}

function isValue(part: unknown): part is Value {
  return typeof part === 'object' && part !== null && 'si' in part;
}

function endOf(text: string, dimension: Dimension): number {
  const ratio = /^([\d.]+):([\d.]+)$/.exec(text);
  if (ratio) return Number(ratio[1]) / Number(ratio[2]);
  const [number = '', symbol] = text.split(' ');
  const unit = findUnit(symbol ?? '1');
  if (!unit || !measures(unit, dimension)) throw new Error(`${text} is no ${dimension}`);
  return toSI(Number(number), unit);
}
