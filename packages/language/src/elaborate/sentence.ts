import {
  type Assumption,
  declareFact,
  type Quantity,
  type Requirement,
  type UnitConcern,
} from '@tailshaft/drivetrain';
import { type Dimension, figureOf, findUnit, given, toSI, type Value } from '@tailshaft/mechanics';
import { ASSUMABLE, BOUNDS, REQUIRABLE, type Row, UNKNOWN } from '@tailshaft/vocabulary';
import { Cursor } from '../reading/cursor.js';
import { takeNumber } from '../reading/forms/number.js';
import { outOfRange } from '../reading/forms/out-of-range.js';
import { symbolOf } from '../reading/forms/symbol.js';
import { spelledUnit, takeUnit } from '../reading/forms/unit.js';
import { unquoted } from '../reading/forms/words.js';
import { nearest } from '../reading/misspelt.js';
import type { Place } from '../reading/place.js';
import { type AtomTok, isTok } from '../reading/token.js';
import { type SentenceReading, textOf } from '../reading/vessel.js';
import type { Tell } from './ask.js';

const BOUNDED = new RegExp(`^(.*?) (${BOUNDS.join('|')}) (.*)$`);

const CONDITIONS = /^(.*?)\s*(?:\bin mode (\S+))?$/;

/**
 * Takes `require ...` apart: what, bound, quantity or word, condition, note. What is wrong with the unit of its bound goes to
 * `concern`, as for every other quantity.
 */
export function makeRequirement(
  reading: SentenceReading,
  tell: Tell,
  concern: (one: UnitConcern) => void,
): Requirement {
  const tokens = reading.tokens.filter(isTok);
  const notes = tokens.filter(token => token.kind === 'string');
  const words = tokens.filter(token => token.kind !== 'string');
  const written = textOf(words);
  const note = notes[0] ? { note: unquoted(notes[0].text) } : {};
  const base = { origin: reading.place, written, ...note };
  const turn = /^propellers turn (\S+)$/.exec(written);
  if (turn) return { ...base, about: 'propellers turn', bound: 'is', word: turn[1]! };
  const bound = BOUNDED.exec(written);
  if (!bound) {
    if (words.length > 0) {
      tell({
        code: 'text/sentence',
        start: reading.place.start,
        end: reading.place.end,
        severity: 'error',
        message:
          'Write a requirement as a quantity and its bound: require speed at least 22 kn at full power, or require propellers turn outward.',
      });
    }
    return { ...base, about: written };
  }
  const at = bound[1]!.split(' ').length + bound[2]!.split(' ').length;
  const row = REQUIRABLE.find(one => one.words === bound[1]);
  const { value, next, concerns } = quantityAt(words, at, reading.place.uri, tell, {
    property: `require ${bound[1]!} ${bound[2]!}`,
    dimensions: row ? (Object.keys(row.ranges) as Dimension[]) : [],
  });
  concerns?.forEach(concern);
  const range = value && row?.ranges[value.dimension];
  const outside = range && outsideOf({ words: row.words, range }, value, reading, tell);
  const [, condition, mode] = CONDITIONS.exec(textOf(words.slice(next)))!;
  return {
    ...base,
    about: bound[1]!,
    bound: bound[2] as (typeof BOUNDS)[number],
    ...(value ? { quantity: quantityFact(`require ${bound[1]}`, value, outside, reading) } : {}),
    ...(concerns ? { unitless: true } : {}),
    ...(condition ? { condition: condition.replace(/^at /, '') } : {}),
    ...(mode ? { mode } : {}),
  };
}

/** Takes `assume ...` apart: what, and the value it overrides the default with. */
export function makeAssumption(reading: SentenceReading, tell: Tell): Assumption {
  const words = reading.tokens.filter(isTok);
  const at = words.findIndex(word => word.kind === 'number');
  const about = words
    .slice(0, at < 0 ? undefined : at)
    .filter(word => word.text !== UNKNOWN)
    .map(word => word.text)
    .join(' ');
  const { value, refused } = at < 0 ? {} : quantityAt(words, at, reading.place.uri, tell);
  const open = words.at(-1)?.text === UNKNOWN;
  if (!value && !refused && !open && words.length > 0) {
    tell({
      code: 'text/sentence',
      start: reading.place.start,
      end: reading.place.end,
      severity: 'error',
      message:
        'Write an assumption as a quantity, its value and the reason: assume gear efficiency 97 % because "rating note".',
    });
  }
  const outside = value ? checkAssumption(reading, about, value, tell) : undefined;
  if (value && !reading.reasoned)
    tell({
      code: 'text/sentence',
      start: reading.place.start,
      end: reading.place.end,
      severity: 'warning',
      message: `Nobody can see why ${about} is taken as ${value.written}: write the reason behind it, because "...".`,
    });
  return {
    origin: reading.place,
    about,
    ...(value ? { quantity: quantityFact(`assume ${about}`, value, outside, reading) } : {}),
    ...(reading.because ? { because: reading.because } : {}),
  };
}

