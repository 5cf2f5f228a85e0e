import type { Place } from '../reading/place.js';
import type { TextEdit } from './text-edit.js';

/** Takes a statement out, and with it the lines that it alone stands on and one of two blank lines that it parted. */
export function removal({ uri, start, end }: Place, textOf: (uri: string) => string): TextEdit[] | undefined {
  const text = textOf(uri);
  if (start < 0 || end > text.length || start >= end) return undefined;
  const indent = /[ \t]*$/.exec(text.slice(0, start))![0].length;
  const tail = /^[ \t]*(\r?\n|$)/.exec(text.slice(end));
  const from = start - indent;
  const alone = (from === 0 || text[from - 1] === '\n') && tail !== null;
  if (!alone) return [{ uri, start, end, text: '' }];
  const to = end + tail[0].length;
  const blankBefore = /(^|\n)[ \t]*\r?\n$|\{[ \t]*\r?\n$/.test(text.slice(0, from));
  const blankAfter = /^[ \t]*\r?\n/.exec(text.slice(to));
  return [{ uri, start: from, end: blankBefore && blankAfter ? to + blankAfter[0].length : to, text: '' }];
}
