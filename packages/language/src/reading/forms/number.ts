import { findUnit, listed } from '@tailshaft/mechanics';
import type { Cursor } from '../cursor.js';
import { isTok, type Tok } from '../token.js';

export interface NumberRead {
  readonly number: number;
  readonly written: string;
  readonly start: number;
  readonly end: number;
  /** Unit that a mark right behind the number stands for: inches or feet. */
  readonly unit?: 'in' | 'ft';
  /** Told as a problem already: nothing may be made of it. */
  readonly refused?: true;
}

/** Fractions that are one character. */
const VULGAR: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅐': 1 / 7,
  '⅑': 1 / 9,
  '⅒': 1 / 10,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};
const MARKED = /(?:"|″|'')$|['′]$/;
const FRACTION = /^(?:\d+\/\d+|[¼-¾⅐-⅞])(?:"|″|''|['′])?$/;

/** `300`, `1/2`, `1 3/4`, `1-3/4`, `1¾`, `-3`, `5e4`; `1.75"` and `4'` bring their unit with them. */
export function takeNumber(cursor: Cursor): NumberRead | undefined {
  const point = leadingPoint(cursor);
  if (point) return point;
  const first = cursor.take('number');
  if (!first) return undefined;
  const otherwise = decimalComma(cursor, first) ?? thousands(cursor, first);
  if (otherwise) return otherwise;
  const next = cursor.peek();
  if (/^\d+$/.test(first.text) && isTok(next) && FRACTION.test(plain(next.text))) {
    cursor.index += 1;
    const fraction = numberOf(next.text);
    const written = `${first.text} ${next.text}`;
    return {
      ...markOf(next.text),
      number: Number(first.text) + fraction,
      written,
      start: first.start,
      end: next.end,
    };
  }
  return {
    ...markOf(first.text),
    number: numberOf(first.text),
    written: first.text,
    start: first.start,
    end: first.end,
  };
}

/** The number that a token stands for, without the mark of its unit. */
export function numberOf(text: string): number {
  const bare = plain(text).replace(MARKED, '');
  const sign = bare.startsWith('-') ? -1 : 1;
  const size = bare.replace(/^[+-]/, '');
  const mixed = /^(?:(\d+)-)?(\d+)\/(\d+)$/.exec(size);
  if (mixed) return sign * (Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]));
  const vulgar = VULGAR[size.slice(-1)];
  return vulgar === undefined ? Number(bare) : sign * (Number(size.slice(0, -1)) + vulgar);
}

/** Signs that print finer than they are typed. */
function plain(text: string): string {
  return text.replace(/−/g, '-').replace(/⁄/g, '/');
}

function markOf(text: string): { unit?: 'in' | 'ft' } {
  const mark = MARKED.exec(text)?.[0];
  return mark ? { unit: mark === "'" || mark === '′' ? 'ft' : 'in' } : {};
}

/** `.75`: easily read as 75. */
function leadingPoint(cursor: Cursor): NumberRead | undefined {
  const [point, digits] = [cursor.peek(), cursor.peek(1)];
  if (!isTok(point) || point.text !== '.' || !isTok(digits)) return undefined;
  if (digits.start !== point.end || !/^\d/.test(digits.text)) return undefined;
  cursor.index += 2;
  return refused(cursor, { start: point.start, end: digits.end }, `.${digits.text}`, `0.${digits.text}`, {
    code: 'text/number',
    because: 'A number begins with a digit',
  });
}

/** `1 750`, `1'750`, `1_750`: thousands that are set apart. A gap parts numbers too, so a unit must stand behind them. */
function thousands(cursor: Cursor, first: Tok): NumberRead | undefined {
  if (!/^[+\-−]?\d{1,3}['’]?$/.test(first.text)) return undefined;
  const groups: Tok[] = [];
  let last = first;
  for (let next = cursor.peek(); isTok(next); next = cursor.peek(groups.length)) {
    const gap = next.start - last.end;
    const apart = last.text.endsWith("'") || next.text.startsWith('_') ? 0 : 1;
    if (gap !== apart || !/^_?\d{3}(?:\.\d+|'|(?:_\d{3})+)?$/.test(next.text)) break;
    groups.push(next);
    last = next;
  }
  const behind = cursor.peek(groups.length);
  const withGap = groups.some(one => /^\d/.test(one.text)) && !first.text.endsWith("'");
  const isMeasured = isTok(behind) && (behind.text === 'per' || findUnit(behind.text) !== undefined);
  if (groups.length === 0 || (withGap && !isMeasured)) return undefined;
  cursor.index += groups.length;
  const all = [first, ...groups].map(one => one.text.replace(/['’_]/g, '')).join('');
  const written = [first, ...groups].map(one => one.text).join(withGap ? ' ' : '');
  return refused(cursor, { start: first.start, end: last.end }, written, all, {
    code: 'text/number',
    because: 'Thousands are not set apart',
  });
}

function refused(
  cursor: Cursor,
  range: { readonly start: number; readonly end: number },
  written: string,
  meant: string,
  { code, because }: { readonly code: string; readonly because: string },
): NumberRead {
  cursor.problem(code, range, `${because}: write ${meant} instead of ${written}.`, [
    { title: `Write ${meant}`, text: meant, ...range },
  ]);
  return { number: Number.NaN, written, ...range, refused: true };
}

/** `1,75`: a comma may part the decimals or the thousands, so it is refused, with what it may mean. */
function decimalComma(cursor: Cursor, first: Tok): NumberRead | undefined {
  const [comma, digits] = [cursor.peek(), cursor.peek(1)];
  if (!isTok(comma) || comma.text !== ',' || comma.start !== first.end) return undefined;
  if (!isTok(digits) || digits.start !== comma.end || !/^\d/.test(digits.text)) return undefined;
  cursor.index += 2;
  const range = { start: first.start, end: digits.end };
  const written = `${first.text},${digits.text}`;
  const thousands = /^\d{3}(?:\D|$)/.test(digits.text) && !first.text.includes('.');
  const meant = [`${first.text}.${digits.text}`, ...(thousands ? [first.text + digits.text] : [])];
  cursor.problem(
    'text/decimal-comma',
    range,
    `Decimals are written with a point: ${listed(meant, 'or')} instead of ${written}.`,
    meant.map(text => ({ title: `Write ${text}`, text, ...range })),
  );
  return { number: Number.NaN, written, ...range, refused: true };
}
