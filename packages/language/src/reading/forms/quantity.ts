import type { Point, Span, UnitConcern } from '@tailshaft/drivetrain';
import {
  ambiguousUnit,
  type Dimension,
  findUnit,
  formatValue,
  given,
  measures,
  suggestUnit,
  toSI,
  type Unit,
  unitsOf,
  type Value,
} from '@tailshaft/mechanics';
import type { Cursor } from '../cursor.js';
import { isTok } from '../token.js';
import { endlessProblem } from './finite.js';
import { type NumberRead, takeNumber } from './number.js';
import { symbolOf } from './symbol.js';

/** A number with a unit of this kind. What is wrong with the unit is kept as a concern, for the rules on units. */
export function takeQuantity<D extends Dimension>(
  cursor: Cursor,
  property: string,
  dimension: D,
): Value<D> | undefined {
  const number = takeNumber(cursor);
  if (!number) return missingNumber(cursor, property, dimension);
  if (dimension === 'number')
    return made(cursor, property, dimension, number, number.number, number.written, number.end, '1');
  if (dimension === 'ratio') {
    const percent = cursor.take('word', '%');
    const si = percent ? number.number / 100 : number.number;
    return made(
      cursor,
      property,
      dimension,
      number,
      si,
      percent ? `${number.written} %` : number.written,
      percent?.end ?? number.end,
      percent ? '%' : '1',
    );
  }
  const unit = takeUnit(cursor, property, dimension, number);
  if (!unit) return undefined;
  return made(
    cursor,
    property,
    dimension,
    number,
    toSI(number.number, unit.unit),
    `${number.written} ${unit.written}`,
    unit.end,
    unit.unit.symbol,
  );
}

/** `20 .. 24 bar`: the unit stands once, behind both numbers, or behind each. */
export function takeSpan<D extends Dimension>(
  cursor: Cursor,
  property: string,
  dimension: D,
): Span<D> | undefined {
  const start = cursor.index;
  const low = takeNumber(cursor);
  if (!low) return missingNumber(cursor, property, dimension);
  const lowUnit = isTok(cursor.peek()) && cursor.peek()!.kind === 'word' ? cursor.take('word') : undefined;
  if (!cursor.take('mark', '..')) {
    cursor.index = start;
    const range = cursor.peek()!;
    takeQuantity(cursor, property, dimension);
    return cursor.problem(
      'text/range',
      { start: range.start, end: cursor.previous!.end },
      `"${property}" is a range: write both ends with two dots between, as in "20 .. 24 bar".`,
    );
  }
  const high = takeQuantity(cursor, property, dimension);
  if (!high) return undefined;
  const unit = findUnit(lowUnit?.text ?? high.unit ?? '');
  const unitText = lowUnit?.text ?? unit?.symbol;
  if (!unit || !measures(unit, dimension)) return undefined;
  const lowValue = given(property, symbolOf(dimension), dimension, toSI(low.number, unit), {
    written: `${low.written} ${unitText}`,
    unit: unit.symbol,
    origin: { uri: cursor.uri, start: low.start, end: lowUnit?.end ?? low.end },
  });
  return { low: lowValue, high };
}

/** `300 kW at 2300 rpm`. */
export function takePoint<Y extends Dimension, X extends Dimension>(
  cursor: Cursor,
  property: string,
  of: Y,
  at: X,
): Point<Y, X> | undefined {
  const y = takeQuantity(cursor, property, of);
  if (!y) {
    if (cursor.takeWords('at')) takeQuantity(cursor, `${property}, at`, at);
    return undefined;
  }
  if (!cursor.takeWords('at')) {
    const end = cursor.previous!;
    return cursor.problem(
      'text/value-missing',
      end,
      `"${property} ${y.written}" does not say at what ${at}: write it as "${property} ${y.written} at ${exampleOf(at)}".`,
    );
  }
  const x = takeQuantity(cursor, `${property}, at`, at);
  return x ? { y, x } : undefined;
}

/** `1500 per year`, `1500 h per year`. */
export function takePerYear(cursor: Cursor, property: string): Value<'number'> | undefined {
  const number = takeNumber(cursor);
  if (!number) return missingNumber(cursor, property, 'number');
  cursor.take('word', 'h');
  if (!cursor.takeWords('per year')) {
    return cursor.problem(
      'text/value-missing',
      number,
      `"${property} ${number.written}" needs its period: write "${property} ${number.written} per year".`,
    );
  }
  return made(
    cursor,
    property,
    'number',
    number,
    number.number,
    `${number.written} per year`,
    cursor.previous!.end,
    '1',
  );
}

