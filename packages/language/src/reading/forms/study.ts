import { asSpelling, type Ranking, type RankOrder, type Row, type Variation } from '@tailshaft/vocabulary';
import type { Cursor } from '../cursor.js';
import { nearest } from '../misspelt.js';
import { isTok, type Tok } from '../token.js';
import { valuesBetween } from './steps.js';
import { VARIED, variedRows } from './varied.js';
import { wrongToken } from './words.js';

const TO = ['..', '…', '–', '—'];

/** `propeller diameter 26 in .. 30 in by 0.5 in`, `gear any`, `shaft material A, B`. */
export function takeVariation(cursor: Cursor): Variation | undefined {
  const of = takeOf(cursor);
  if (!of) return undefined;
  const row = takeRow(cursor, of);
  const property = row ? { property: row.words } : {};
  if (asSpelling(of) === 'hull' && !row)
    return cursor.problem(
      'text/value',
      wrongToken(cursor),
      `State which property of the hull varies: ${variedRows(of)
        .slice(0, 6)
        .map(one => one.words)
        .join(', ')} …`,
    );
  if (cursor.takeWords('any')) return { of, ...property, values: 'any' };
  const values = takeValues(cursor, row, [of, row?.words].filter(Boolean).join(' '));
  return values && { of, ...property, values };
}

function takeOf(cursor: Cursor): string | undefined {
  const of = VARIED.find(one => cursor.takeWords(one));
  if (of) return of;
  const range = wrongToken(cursor);
  const meant = range.text ? nearest(range.text, VARIED) : undefined;
  return cursor.problem(
    'text/value',
    range,
    `A study varies a part of the line or the hull: ${VARIED.join(', ')}.${range.text ? ` "${range.text}" is none of them.` : ''}`,
    meant ? [{ title: `Write ${meant}`, text: meant }] : undefined,
  );
}

/** The property that varies; the longest run of words wins. None where a name follows, or a word that is no property. */
function takeRow(cursor: Cursor, of: string): Row | undefined {
  const longestFirst = [...variedRows(of)].sort((a, b) => b.words.length - a.words.length);
  return longestFirst.find(row => cursor.takeWords(row.words));
}

function takeValues(cursor: Cursor, row: Row | undefined, what: string): readonly string[] | undefined {
  const pieces: Tok[][] = [[]];
  let range: 'none' | 'to' | 'by' = 'none';
  let last: Tok | undefined;
  for (let next = cursor.peek(); isTok(next) && !cursor.atNextProperty; next = cursor.peek()) {
    cursor.index += 1;
    last = next;
    const splits =
      next.text === ',' || TO.includes(next.text) || (range === 'to' && asSpelling(next.text) === 'by');
    if (!splits) pieces.at(-1)!.push(next);
    else pieces.push([]);
    if (TO.includes(next.text)) range = 'to';
    else if (range === 'to' && asSpelling(next.text) === 'by') range = 'by';
  }
  const texts = pieces.map(one => one.map(({ text }) => text).join(' '));
  if (!last || texts.some(one => one === ''))
    return cursor.problem(
      'text/value-missing',
      last ?? wrongToken(cursor),
      `"vary ${what}" needs its values: a list as "a, b, c", ${row?.kind.form === 'quantity' ? 'a range as "a .. b by step", ' : ''}or "any".`,
    );
  const whole = { start: pieces[0]![0]!.start, end: last.end };
  if (range === 'none') return texts;
  if (row?.kind.form !== 'quantity')
    return cursor.problem(
      'text/range',
      whole,
      `"${what}" has no steps between two values: list them with commas, or write "any".`,
    );
  if (range === 'to' || texts.length !== 3)
    return cursor.problem(
      'text/range',
      whole,
      `A range of "${what}" needs its step: write it as "${texts[0]} .. ${texts[1]} by step".`,
    );
  const made = valuesBetween(row, texts[0]!, texts[1]!, texts[2]!, cursor.uri, whole);
  return typeof made === 'string' ? cursor.problem('text/range', whole, made) : made;
}

/** `propeller/tip-clearance`, `every check`. */
export function takeRuleName(cursor: Cursor, property: string): string | undefined {
  if (cursor.takeWords('every check')) return 'every check';
  const token = cursor.takeFreeWord();
  if (token) return token.text;
  return cursor.problem(
    'text/value-missing',
    wrongToken(cursor),
    `"${property}" needs the name of a check, as ${property} propeller/tip-clearance, or "every check".`,
  );
}

const ORDERS: readonly RankOrder[] = ['highest first', 'lowest first'];

/** `speed at full power`, `shaft speed at rated power lowest first`. */
export function takeRanking(cursor: Cursor, property: string): Ranking | undefined {
  const words: string[] = [];
  let order: RankOrder | undefined;
  for (let next = cursor.peek(); isTok(next) && !cursor.atNextProperty; next = cursor.peek()) {
    order = ORDERS.find(one => cursor.takeWords(one));
    if (order) break;
    words.push(next.text);
    cursor.index += 1;
  }
  if (words.length === 0)
    return cursor.problem(
      'text/value-missing',
      wrongToken(cursor),
      `"${property}" needs a computed quantity: ${property} speed at full power.`,
    );
  const at = words.findIndex(one => asSpelling(one) === 'at');
  const quantity = (at < 0 ? words : words.slice(0, at)).join(' ');
  const condition = at < 0 ? undefined : words.slice(at + 1).join(' ');
  return { quantity, ...(condition ? { condition } : {}), ...(order ? { order } : {}) };
}
