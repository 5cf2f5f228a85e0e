import type { UnitConcern } from '@tailshaft/drivetrain';
import { findUnit, formatQuantity, fromSI, listed, minusSign, toSI, type Unit } from '@tailshaft/mechanics';
import { type Limits, limitsOf, type Ranged, type Row, rangedIn, unitsRead } from '@tailshaft/vocabulary';
import type { Cursor } from '../cursor.js';

interface Place {
  readonly start: number;
  readonly end: number;
}

/** How many other units are offered for a number that is a slip in the written one. */
const OFFERED = 3;

/**
 * Says that a number lies outside what such a thing can be, with the units in which the same number would not. The fact is
 * kept, marked with what is returned: a failure on it stays, but nothing holds on it.
 */
export function outOfRange(
  cursor: Cursor,
  row: Pick<Row, 'words' | 'kind' | 'range'>,
  value: unknown,
  place: Place,
): string | undefined {
  const outside = rangedIn(row, value).find(
    one => isPart(one) || !within(one.si, limitsOf(one.range, one.dimension)),
  );
  if (!outside) return undefined;
  const at = isPlace(outside.value?.origin) ? outside.value.origin : place;
  const limits = limitsOf(outside.range, outside.dimension);
  const slips = slipsOf(outside, limits);
  const unit = unitOf(outside);
  const ends = unit
    ? [formatQuantity(limits.low, unit), formatQuantity(limits.high, unit)]
    : [outside.range.low, outside.range.high].map(minusSign);
  const shown = `"${row.words} ${outside.value?.written ?? outside.si}"`;
  const meant = slips.length > 0 ? `did you mean ${listed(slips, 'or')}?` : 'check the number and its unit.';
  const wrong = isPart(outside)
    ? 'is not a whole number: check the number.'
    : `is not between ${ends[0]} and ${ends[1]}: ${meant}`;
  const message = `${shown} ${wrong} No check passes on this value.`;
  cursor.problem(
    'text/out-of-range',
    { start: at.start, end: at.end },
    message,
    slips.length > 0
      ? slips.map(text => ({ title: `Write ${text}`, text, start: at.start, end: at.end }))
      : undefined,
  );
  return message;
}

/** What is wrong with a unit, with those units alone that give a number such a thing can have, where there are any. */
export function likelyUnits(concern: UnitConcern, { kind, range }: Pick<Row, 'kind' | 'range'>): UnitConcern {
  if (!range) return concern;
  const at = kind.form === 'point' && kind.at === concern.dimension && kind.of !== concern.dimension;
  const limits = limitsOf(at ? (range.at ?? range) : range, concern.dimension);
  const likely = concern.choices.filter(({ si }) => si === undefined || within(si, limits));
  return likely.length > 0 ? { ...concern, choices: likely } : concern;
}

/** The same number in other units of its kind, where that lies in the range. */
function slipsOf({ value, dimension }: Ranged, limits: Limits): string[] {
  const unit = value?.unit === undefined ? undefined : findUnit(value.unit);
  if (!value || !unit || dimension === 'number') return [];
  const number = Number(fromSI(value.si, unit).toPrecision(12));
  return unitsRead(dimension)
    .filter(one => one.symbol !== unit.symbol && within(toSI(number, one), limits))
    .slice(0, OFFERED)
    .map(one => `${number}${one.symbol === '1' ? '' : ` ${one.symbol}`}`);
}

/** Half a blade, or a tenth of a tooth: things are counted whole. */
function isPart({ si, range }: Ranged): boolean {
  return range.whole === true && !Number.isInteger(si);
}

function unitOf({ value }: Ranged): Unit | undefined {
  return value?.unit === undefined ? undefined : findUnit(value.unit);
}

/** With room for the rounding of a unit: 100 % is not over 1. */
function within(si: number, { low, high }: Limits): boolean {
  const room = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
  return si >= low - room && si <= high + room;
}

function isPlace(origin: object | undefined): origin is Place {
  return origin !== undefined && 'start' in origin && 'end' in origin;
}
