import { DefaultLexer, type LexerResult, type TokenizeOptions } from 'langium';

type Token = LexerResult['tokens'][number];

/** Keywords that, at the start of a line, can only stand at this depth of braces. */
const DEPTH: Readonly<Record<string, number>> = {
  vessel: 0,
  import: 0,
  arrangement: 1,
  criteria: 1,
  require: 1,
  accept: 1,
  revision: 1,
  shaftline: 2,
};
const ENTRIES = new Set(['engine', 'motor', 'gear', 'transfer', 'coupling', 'shaft', 'propeller']);

/**
 * A lexer that closes what was left open: a missing closing brace costs one message, and the blocks behind it keep
 * their meaning. Where the text is balanced nothing is touched.
 */
export class BraceRepairLexer extends DefaultLexer {
  override tokenize(text: string, options?: TokenizeOptions): LexerResult {
    const result = super.tokenize(text, options);
    let balance = 0;
    for (const token of result.tokens) {
      if (token.image === '{') balance += 1;
      else if (token.image === '}') balance -= 1;
    }
    return balance > 0 ? this.closeOpenBlocks(result) : result;
  }

  private closeOpenBlocks(result: LexerResult): LexerResult {
    const tokens: Token[] = [];
    const open: { brace: Token; indent: number; line: number }[] = [];
    let blamed: Token | undefined;
    let lineStart: Token | undefined;
    const close = (before: Token | undefined) => {
      blamed ??= open.at(-1)?.brace;
      open.pop();
      tokens.push(this.closing(before ?? tokens.at(-1)!, before !== undefined));
    };
    for (const token of result.tokens) {
      const first = lineStart === undefined || token.startLine !== lineStart.startLine;
      if (first) lineStart = token;
      const column = token.startColumn ?? 1;
      if (token.image === '}') {
        while (
          first &&
          open.length > 1 &&
          open.at(-1)!.line !== token.startLine &&
          open.at(-1)!.indent > column
        )
          close(token);
        open.pop();
      } else if (first) {
        const depth = this.depthOf(token, column, result.tokens);
        while (depth !== undefined && open.length > depth) close(token);
      }
      if (token.image === '{')
        open.push({ brace: token, indent: lineStart!.startColumn ?? 1, line: token.startLine ?? 0 });
      tokens.push(token);
    }
    while (open.length > 0) close(undefined);
    const brace = blamed!;
    const errors = [
      ...result.errors,
      {
        offset: brace.startOffset,
        line: brace.startLine,
        column: brace.startColumn,
        length: 1,
        message:
          'This block is not closed: a closing brace } is missing. I read on as if it stood where the block seems to end.',
      },
    ];
    return { ...result, tokens, errors };
  }

  private depthOf(token: Token, column: number, tokens: readonly Token[]): number | undefined {
    const known = DEPTH[token.image];
    if (known !== undefined) return known;
    if (column !== 1 || !ENTRIES.has(token.image)) return undefined;
    // `shaft material Name {` in the first column, not a fact that begins with such a word.
    const at = tokens.indexOf(token);
    const header = tokens.slice(at + 1, at + 5).map(one => one.image);
    return header.includes('{') ? 0 : undefined;
  }

  private closing(at: Token, before: boolean): Token {
    const offset = before ? at.startOffset : (at.endOffset ?? at.startOffset) + 1;
    const type = this.tokenTypes['}']!;
    return {
      image: '}',
      startOffset: offset,
      endOffset: offset - 1,
      startLine: before ? at.startLine : at.endLine,
      endLine: before ? at.startLine : at.endLine,
      startColumn: before ? at.startColumn : (at.endColumn ?? 0) + 1,
      endColumn: before ? at.startColumn : (at.endColumn ?? 0) + 1,
      tokenType: type,
      tokenTypeIdx: type.tokenTypeIdx!,
      isInsertedInRecovery: true,
      payload: undefined,
    } as unknown as Token;
  }
}
