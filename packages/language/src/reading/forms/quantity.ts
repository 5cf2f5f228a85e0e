import {
  type Datum,
  type Dimension,
  type Figure,
  figureOf,
  findUnit,
  given,
  toSI,
  unitsOf,
  type Value,
} from '@tailshaft/mechanics';
import { UNKNOWN } from '@tailshaft/vocabulary';
import type { Cursor } from '../cursor.js';
import { nearest } from '../misspelt.js';
import { isTok, type Tok } from '../token.js';
import { type NumberRead, takeNumber } from './number.js';
import { takeOpen } from './open.js';
import { symbolOf } from './symbol.js';
import { takeUnit } from './unit.js';

/** A number with a unit of this kind. What is wrong with the unit is kept as a concern, for the rules on units. */
export function takeQuantity<D extends Dimension>(
  cursor: Cursor,
  property: string,
  dimension: D,
  datum?: Datum,
): Value<D> | undefined {
  if (takeOpen(cursor, dimension, dimension)) return undefined;
  const number = takeNumber(cursor);
  if (!number) return missingNumber(cursor, property, dimension);
  if (dimension === 'number' || dimension === 'ratio') return takePlain(cursor, property, dimension, number);
  const unit = takeUnit(cursor, property, dimension, number, datum);
  if (!unit || number.refused) return undefined;
  const inches = unit.unit.symbol === 'ft' ? takeInches(cursor) : undefined;
  const size = toSI(number.number, unit.unit);
  const more = inches ? toSI(inches.number, findUnit('in')!) : 0;
  return made(cursor, property, dimension, number, {
    si: size + (number.number < 0 ? -more : more),
    written: `${number.written}${unit.written}${inches?.written ?? ''}`,
    end: inches?.end ?? unit.end,
    unit: inches ? 'in' : unit.unit.symbol,
    ...(inches ? { figure: { text: `${number.written}${unit.written}${inches.written}` } } : {}),
  });
}

/** A plain number, or a share in percent. */
function takePlain<D extends Dimension>(
  cursor: Cursor,
  property: string,
  dimension: D,
  number: NumberRead,
): Value<D> | undefined {
  const percent = dimension === 'ratio' ? cursor.take('word', ...PERCENT) : undefined;
  if (number.refused) return undefined;
  if (number.unit) {
    return cursor.problem(
      'text/unit',
      { start: number.start, end: number.end },
      `"${property}" is a ${dimension}, and ${number.written} is a length.`,
    );
  }
  return made(cursor, property, dimension, number, {
    si: percent ? number.number / 100 : number.number,
    written: percent ? `${number.written} %` : number.written,
    end: percent?.end ?? number.end,
    unit: percent ? '%' : '1',
  });
}

const PERCENT = ['%', ...findUnit('%')!.aliases];

/** The inches of `4 ft 2 in`. */
function takeInches(cursor: Cursor): { number: number; written: string; end: number } | undefined {
  const { index } = cursor;
  const number = takeNumber(cursor);
  if (number?.unit === 'in') return { number: number.number, written: ` ${number.written}`, end: number.end };
  const unit = number && !number.unit && !number.refused ? cursor.take('word', ...INCHES) : undefined;
  if (number && unit)
    return { number: number.number, written: ` ${number.written} ${unit.text}`, end: unit.end };
  cursor.index = index;
  return undefined;
}

const INCHES = ['in', 'inch', 'inches', '″'];

/** `1500 per year`, `1500 h per year`. */
export function takePerYear(cursor: Cursor, property: string): Value<'number'> | undefined {
  if (takeOpen(cursor, 'number')) {
    cursor.take('word', 'h');
    cursor.takeWords('per year');
    return undefined;
  }
  const number = takeNumber(cursor);
  if (!number) return missingNumber(cursor, property, 'number');
  cursor.take('word', 'h');
  const period = cursor.takeWords('per year');
  if (number.refused) return undefined;
  if (!period) {
    return cursor.problem(
      'text/value-missing',
      number,
      `"${property} ${number.written}" needs its period: write "${property} ${number.written} per year".`,
    );
  }
  return made(cursor, property, 'number', number, {
    si: number.number,
    written: `${number.written} per year`,
    end: cursor.previous!.end,
    unit: '1',
  });
}

