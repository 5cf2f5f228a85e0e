import type { Spelling } from '@tailshaft/vocabulary';
import type { Replacement } from '../edit/text-edit.js';
import { DEPTH_OF } from '../text/depth.js';
import { type Piece, piecesOf } from '../text/tokens.js';

/** Sentences, and the words that go on with them on a line of their own. */
const SENTENCES: ReadonlySet<string> = new Set<Spelling>(['accept', 'assume', 'require', 'revision']);
const CLAUSES: ReadonlySet<string> = new Set<Spelling>(['because', 'by', 'dated', 'on', 'until']);

const STEP = '  ';

/**
 * The indentation that the formatter gives the line of an offset, for the moment when the line is begun. Only the space
 * in front of its first word changes; inside comments nothing does.
 */
export function indentNewLine(text: string, offset: number): Replacement | undefined {
  const start = Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1;
  const space = /^[^\S\r\n]*/.exec(text.slice(start))![0];
  const pieces = piecesOf(text);
  if (pieces.some(piece => piece.start < start && piece.end > start)) return undefined;
  const code = pieces.filter(piece => !piece.comment);
  const before = code.filter(piece => piece.end <= start);
  const next = code.find(piece => piece.start >= start);
  const first = next && next.start === start + space.length ? next : undefined;
  const indent = indentOf(before, first);
  return indent === space ? undefined : { start, end: start + space.length, text: indent };
}

function indentOf(before: readonly Piece[], first: Piece | undefined): string {
  let depth = depthBehind(before);
  if (first?.text === '}') depth = Math.max(0, depth - 1);
  const known = first && DEPTH_OF[first.text];
  if (known !== undefined) depth = Math.min(depth, known);
  return STEP.repeat(depth) + (goesOn(before, first) ? STEP + STEP : '');
}

/** How many blocks are open behind these tokens. */
function depthBehind(pieces: readonly Piece[]): number {
  let depth = 0;
  let line = -1;
  for (const piece of pieces) {
    const known = piece.line === line ? undefined : DEPTH_OF[piece.text];
    line = piece.endLine;
    if (known !== undefined) depth = Math.min(depth, known);
    if (piece.text === '{') depth += 1;
    else if (piece.text === '}') depth = Math.max(0, depth - 1);
  }
  return depth;
}

/** Whether the line continues the sentence above it: by a word of its own, or because that one waits for a value. */
function goesOn(before: readonly Piece[], first: Piece | undefined): boolean {
  const last = before.at(-1);
  if (!last || !(CLAUSES.has(first?.text ?? '') || CLAUSES.has(last.text))) return false;
  const begun = before.findLast((piece, index) =>
    index === 0 || piece.line > before[index - 1]!.endLine
      ? SENTENCES.has(piece.text) || piece.text === '{' || piece.text === '}'
      : false,
  );
  return begun !== undefined && SENTENCES.has(begun.text);
}
