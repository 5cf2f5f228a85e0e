import type { LexerResult } from 'langium';

type LexerError = LexerResult['errors'][number];

const MESSAGE = 'This comment is not closed: */ is missing. Reading continues after this line.';

/** A number in inches, which opens no string; strings and comments; a block comment that is not closed ends with its line. */
const LOOK =
  /[\d\u00BC-\u00BE\u2150-\u215E]"(?![^\s}\])\u00D7,;])|"[^"\r\n]*"?|\/\/[^\r\n]*|\/\*[\s\S]*?\*\/|(\/\*)[^\r\n]*/g;

/** A text in which every comment ends: one that is not closed is taken for the rest of its line, with one message. */
export function closeComments(text: string): { text: string; errors: LexerError[] } | undefined {
  if (!text.includes('/*')) return undefined;
  const errors: LexerError[] = [];
  const closed = text.replace(LOOK, (found: string, open: string | undefined, offset: number) => {
    if (!open) return found;
    const line = text.slice(0, offset).split('\n');
    errors.push({ offset, length: 2, line: line.length, column: line.at(-1)!.length + 1, message: MESSAGE });
    // Of the same length, so that everything keeps its place.
    return `//${found.slice(2)}`;
  });
  return errors.length > 0 ? { text: closed, errors } : undefined;
}

export function isOpenComment(error: { readonly message: string }): boolean {
  return error.message === MESSAGE;
}
