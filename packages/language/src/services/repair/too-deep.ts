import type { Repaired, Token } from './tokens.js';

/** No spec nests half as deep; the parser's work grows faster than the depth, so what lies deeper is left out. */
const DEEPEST = 24;

const MESSAGE = 'Blocks are nested';

/** Leaves out what stands in blocks within blocks beyond all sense, with one message where that begins. */
export function tooDeep(tokens: readonly Token[]): Repaired | undefined {
  let depth = 0;
  let first: Token | undefined;
  const kept: Token[] = [];
  for (const token of tokens) {
    if (token.image === '{') depth += 1;
    if (depth <= DEEPEST) kept.push(token);
    else first ??= token;
    if (token.image === '}' && depth > 0) depth -= 1;
  }
  if (!first) return undefined;
  const message = `${MESSAGE} ${DEEPEST} deep here, which is the limit: nothing deeper is read. Look for missing closing braces above.`;
  const { startOffset: offset, startLine: line, startColumn: column } = first;
  return { tokens: kept, errors: [{ offset, line, column, length: 1, message }] };
}

/** Whether blocks were left out for their depth: what stands in them was not understood. */
export function leavesOut(error: { readonly message: string }): boolean {
  return error.message.startsWith(MESSAGE);
}
