import type { Cursor } from '../cursor.js';
import { isTok } from '../token.js';

export interface NumberRead {
  readonly number: number;
  readonly written: string;
  readonly start: number;
  readonly end: number;
}

/** `300`, `1/2`, `1 3/4` or `1-3/4`. */
export function takeNumber(cursor: Cursor): NumberRead | undefined {
  const first = cursor.take('number');
  if (!first) return undefined;
  const whole = numberOf(first.text);
  const next = cursor.peek();
  if (/^\d+$/.test(first.text) && isTok(next) && /^\d+\/\d+$/.test(next.text)) {
    cursor.index += 1;
    return {
      number: whole + numberOf(next.text),
      written: `${first.text} ${next.text}`,
      start: first.start,
      end: next.end,
    };
  }
  return { number: whole, written: first.text, start: first.start, end: first.end };
}

function numberOf(text: string): number {
  const mixed = /^(?:(\d+)-)?(\d+)\/(\d+)$/.exec(text);
  if (!mixed) return Number(text);
  return Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]);
}