/** `2.04:1`. */
export function takeRatio(cursor: Cursor, property: string, slope = false): Value<'ratio'> | undefined {
  const token = cursor.take('ratio');
  if (token) {
    const [over, under] = token.text.split(':').map(Number) as [number, number];
    if (over > 0 && under > 0) {
      return given(property, 'i', 'ratio', over / under, {
        written: token.text,
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
  const unit = slope && number ? findUnit(cursor.take('word', 'in/ft', 'mm/m')?.text ?? '') : undefined;
  if (number && unit)
    return made(
      cursor,
      property,
      'ratio',
      number,
      toSI(number.number, unit),
      `${number.written} ${unit.symbol}`,
      cursor.previous!.end,
      unit.symbol,
    );
  if (number) {
    return cursor.problem(
      'text/ratio',
      number,
      `Write the ratio with what it is to one, as in "${number.written}:1".`,
      [{ title: `Write ${number.written}:1`, text: `${number.written}:1` }],
    );
  }
  return missingNumber(cursor, property, 'ratio', '2.04:1');
}

/** Words that go on with a value and are no unit. */
const JOINING = new Set(['at', 'per', 'x', 'dated', 'unknown']);

function takeUnit(cursor: Cursor, property: string, dimension: Dimension, number: NumberRead) {
  const next = cursor.peek();
  const concern = (
    kind: UnitConcern['kind'],
    end: number,
    spelling: string | undefined,
    choices: UnitConcern['choices'],
  ): undefined => {
    if (!Number.isFinite(number.number))
      return endlessProblem(cursor, property, { start: number.start, end });
    const written = spelling ? `${number.written} ${spelling}` : number.written;
    cursor.concerns.push({
      kind,
      origin: { uri: cursor.uri, start: number.start, end },
      property,
      dimension,
      written,
      number: number.number,
      ...(spelling ? { unit: spelling } : {}),
      choices,
    });
    return undefined;
  };
  const usual = (): UnitConcern['choices'] =>
    unitsOf(dimension)
      .slice(0, 6)
      .map(unit => choiceOf(number, unit, dimension, property));

  if (!isTok(next) || next.kind !== 'word' || JOINING.has(next.text))
    return concern('no unit', number.end, undefined, usual());
  const unit = findUnit(next.text);
  // A property's first word ends the value, unless it is a unit too (`in`, `t`).
  if (!unit && cursor.atNextProperty) return concern('no unit', number.end, undefined, usual());
  cursor.index += 1;
  if (unit && measures(unit, dimension)) return { unit, written: next.text, end: next.end };
  const ambiguous = ambiguousUnit(next.text);
  if (ambiguous && !unit) {
    const choices = ambiguous.choices.flatMap(one => {
      const candidate = findUnit(one.symbol);
      return candidate && measures(candidate, dimension)
        ? [{ text: `${number.written} ${one.symbol}`, means: one.meaning }]
        : [];
    });
    return concern('ambiguous unit', next.end, next.text, choices.length > 0 ? choices : usual());
  }
  if (unit) return concern('wrong dimension', next.end, next.text, usual());
  const meant = suggestUnit(next.text);
  const choices =
    meant && measures(meant, dimension) ? [choiceOf(number, meant, dimension, property)] : usual();
  return concern('unknown unit', next.end, next.text, choices);
}

function choiceOf(number: NumberRead, unit: Unit, dimension: Dimension, property: string) {
  const means = formatValue(given(property, '', dimension, toSI(number.number, unit)));
  return { text: `${number.written} ${unit.symbol}`, means };
}

function made<D extends Dimension>(
  cursor: Cursor,
  property: string,
  dimension: D,
  number: NumberRead,
  si: number,
  written: string,
  end: number,
  unit: string,
): Value<D> {
  return given(property, symbolOf(dimension), dimension, si, {
    written,
    unit,
    origin: { uri: cursor.uri, start: number.start, end },
  });
}

function missingNumber(
  cursor: Cursor,
  property: string,
  dimension: Dimension,
  example = exampleOf(dimension),
): undefined {
  const next = cursor.peek();
  const range = isTok(next) && !cursor.atNextProperty ? next : cursor.previous!;
  if (range === next) cursor.index += 1;
  const found = range === next ? `, not "${isTok(next) ? next.text : ''}"` : '';
  return cursor.problem(
    'text/value-missing',
    range,
    `"${property}" needs a ${dimension === 'number' ? 'number' : dimension}${found}: for example "${property.replace(/, (?=\w+$)/, ' ... ')} ${example}", or "unknown" while it is not known.`,
  );
}

function exampleOf(dimension: Dimension): string {
  if (dimension === 'number') return '4';
  if (dimension === 'ratio') return '97 %';
  const unit = unitsOf(dimension)[0];
  return unit ? `100 ${unit.symbol}` : '1';
}
