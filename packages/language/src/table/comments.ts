import type { EntryReading } from '../reading/document.js';
import { type Piece, piecesOf } from '../text/tokens.js';

/** The column of the comments of an entry, where one has any. */
export const COMMENTS = 'comments';

/**
 * Comments by the entry that they stand in or before, those after the last one with it. The remark of an entry has its own
 * column, and what stands in a block beside the entries, a vessel, stays with that.
 */
export function commentsByEntry(
  text: string,
  entries: readonly EntryReading[],
  beside: readonly { readonly start: number; readonly end: number }[],
): Map<EntryReading, string> {
  const found = new Map<EntryReading, string[]>();
  const pieces = piecesOf(text).filter(
    one => one.comment && !beside.some(block => one.start >= block.start && one.start < block.end),
  );
  const remarks = new Set(entries.flatMap(entry => remarkOf(entry, pieces)));
  for (const piece of pieces) {
    const entry = entries.find(one => one.whole.end > piece.start) ?? entries.at(-1);
    if (!entry || remarks.has(piece)) continue;
    found.set(entry, [...(found.get(entry) ?? []), ...linesOf(piece)]);
  }
  return new Map([...found].map(([entry, lines]) => [entry, lines.join('\n')]));
}

/** Comments as they stand before an entry. */
export function commentLines(cell: string): string {
  if (cell.trim() === '') return '';
  return cell
    .split(/\r?\n/)
    .map(one => `${`// ${one}`.trimEnd()}\n`)
    .join('');
}

/** The lines above an entry that are its remark already. */
function remarkOf({ doc, whole }: EntryReading, pieces: readonly Piece[]): Piece[] {
  if (!doc) return [];
  const above = pieces.filter(one => one.start < whole.start && one.text.startsWith('///'));
  return above.slice(-doc.split('\n').length);
}

function linesOf({ text, comment }: Piece): string[] {
  if (comment === 'line') return [text.replace(/^\/\/+ ?/, '')];
  const inside = text.replace(/^\/\*+/, '').replace(/\*+\/$/, '');
  const lines = inside.split(/\r\n|\r|\n/).map(one => one.replace(/^\s*\* ?/, '').trim());
  return lines.filter((one, index) => one !== '' || (index > 0 && index < lines.length - 1));
}
