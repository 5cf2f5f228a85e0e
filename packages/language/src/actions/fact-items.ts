import type { BlockReading } from '../reading/block.js';
import { type Piece, piecesOf } from '../text/tokens.js';

/** A fact, or a block of facts, as it stands in the text. */
export interface FactItem {
  readonly words: string;
  /** The field of the model that it fills. */
  readonly field: string;
  readonly start: number;
  readonly end: number;
}

/** The facts of a block with the comments in front of and behind them. */
export function itemsOf(
  facts: BlockReading,
  block: { start: number; end: number },
  text: string,
): FactItem[] {
  const pieces = piecesOf(text.slice(block.start + 1, block.end - 1)).map(piece =>
    moveBy(piece, block.start + 1),
  );
  const found = [
    ...facts.facts.map(one => ({
      words: one.row.words,
      field: one.row.field,
      start: one.words.start,
      end: Math.max(one.words.end, one.value?.end ?? 0, one.evidence?.end ?? 0),
    })),
    ...facts.nested.map(one => ({
      words: one.row.words,
      field: one.row.field,
      start: one.words.start,
      end: one.host.block?.end ?? one.host.headEnd,
    })),
  ].filter(one => one.start > block.start);
  const inOrder = found.sort((a, b) => a.start - b.start);
  let before = block.start + 1;
  return inOrder.map((item, index) => {
    const next = inOrder[index + 1]?.start ?? block.end - 1;
    const lead = pieces.find(piece => piece.start >= before && piece.start < item.start);
    const line = pieces.findLast(piece => piece.end <= item.end)?.endLine;
    const trail = pieces.findLast(
      piece => piece.comment && piece.start >= item.end && piece.start < next && piece.line === line,
    );
    const end = trail?.end ?? item.end;
    before = end;
    return {
      words: item.words,
      field: item.field,
      start: Math.min(lead?.start ?? item.start, item.start),
      end,
    };
  });
}

function moveBy(piece: Piece, offset: number): Piece {
  return { ...piece, start: piece.start + offset, end: piece.end + offset };
}