/** `2.04:1`; of a taper `3/4 in/ft` too. */
export function takeRatio(cursor: Cursor, property: string, slope = false): Value<'ratio'> | undefined {
  if (takeOpen(cursor, 'ratio', 'ratio')) {
    takeSecond(cursor);
    return undefined;
  }
  const token = cursor.take('ratio');
  if (token) {
    const [over, under] = token.text.split(':').map(Number) as [number, number];
    if (over > 0 && under > 0) {
      return given(property, 'i', 'ratio', over / under, {
        written: token.text,
        figure: figureOf(token.text.split(':')[0]!, under),
        origin: { uri: cursor.uri, start: token.start, end: token.end },
      });
    }
    return cursor.problem(
      'text/ratio',
      token,
      `A ratio is input speed to output speed, both above zero: "${token.text}" is not one.`,
    );
  }
  const number = takeNumber(cursor);
  if (!number) return missingNumber(cursor, property, 'ratio', '2.04:1');
  if (number.refused) return undefined;
  const unit = slope ? findUnit(cursor.take('word', 'in/ft', 'mm/m')?.text ?? '') : undefined;
  if (unit) {
    return made(cursor, property, 'ratio', number, {
      si: toSI(number.number, unit),
      written: `${number.written} ${unit.symbol}`,
      end: cursor.previous!.end,
      unit: unit.symbol,
    });
  }
  const second = takeSecond(cursor);
  if (second?.text === UNKNOWN) {
    cursor.open.push('ratio');
    return undefined;
  }
  const meant = colon(number.written, second?.text);
  const range = { start: number.start, end: second?.end ?? number.end };
  return cursor.problem('text/ratio', range, `Write the ratio with a colon, as in "${meant}".`, [
    { title: `Write ${meant}`, text: meant },
  ]);
}

/** `2.04` and `1`, or `1/12` in one, as a ratio is written. */
function colon(first: string, second: string | undefined): string {
  return first.includes('/') ? first.replace('/', ':') : `${first}:${second ?? '1'}`;
}

/** The second half of a ratio that is not written with a colon between its numbers. */
function takeSecond(cursor: Cursor): Tok | undefined {
  const [joint, second] = [cursor.peek(), cursor.peek(1)];
  if (!isTok(joint) || !RATIO_JOINTS.includes(joint.text) || !isTok(second)) return undefined;
  if (!/^\d+(?:\.\d+)?$/.test(second.text) && second.text !== UNKNOWN) return undefined;
  cursor.index += 2;
  return second;
}

export const RATIO_JOINTS: readonly string[] = [':', '/', 'to', 'in'];

function made<D extends Dimension>(
  cursor: Cursor,
  property: string,
  dimension: D,
  number: NumberRead,
  { si, end, ...more }: { si: number; written: string; end: number; unit: string; figure?: Figure },
): Value<D> {
  return given(property, symbolOf(dimension), dimension, si, {
    figure: figureOf(number.written),
    ...more,
    origin: { uri: cursor.uri, start: number.start, end },
  });
}

export function missingNumber(
  cursor: Cursor,
  property: string,
  dimension: Dimension,
  example = exampleOf(dimension),
): undefined {
  const next = cursor.peek();
  const range = isTok(next) && !cursor.atNextProperty ? next : cursor.previous!;
  if (range === next) cursor.index += 1;
  const nearly = isTok(next) && range === next && nearest(next.text, [UNKNOWN]) !== undefined;
  const found = range === next ? `, not "${isTok(next) ? next.text : ''}"` : '';
  return cursor.problem(
    'text/value-missing',
    range,
    `"${property}" needs a ${dimension === 'number' ? 'number' : dimension}${found}: for example "${property.replace(/, (?=\w+$)/, ' ... ')} ${example}", or "unknown" until it is known.`,
    nearly ? [{ title: `Write ${UNKNOWN}`, text: UNKNOWN }] : undefined,
  );
}

function exampleOf(dimension: Dimension): string {
  if (dimension === 'number') return '4';
  if (dimension === 'ratio') return '97 %';
  const unit = unitsOf(dimension)[0];
  return unit ? `100 ${unit.symbol}` : '1';
}
