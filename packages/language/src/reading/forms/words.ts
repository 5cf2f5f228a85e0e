import type { SourceNote } from '@tailshaft/drivetrain';
import { listed } from '@tailshaft/mechanics';
import { asSpelling } from '@tailshaft/vocabulary';
import type { Cursor } from '../cursor.js';
import { nearest } from '../misspelt.js';
import { isTok, type Tok } from '../token.js';
import { takeOpen } from './open.js';

/** One of the listed words, which may be two or three words long. */
export function takeWord(cursor: Cursor, property: string, words: readonly string[]): string | undefined {
  const longestFirst = [...words].sort((a, b) => b.length - a.length);
  for (const one of longestFirst) if (cursor.takeWords(one)) return one;
  const range = wrongToken(cursor);
  const meant = range.text ? nearest(range.text, words) : undefined;
  const choices = meant
    ? [{ title: `Write ${meant}`, text: meant }]
    : words.length <= 5 && range.text
      ? words.map(one => ({ title: `Write ${one}`, text: one }))
      : undefined;
  const said = range.text ? `"${property}" cannot be "${range.text}"` : `"${property}" has no value yet`;
  return cursor.problem('text/value', range, `${said}: it is ${listed(words, 'or')}.`, choices);
}

/** Any single word or number, e.g. a duty class or a size name. */
export function takeAnyWord(cursor: Cursor, property: string, what: string): string | undefined {
  const token =
    cursor.take('number') ??
    cursor.takeFreeWord() ??
    cursor.take('string') ??
    (asSpelling(what) === 'mode' ? takeNameLikeProperty(cursor) : undefined);
  if (token) return unquoted(token.text);
  return cursor.problem('text/value-missing', wrongToken(cursor), `"${property}" needs a ${what}.`);
}

/** A name that a property has too, `mode boost`: it is the property only where a number follows, as in `boost 1.6 bar`. */
function takeNameLikeProperty(cursor: Cursor): Tok | undefined {
  const next = cursor.peek(1);
  return isTok(next) && next.kind === 'number' ? undefined : cursor.take('word');
}

/** Words in quotes. */
export function takeText(cursor: Cursor, property: string): string | undefined {
  const token = cursor.take('string');
  if (!token)
    return cursor.problem(
      'text/value-missing',
      wrongToken(cursor),
      `"${property}" needs its words in quotes: ${property} "...".`,
    );
  closed(cursor, token);
  return unquoted(token.text);
}

/** `2026-05-01`. */
export function takeDate(cursor: Cursor, property: string): string | undefined {
  const date = cursor.take('date');
  if (date) return date.text;
  return cursor.problem(
    'text/date',
    wrongToken(cursor),
    `"${property}" is a date, written year-month-day: ${property} 2026-05-01.`,
  );
}

/** `source "title" dated 2025-02-10`. */
export function takeSource(cursor: Cursor, property: string): SourceNote | undefined {
  const titleOpen = takeOpen(cursor, 'title');
  const title = titleOpen ? undefined : takeText(cursor, property);
  if (title === undefined && !titleOpen) return undefined;
  if (!cursor.takeJoin('dated') || takeOpen(cursor, 'date'))
    return title === undefined ? undefined : { title };
  const date = cursor.take('date');
  if (!date) {
    cursor.problem(
      'text/date',
      wrongToken(cursor),
      'The date of a source is written year-month-day: dated 2025-02-10.',
    );
  } else if (title === undefined) cursor.known = { dated: date.text };
  if (title === undefined) return undefined;
  return date ? { title, dated: date.text } : { title };
}

/** The token that stands where something else is wanted, taken; or the one before, when nothing stands there. */
export function wrongToken(cursor: Cursor): { start: number; end: number; text?: string } {
  const next = cursor.peek();
  if (isTok(next) && !cursor.atNextProperty) {
    cursor.index += 1;
    return next;
  }
  const before = cursor.previous;
  return before ? { start: before.start, end: before.end } : { start: 0, end: 0 };
}

/** Says that a string's closing quote is missing. */
export function closed(cursor: Cursor, token: { start: number; end: number; text: string }): void {
  if (token.text.length < 2 || !token.text.endsWith('"')) {
    cursor.problem(
      'text/open-quote',
      token,
      'The closing quote is missing: the text is read up to the end of the line.',
      [{ title: 'Close the quote', text: `${token.text.trimEnd()}"` }],
    );
  }
}

export function unquoted(text: string): string {
  return text.startsWith('"') ? text.replace(/^"|"$/g, '') : text;
}
