import { DefaultLexer, type LexerResult, type TokenizeOptions } from 'langium';
import { closeBlocks } from './repair/close-blocks.js';
import { closeEvidence } from './repair/close-evidence.js';
import { halfRatio } from './repair/half-ratio.js';
import { headerWords } from './repair/header-words.js';
import { misleadingSigns } from './repair/misleading-signs.js';
import { openBlocks } from './repair/open-blocks.js';
import { closeComments } from './repair/open-comment.js';
import type { Repaired, Token } from './repair/tokens.js';
import { tooDeep } from './repair/too-deep.js';

/**
 * A lexer that mends brackets: one that is missing or too many costs one message, and everything else in the file
 * keeps its meaning. Where the text is balanced nothing is touched.
 */
export class BraceRepairLexer extends DefaultLexer {
  override tokenize(text: string, options?: TokenizeOptions): LexerResult {
    const comments = closeComments(text);
    const lexed = super.tokenize(comments?.text ?? text, options);
    const more = [...(comments?.errors ?? []), ...misleadingSigns(text)];
    const result = more.length > 0 ? { ...lexed, errors: [...lexed.errors, ...more] } : lexed;
    const make = (image: string, at: Token, before: boolean) => this.inserted(image, at, before);
    let repaired: Repaired = { tokens: result.tokens, errors: [] };
    const words = (all: readonly Token[]) => headerWords(all, this.tokenTypes);
    for (const repair of [words, halfRatio, tooDeep, closeEvidence, openBlocks, closeBlocks]) {
      const next = repair(repaired.tokens, make);
      if (next) repaired = { tokens: next.tokens, errors: [...repaired.errors, ...next.errors] };
    }
    if (repaired.tokens === result.tokens) return result;
    return { ...result, tokens: [...repaired.tokens], errors: [...result.errors, ...repaired.errors] };
  }

  /** A token that stands nowhere in the text, right before or behind one that does. */
  private inserted(image: string, at: Token, before: boolean): Token {
    const offset = before ? at.startOffset : (at.endOffset ?? at.startOffset) + 1;
    const line = before ? at.startLine : at.endLine;
    const column = before ? at.startColumn : (at.endColumn ?? 0) + 1;
    const type = this.tokenTypes[image]!;
    return {
      image,
      startOffset: offset,
      endOffset: offset - 1,
      startLine: line,
      endLine: line,
      startColumn: column,
      endColumn: column,
      tokenType: type,
      tokenTypeIdx: type.tokenTypeIdx!,
      isInsertedInRecovery: true,
      payload: undefined,
    } as unknown as Token;
  }
}
