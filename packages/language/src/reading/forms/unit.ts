import type { UnitConcern } from '@tailshaft/drivetrain';
import {
  ambiguousUnit,
  type Datum,
  type Dimension,
  findUnit,
  formatValue,
  fromSI,
  given,
  measures,
  minusSign,
  plainNumber,
  pressureDatum,
  STANDARD_ATMOSPHERE,
  suggestUnit,
  toSI,
  type Unit,
} from '@tailshaft/mechanics';
import { type Joining, UNKNOWN, unitsRead } from '@tailshaft/vocabulary';
import type { Cursor } from '../cursor.js';
import { isTok } from '../token.js';
import { endlessProblem } from './finite.js';
import type { NumberRead } from './number.js';

export interface UnitRead {
  readonly unit: Unit;
  /** As it stands behind the number, with the space before it; nothing when a mark of the number says it. */
  readonly written: string;
  readonly end: number;
}

/** Words that go on with a value and are no unit. */
const JOINS: ReadonlySet<string> = new Set<Joining | typeof UNKNOWN>(['at', 'per', 'x', 'dated', UNKNOWN]);

/** The longest spelling of a unit, in tokens: `kW/(r/min)`. */
const LONGEST = 6;

/** The unit behind a number. What is wrong with it is kept as a concern, for the rules on units. */
export function takeUnit(
  cursor: Cursor,
  property: string,
  dimension: Dimension,
  number: NumberRead,
  datum?: Datum,
): UnitRead | undefined {
  const concern = (
    kind: UnitConcern['kind'],
    end: number,
    spelling: string | undefined,
    choices: UnitConcern['choices'],
    meant?: string,
  ): undefined => {
    if (number.refused) return undefined;
    if (!Number.isFinite(number.number))
      return endlessProblem(cursor, property, { start: number.start, end });
    const written = spelling && !number.unit ? `${number.written} ${spelling}` : number.written;
    cursor.concerns.push({
      kind,
      origin: { uri: cursor.uri, start: number.start, end },
      property,
      dimension,
      written,
      number: number.number,
      ...(spelling ? { unit: spelling } : {}),
      ...(meant ? { meant } : {}),
      choices,
    });
    return undefined;
  };
  const usual = (): UnitConcern['choices'] =>
    unitsRead(dimension)
      .slice(0, 6)
      .map(unit => choiceOf(number, unit, dimension, property));

  if (number.unit) {
    const unit = findUnit(number.unit)!;
    if (measures(unit, dimension)) return { unit, written: '', end: number.end };
    return concern('wrong dimension', number.end, unit.symbol, usual());
  }
  const next = cursor.peek();
  const spelled = spelledUnit(cursor);
  if (!spelled && (!isTok(next) || next.kind !== 'word' || JOINS.has(next.text)))
    return concern('no unit', number.end, undefined, usual());
  // A property's first word ends the value, unless it is a unit too (`in`, `t`).
  if (!spelled && cursor.atNextProperty) return concern('no unit', number.end, undefined, usual());
  const { text, count } = spelled ?? { text: isTok(next) ? next.text : '', count: 1 };
  cursor.index += count;
  const end = cursor.previous!.end;
  const counted = dimension === 'pressure' ? pressureDatum(text) : undefined;
  if (counted) return takeDatum(cursor, property, number, { ...counted, text, end }, datum);
  const unit = spelled?.unit;
  if (unit && measures(unit, dimension)) return { unit, written: ` ${text}`, end };
  const ambiguous = ambiguousUnit(text);
  if (ambiguous && !unit) {
    const choices = ambiguous.choices.flatMap(one => {
      const candidate = findUnit(one.symbol);
      return candidate && measures(candidate, dimension)
        ? [
            {
              value: { is: 'in unit' as const, figure: number.written, unit: one.symbol },
              means: one.meaning,
              si: toSI(number.number, candidate),
            },
          ]
        : [];
    });
    return concern('ambiguous unit', end, text, choices.length > 0 ? choices : usual());
  }
  if (unit) return concern('wrong dimension', end, text, usual());
  const meant = suggestUnit(text, one => measures(one, dimension));
  return concern(
    'unknown unit',
    end,
    text,
    meant ? [choiceOf(number, meant, dimension, property)] : usual(),
    meant?.symbol,
  );
}

/** The longest run of tokens from here on that spells a unit: `1/min` and `kW/(r/min)` are several. */
export function spelledUnit(
  cursor: Cursor,
): { readonly unit?: Unit; readonly text: string; readonly count: number } | undefined {
  let text = '';
  let end: number | undefined;
  let found: { unit?: Unit; text: string; count: number } | undefined;
  for (let ahead = 0; ahead < LONGEST; ahead++) {
    const token = cursor.peek(ahead);
    if (!isTok(token) || token.kind === 'string' || JOINS.has(token.text)) break;
    text += end !== undefined && token.start > end ? ` ${token.text}` : token.text;
    end = token.end;
    const unit = findUnit(text);
    // A bare 1 is a number of its own.
    if (unit && text !== '1') found = { unit, text, count: ahead + 1 };
    else if (pressureDatum(text)) found = { text, count: ahead + 1 };
  }
  return found;
}

/** A pressure that says what it counts from: the same number where that is what the property counts from. */
function takeDatum(
  cursor: Cursor,
  property: string,
  number: NumberRead,
  said: { readonly symbol: string; readonly datum: Datum; readonly text: string; readonly end: number },
  datum: Datum | undefined,
): UnitRead | undefined {
  const unit = findUnit(said.symbol)!;
  if (said.datum === datum) return { unit, written: ` ${said.text}`, end: said.end };
  const range = { start: number.start, end: said.end };
  const written = `${number.written} ${said.text}`;
  if (!datum) {
    return cursor.problem(
      'text/pressure',
      range,
      `"${property}" is a stress, which has no datum: write ${unit.symbol} instead of ${said.text}.`,
      [{ title: `Write ${number.written} ${unit.symbol}`, text: `${number.written} ${unit.symbol}` }],
    );
  }
  const si =
    toSI(number.number, unit) + (said.datum === 'gauge' ? STANDARD_ATMOSPHERE : -STANDARD_ATMOSPHERE);
  const meant = `${plainNumber(fromSI(si, unit))} ${unit.symbol}`;
  return cursor.problem(
    'text/pressure',
    range,
    `"${property}" is ${datum === 'gauge' ? 'a gauge pressure' : 'an absolute pressure'}, and ${written} is ` +
      `${said.datum === 'gauge' ? 'a gauge pressure' : 'an absolute pressure'}: with a standard atmosphere of 101.325 kPa it is ${minusSign(meant)}.`,
    [{ title: `Write ${meant}`, text: meant }],
  );
}

function choiceOf(number: NumberRead, unit: Unit, dimension: Dimension, property: string) {
  const si = toSI(number.number, unit);
  const value = { is: 'in unit' as const, figure: number.written, unit: unit.symbol };
  const means = formatValue(given(property, '', dimension, si));
  return { value, means: means === `${number.written} ${unit.display}` ? '' : means, si };
}
