import type { Value } from '@tailshaft/mechanics';
import { neverZero, type Row, rangedIn } from '@tailshaft/vocabulary';
import type { Cursor } from '../cursor.js';

interface Range {
  readonly start: number;
  readonly end: number;
}

/**
 * A size, a mass, a power or a count below zero is a slip of the hand: it is refused where it stands, so that no check
 * ever judges by it. Only properties whose row says that they are signed may be negative. Whether one was refused.
 */
export function refuseNegative(cursor: Cursor, row: Row, value: unknown, range: Range): boolean {
  if (row.signed) return false;
  const negative = negativeIn(value);
  if (!negative) return refuseZero(cursor, row, value, range);
  const at = 'si' in negative && isRange(negative.origin) ? negative.origin : range;
  const written = 'si' in negative ? negative.written : undefined;
  const positive = written?.replace(/^-\s*/, '');
  cursor.problem(
    'text/number',
    { start: at.start, end: at.end },
    `"${row.words}" ${written ? `is written as ${written}, and it ` : ''}cannot be below zero, so no check uses it. Write the value without the minus, or "unknown" until it is known.`,
    written && positive && positive !== written
      ? [{ title: `Write ${positive}`, text: positive, start: at.start, end: at.end }]
      : undefined,
  );
  return true;
}

/** Nil, where nothing of the sort can be nil, measures nothing either. */
function refuseZero(cursor: Cursor, row: Row, value: unknown, range: Range): boolean {
  const nil = rangedIn(row, value).find(one => one.si === 0 && neverZero(one.range, one.dimension));
  if (!nil) return false;
  const at = isRange(nil.value?.origin) ? nil.value.origin : range;
  cursor.problem(
    'text/number',
    { start: at.start, end: at.end },
    `"${row.words}" is written as ${nil.value?.written ?? nil.si}, but it cannot be zero, so no check uses it. Write the value, or "unknown" until it is known.`,
    [{ title: 'Write unknown', text: 'unknown', start: at.start, end: at.end }],
  );
  return true;
}

/** The first part of a value that is below zero. Temperatures count from absolute zero, so that frost is none. */
function negativeIn(value: unknown): Value | { readonly count: number } | undefined {
  if (typeof value === 'number') return value < 0 ? { count: value } : undefined;
  if (typeof value !== 'object' || value === null) return undefined;
  if ('si' in value) return (value as Value).si < 0 ? (value as Value) : undefined;
  // Of a layout only the down-angle is a number, and a gear may turn upward.
  if ('downAngle' in value) return undefined;
  for (const [key, part] of Object.entries(value)) {
    const found = key === 'origin' ? undefined : negativeIn(part);
    if (found) return found;
  }
  return undefined;
}

function isRange(origin: object | undefined): origin is Range {
  return origin !== undefined && 'start' in origin && 'end' in origin;
}
