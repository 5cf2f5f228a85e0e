import type { Spot } from '../specs/spot.js';
import { visible } from '../terminal/visible.js';

/** Widest stretch of a source line that is shown. */
const WIDEST = 96;

/** The source line with a caret under what is meant, as plain text: line number, line, marks. */
export function excerpt(spot: Spot): { number: string; line: string; marks: string } {
  const number = String(spot.line);
  const end = spot.endLine === spot.line ? spot.endColumn : spot.text.length + 1;
  let from = 0;
  if (spot.text.length > WIDEST && spot.column > WIDEST / 2) from = spot.column - 1 - 24;
  const cut = spot.text.slice(from, from + WIDEST);
  const head = from > 0 ? '…' : '';
  const tail = from + WIDEST < spot.text.length ? '…' : '';
  const start = spot.column - 1 - from;
  const length = Math.max(1, Math.min(end - spot.column, cut.length - start));
  // Tabs stay tabs under the line, so that the caret stands where the eye expects it.
  const space = cut.slice(0, start).replace(/[^\t]/g, ' ');
  return {
    number,
    line: `${head}${visible(cut)}${tail}`,
    marks: `${' '.repeat(head.length)}${space}${'^'.repeat(length)}`,
  };
}
