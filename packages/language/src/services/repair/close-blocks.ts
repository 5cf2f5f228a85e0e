import { balanceOf, depthOf, errorAt, isFirst, type Repair, type Token } from './tokens.js';

interface Open {
  readonly brace: Token;
  /** Column of the first token on the line that opened it. */
  readonly indent: number;
}

/** Closes what was left open, where keywords and indentation say that the block ends. */
export const closeBlocks: Repair = (tokens, insert) => {
  let missing = balanceOf(tokens);
  if (missing <= 0) return undefined;
  const mended: Token[] = [];
  const open: Open[] = [];
  let blamed: Token | undefined;
  let indent = 1;
  const close = (before: Token | undefined) => {
    blamed ??= open.at(-1)?.brace;
    open.pop();
    missing -= 1;
    mended.push(insert('}', before ?? mended.at(-1)!, before !== undefined));
  };
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    const first = isFirst(tokens, at);
    const column = token.startColumn ?? 1;
    if (first) indent = column;
    if (token.image === '}') {
      while (first && missing > 0 && open.length > 1 && isOutside(open.at(-1)!, token, column, true))
        close(token);
      open.pop();
    } else if (first) {
      const depth = depthOf(tokens, at);
      while (depth !== undefined && open.length > depth) close(token);
      // A line no deeper than the one that opened the block stands outside it.
      while (
        depth === undefined &&
        missing > 0 &&
        open.length > 0 &&
        isOutside(open.at(-1)!, token, column, false)
      )
        close(token);
    }
    if (token.image === '{') open.push({ brace: token, indent });
    mended.push(token);
  }
  while (open.length > 0) close(undefined);
  const message =
    'This block is not closed: a closing brace } is missing. It is assumed where the block seems to end.';
  return { tokens: mended, errors: [errorAt(blamed!, message)] };
};

function isOutside({ brace, indent }: Open, token: Token, column: number, closing: boolean): boolean {
  if (brace.startLine === token.startLine) return false;
  return closing ? indent > column : indent >= column && indent > 1;
}
