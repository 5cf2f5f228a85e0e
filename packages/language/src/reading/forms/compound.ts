import type { Point, Span } from '@tailshaft/drivetrain';
import {
  type Datum,
  type Dimension,
  figureOf,
  findUnit,
  given,
  measures,
  toSI,
  unitsOf,
} from '@tailshaft/mechanics';
import { asSpelling, PILOT_KINDS, UNKNOWN, type ValueKind } from '@tailshaft/vocabulary';
import type { Cursor } from '../cursor.js';
import { isTok, type Tok } from '../token.js';
import { type NumberRead, takeNumber } from './number.js';
import { isUnitOf, takeOpen } from './open.js';
import { missingNumber, RATIO_JOINTS, takeQuantity } from './quantity.js';
import { symbolOf } from './symbol.js';
import { spelledUnit } from './unit.js';

/** Marks between the two ends of a range. */
const TO = ['..', '…', '–', '—'];

/** Whether `unknown`, which stands here, is only the first part of a value of this form. */
export function goesOn(cursor: Cursor, kind: ValueKind): boolean {
  const next = cursor.peek(1);
  if (!isTok(next)) return false;
  const own = !cursor.beginsAt(1);
  switch (kind.form) {
    case 'quantity':
      return own && isUnitOf(next, kind.dimension);
    case 'ratio':
      return (
        (own && kind.slope === true && isUnitOf(next, 'ratio')) ||
        (RATIO_JOINTS.includes(next.text) && isTok(cursor.peek(2)))
      );
    case 'layout':
      return next.kind === 'number' || next.text === UNKNOWN;
    case 'mesh':
      return next.kind === 'number' || next.text === UNKNOWN;
    case 'lock':
      return next.text === 'with';
    case 'shaft criterion':
      return next.text === 'factor';
    case 'source':
      return asSpelling(next.text) === 'dated';
    case 'point':
      return asSpelling(next.text) === 'at' || (own && isUnitOf(next, kind.of));
    case 'span':
      return TO.includes(next.text) || (own && isUnitOf(next, kind.dimension));
    case 'bolts':
      return next.text === 'x' || next.text === '×';
    case 'pilot':
      return (
        next.text === UNKNOWN ||
        (PILOT_KINDS as readonly string[]).includes(next.text) ||
        (own && isUnitOf(next, 'length'))
      );
    case 'per year':
      return next.text === 'per' || next.text === 'h';
    case 'rotation':
      return next.text === 'viewed';
    case 'output sense':
      return next.text === 'seen' || next.text === 'each';
    default:
      return false;
  }
}

/** `20 .. 24 bar`: the unit stands once, behind both numbers, or behind each. */
export function takeSpan<D extends Dimension>(
  cursor: Cursor,
  property: string,
  dimension: D,
  datum?: Datum,
): Span<D> | undefined {
  const start = cursor.index;
  const lowOpen = takeOpen(cursor, 'low end');
  const low = lowOpen ? undefined : takeNumber(cursor);
  if (!low && !lowOpen) return missingNumber(cursor, property, dimension);
  const behind = cursor.peek();
  const lowUnit = isTok(behind) && behind.text !== 'to' ? cursor.take('word') : undefined;
  const otherwise = low && spanOtherwise(cursor, property, low, lowUnit);
  if (otherwise) return undefined;
  if (!cursor.take('mark', ...TO)) {
    cursor.index = start;
    const range = cursor.peek()!;
    takeQuantity(cursor, property, dimension, datum);
    return cursor.problem(
      'text/range',
      { start: range.start, end: cursor.previous!.end },
      `"${property}" is a range: write both ends with two dots between, as in "20 .. 24 bar".`,
    );
  }
  if (takeOpen(cursor, 'high end', dimension)) return undefined;
  const high = takeQuantity(cursor, property, dimension, datum);
  if (lowOpen && high) cursor.known = { high };
  if (!high || !low || low.refused) return undefined;
  const unit = findUnit(lowUnit?.text ?? low.unit ?? high.unit ?? '');
  if (!unit || !measures(unit, dimension)) return undefined;
  const lowValue = given(property, symbolOf(dimension), dimension, toSI(low.number, unit), {
    written: low.unit ? low.written : `${low.written} ${lowUnit?.text ?? unit.symbol}`,
    unit: unit.symbol,
    figure: figureOf(low.written),
    origin: { uri: cursor.uri, start: low.start, end: lowUnit?.end ?? low.end },
  });
  return { low: lowValue, high };
}

/** `20 to 24 bar`, `20-24 bar`, `20...24 bar`: told with the range as it is to be written. */
function spanOtherwise(cursor: Cursor, property: string, low: NumberRead, lowUnit: Tok | undefined): boolean {
  const from = cursor.index;
  const isLong = cursor.take('mark', '..') && cursor.take('mark', '.');
  const joined = isLong || cursor.take('mark', '-', '−', '~') || cursor.take('word', 'to');
  const high = cursor.peek();
  const figure = isTok(high) && high.kind === 'number' ? high.text : undefined;
  if (figure === undefined || !(joined || /^[-−]/.test(figure))) {
    cursor.index = from;
    return false;
  }
  cursor.index += 1;
  const unit = spelledUnit(cursor);
  cursor.index += unit?.count ?? 0;
  const ends = [
    `${low.written}${lowUnit ? ` ${lowUnit.text}` : ''}`,
    `${joined ? figure : figure.slice(1)}${unit ? ` ${unit.text}` : ''}`,
  ];
  const text = ends.join(' .. ');
  const range = { start: low.start, end: cursor.previous!.end };
  cursor.problem(
    'text/range',
    range,
    `"${property}" is a range: write both ends with two dots between, as in "${text}".`,
    [{ title: `Write ${text}`, text }],
  );
  return true;
}

/** `300 kW at 2300 rpm`. */
export function takePoint<Y extends Dimension, X extends Dimension>(
  cursor: Cursor,
  property: string,
  of: Y,
  at: X,
): Point<Y, X> | undefined {
  const yOpen = takeOpen(cursor, of, of);
  const y = yOpen ? undefined : takeQuantity(cursor, property, of);
  if (!y && !yOpen) {
    if (cursor.takeJoin('at') && !takeOpen(cursor, at, at)) takeQuantity(cursor, `${property}, at`, at);
    return undefined;
  }
  if (!cursor.takeJoin('at')) {
    const joint = cursor.peek();
    if (isTok(joint) && ['@', '/'].includes(joint.text))
      return cursor.problem(
        'text/value-missing',
        joint,
        `Write "at" instead of "${joint.text}" between the two.`,
        [{ title: 'Write at', text: ' at ' }],
      );
    const end = cursor.previous!;
    const unit = unitsOf(at)[0];
    return cursor.problem(
      'text/value-missing',
      end,
      `"${property} ${y?.written ?? 'unknown'}" needs its ${at}: write it as "${property} ${y?.written ?? 'unknown'} at ${unit ? `100 ${unit.symbol}` : '1'}".`,
    );
  }
  const xOpen = takeOpen(cursor, at, at);
  const x = xOpen ? undefined : takeQuantity(cursor, `${property}, at`, at);
  if (y && x) return { y, x };
  if (yOpen || xOpen) cursor.known = { ...(y ? { y } : {}), ...(x ? { x } : {}) };
  return undefined;
}
