import { TailshaftTerminals } from '../generated/ast.js';

/** A token or comment of the text, without the space around it. */
export interface Piece {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly comment?: 'line' | 'block';
  /** Line on which it begins and ends, from zero. */
  readonly line: number;
  readonly endLine: number;
}

const { WS, COMMENT_LINE, COMMENT_BLOCK, MARK, ...TOKENS } = TailshaftTerminals;
const sticky = (pattern: string) => new RegExp(pattern, 'uy');
const plain = (regexp: RegExp) => new RegExp(regexp.source, 'y');
const SPACE = plain(WS);
const LINE_COMMENT = plain(COMMENT_LINE);
const BLOCK_COMMENT = plain(COMMENT_BLOCK);
const IN_ORDER = [...Object.values(TOKENS).map(plain), sticky('[{}[\\]]'), plain(MARK)];
const BREAK = /\r\n|\r|\n/g;

/**
 * Tokens and comments of a text, by the terminals of the grammar in their order; never fails, so that text which the
 * parser does not understand can be printed too.
 */
export function piecesOf(text: string): Piece[] {
  const pieces: Piece[] = [];
  let line = 0;
  let at = 0;
  while (at < text.length) {
    const space = matchAt(SPACE, text, at);
    if (space !== undefined) {
      line += breaksIn(space);
      at += space.length;
      continue;
    }
    const comment = matchAt(LINE_COMMENT, text, at);
    const block = comment === undefined ? matchAt(BLOCK_COMMENT, text, at) : undefined;
    const found = comment ?? block ?? tokenAt(text, at);
    const trimmed = comment === undefined ? found : found.trimEnd();
    const endLine = line + (block === undefined ? 0 : breaksIn(found));
    pieces.push({
      text: trimmed,
      start: at,
      end: at + trimmed.length,
      line,
      endLine,
      ...(comment !== undefined ? { comment: 'line' } : block !== undefined ? { comment: 'block' } : {}),
    });
    line = endLine;
    at += found.length;
  }
  return pieces;
}

/** How lines end in this text; the first one decides. */
export function lineBreakOf(text: string): string {
  return /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
}

function breaksIn(text: string): number {
  return text.match(BREAK)?.length ?? 0;
}

function tokenAt(text: string, at: number): string {
  for (const terminal of IN_ORDER) {
    const found = matchAt(terminal, text, at);
    if (found) return found;
  }
  return String.fromCodePoint(text.codePointAt(at)!);
}

function matchAt(regexp: RegExp, text: string, at: number): string | undefined {
  regexp.lastIndex = at;
  return regexp.exec(text)?.[0];
}
