import type { LexerResult, ParseResult } from 'langium';
import type { Problem } from '../reading/problem.js';
import type { Misspelt } from '../services/repair/header-words.js';

type LexerError = LexerResult['errors'][number];

/** Problems of lexer and parser in the form that all others have. */
export function syntaxProblems({ lexerErrors, parserErrors }: ParseResult, text: string): Problem[] {
  const problems: Problem[] = lexerErrors.map((error: LexerError & Misspelt) => ({
    code: error.meant ? 'text/stray' : 'text/syntax',
    start: error.offset,
    end: error.offset + Math.max(1, error.length),
    severity: 'error',
    message: error.message,
    ...(error.meant ? { choices: [{ title: `Write ${error.meant}`, text: error.meant }] } : {}),
  }));
  for (const error of parserErrors) {
    const { token, previousToken } = error as typeof error & { previousToken?: typeof error.token };
    const at = [token, previousToken].find(one => one && isWritten(one));
    const start = at?.startOffset ?? text.trimEnd().length;
    const end = at?.endOffset === undefined ? start : at.endOffset + 1;
    problems.push({ code: 'text/syntax', start, end, severity: 'error', message: error.message });
  }
  return problems;
}

/** The end of the text, and what the parser put in so as to read on, stand nowhere. */
function isWritten({ startOffset }: ParseResult['parserErrors'][number]['token']): boolean {
  return startOffset >= 0;
}
