import { lineBreakOf, piecesOf } from '../text/tokens.js';
import type { Replacement } from './text-edit.js';

interface Range {
  readonly start: number;
  readonly end: number;
}

/** Adds statements or facts to a block in braces, laid out as the block is; undefined when its brace is missing. */
export function addToBlock(
  text: string,
  block: Range,
  added: readonly string[],
  where: 'first' | 'last' = 'last',
): Replacement | undefined {
  const close = block.end - 1;
  if (text[block.start] !== '{' || text[close] !== '}' || close <= block.start) return undefined;
  const inside = text.slice(block.start + 1, close);
  if (!/[\r\n]/.test(inside)) return addOnLine(inside, block.start + 1, added, where);
  const eol = lineBreakOf(text);
  const outer = indentAt(text, close);
  const indent = innerIndent(text, block) ?? `${outer}  `;
  const lines = added.map(one => indent + reindented(one, indent, eol));
  if (where === 'first') {
    const start = block.start + 1 + (/^[^\S\r\n]*/.exec(inside)?.[0].length ?? 0);
    const comment = piecesOf(inside)[0];
    const after = comment?.comment === 'line' && comment.line === 0 ? block.start + 1 + comment.end : start;
    return { start: after, end: after, text: eol + lines.join(eol) };
  }
  const space = close - inside.trimEnd().length - block.start - 1;
  const lineStart = startOfLine(text, close);
  if (text.slice(lineStart, close).trim() === '') {
    return { start: lineStart, end: lineStart, text: lines.map(one => one + eol).join('') };
  }
  return { start: close - space, end: close, text: `${eol}${lines.join(eol)}${eol}${outer}` };
}

/** Where a header ends: behind its last token before this offset, and before any comment. */
export function headerEnd(text: string, start: number, end: number): number {
  const last = piecesOf(text.slice(start, end))
    .filter(piece => !piece.comment)
    .at(-1);
  return last ? start + last.end : end;
}

/** The first brace of a statement and the end of its block. */
export function bracesIn(text: string, range: Range): Range | undefined {
  const open = piecesOf(text.slice(range.start, range.end)).find(piece => piece.text === '{');
  return open && text[range.end - 1] === '}'
    ? { start: range.start + open.start, end: range.end }
    : undefined;
}

/** Where the statement begins that is led by this word, stands in no braces, and is the last before an offset. */
export function statementStart(text: string, word: string, offset: number): number | undefined {
  let depth = 0;
  let found: number | undefined;
  for (const piece of piecesOf(text)) {
    if (piece.start > offset) break;
    if (piece.text === '{') depth += 1;
    else if (piece.text === '}') depth -= 1;
    else if (piece.text === word && depth === 0) found = piece.start;
  }
  return found;
}

/** Adds a statement in front of another, and of the comments that belong to that. */
export function beforeStatement(text: string, start: number, added: string): Replacement {
  const eol = lineBreakOf(text);
  const line = startOfLine(text, start);
  const alone = text.slice(line, start).trim() === '';
  const comments = alone ? COMMENTS_ABOVE.exec(text.slice(0, line))?.[0].length : undefined;
  const at = alone ? line - (comments ?? 0) : start;
  return { start: at, end: at, text: reindented(added.trimEnd(), '', eol) + eol + eol };
}

const COMMENTS_ABOVE = /(?<=^|[\r\n])(?:[^\S\r\n]*\/\/[^\r\n]*(?:\r\n|\r|\n))+$/;

/** The white space that the line of this offset begins with. */
export function indentAt(text: string, offset: number): string {
  return /^[^\S\r\n]*/.exec(text.slice(startOfLine(text, offset)))![0];
}

export function startOfLine(text: string, offset: number): number {
  return Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1;
}

/** Further lines of an added statement moved in by the same amount. */
function reindented(statement: string, indent: string, eol: string): string {
  return statement.replace(/\r\n|\r|\n/g, eol + indent);
}

function addOnLine(
  inside: string,
  from: number,
  added: readonly string[],
  where: 'first' | 'last',
): Replacement {
  const words = added.join('  ');
  if (inside.trim() === '') return { start: from, end: from + inside.length, text: ` ${words} ` };
  if (where === 'first') {
    const space = inside.length - inside.trimStart().length;
    return { start: from, end: from + space, text: ` ${words}  ` };
  }
  const end = from + inside.trimEnd().length;
  return { start: end, end, text: `  ${words}${inside === inside.trimEnd() ? ' ' : ''}` };
}

/** Indentation of the first statement that begins a line inside the block. */
function innerIndent(text: string, block: Range): string | undefined {
  const pieces = piecesOf(text.slice(block.start + 1, block.end - 1));
  const first = pieces.find(
    (piece, index) => piece.line > (pieces[index - 1]?.endLine ?? 0) || (index === 0 && piece.line > 0),
  );
  return first && indentAt(text, block.start + 1 + first.start);
}