/** A second assumption of one thing would be passed over: it is told. */
export function tellTwice(assumptions: readonly Assumption[], tell: Tell): void {
  assumptions.forEach((one, index) => {
    const had = assumptions.findIndex(other => other.about === one.about);
    if (one.about === '' || had === index) return;
    const { start, end } = one.origin as Place;
    tell({
      code: 'text/twice',
      start,
      end,
      severity: 'error',
      message: `"assume ${one.about}" is written twice in this vessel; the first counts. Keep the one that is meant.`,
    });
  });
}

/** Says that nothing goes by the assumed thing, or that the number lies outside what it can be. */
function checkAssumption(reading: SentenceReading, about: string, value: Value, tell: Tell) {
  const { start, end } = reading.place;
  const row = ASSUMABLE.find(one => one.words === about);
  if (!row) {
    const known = ASSUMABLE.map(one => one.words);
    const meant = nearest(about, known);
    tell({
      code: 'text/sentence',
      start,
      end,
      severity: 'error',
      message: `No check takes "${about}" from an assumption. ${meant ? `Did you mean "${meant}"?` : `These can be assumed: ${known.join(', ')}.`}`,
    });
    return undefined;
  }
  if (value.dimension !== row.dimension) {
    tell({
      code: 'text/sentence',
      start,
      end,
      severity: 'error',
      message: `${about} is a ${row.dimension}, and ${value.written} is not: write "assume ${row.example}".`,
    });
    return value.written;
  }
  return outsideOf({ words: about, range: row.range }, value, reading, tell);
}

/** Says that a number lies outside what such a thing can be; nothing then holds on it. */
function outsideOf(row: Pick<Row, 'words' | 'range'>, value: Value, reading: SentenceReading, tell: Tell) {
  const cursor = new Cursor([], reading.place.uri, () => false);
  const kind = { form: 'quantity', dimension: value.dimension } as const;
  const outside = outOfRange(cursor, { ...row, kind }, value, reading.place);
  cursor.problems.forEach(tell);
  return outside;
}

function quantityFact(
  property: string,
  value: Value,
  outside: string | undefined,
  { place }: SentenceReading,
) {
  const fact: Quantity = {
    value,
    written: value.written ?? '',
    origin: value.origin ?? place,
    ...(outside ? { outOfRange: outside } : {}),
  };
  return declareFact(fact, { host: place, property, of: 'vessel' });
}

/** A number with its unit; without one it is a ratio, unless what is wanted of it is known and is none. */
function quantityAt(
  tokens: readonly AtomTok[],
  index: number,
  uri: string,
  tell: Tell,
  wanted: { readonly property: string; readonly dimensions: readonly Dimension[] } = {
    property: '',
    dimensions: [],
  },
): { value?: Value; next: number; refused?: true; concerns?: readonly UnitConcern[] } {
  const cursor = new Cursor(tokens, uri, () => false);
  cursor.index = index;
  cursor.followLine();
  const number = takeNumber(cursor);
  cursor.problems.forEach(tell);
  if (!number || !(Number.isFinite(number.number) || number.refused)) return { next: index };
  const spelled = number.unit ? { unit: findUnit(number.unit), text: '', count: 0 } : spelledUnit(cursor);
  const { unit } = spelled ?? {};
  const [first] = wanted.dimensions;
  const fits = unit ? unit.dimensions.some(one => wanted.dimensions.includes(one)) : first === 'ratio';
  if (first && !fits && !wanted.dimensions.includes('ratio') && !number.refused) {
    takeUnit(cursor, wanted.property, first, number);
    return { next: cursor.index, concerns: cursor.concerns };
  }
  if (unit) cursor.index += spelled!.count;
  if (number.refused) return { next: cursor.index, refused: true };
  const dimension = unit?.dimensions[0] ?? 'ratio';
  const written = unit && spelled!.text ? `${number.written} ${spelled!.text}` : number.written;
  const value = given('required value', symbolOf(dimension), dimension, toSI(number.number, unit ?? ONE), {
    written,
    unit: unit?.symbol ?? '1',
    figure: figureOf(number.written),
    origin: { uri, start: number.start, end: cursor.previous!.end },
  });
  return { value, next: cursor.index };
}

const ONE = findUnit('1')!;
