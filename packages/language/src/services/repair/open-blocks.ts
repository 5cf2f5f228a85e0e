import {
  balanceOf,
  depthOf,
  errorAt,
  isFirst,
  lineOf,
  opensBlock,
  type Repair,
  type Token,
} from './tokens.js';

const MISSING = 'An opening brace { is missing at the end of this line. It is assumed there.';
const OPEN_QUOTE =
  'The closing quote is missing, and with it the rest of this line. The block is assumed to open here.';
const TOO_MANY = 'This closing brace is one too many and is ignored.';

/** Where more blocks are closed than opened: headers that lost their brace get it, and braces too many are left out. */
export const openBlocks: Repair = (tokens, insert) => {
  let excess = -balanceOf(tokens);
  if (excess <= 0) return undefined;
  const mended: Token[] = [];
  const errors: ReturnType<typeof errorAt>[] = [];
  let depth = 0;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    if (isFirst(tokens, at)) {
      const needed = depthOf(tokens, at) ?? ((token.startColumn ?? 1) > 1 && depth === 0 ? 1 : undefined);
      while (excess > 0 && needed !== undefined && needed > depth) {
        const last = mended.map(one => one.image).lastIndexOf('}');
        if (last < 0) break;
        errors.push(errorAt(mended[last]!, TOO_MANY));
        mended.splice(last, 1);
        depth += 1;
        excess -= 1;
      }
    }
    if (token.image === '{') depth += 1;
    else if (token.image === '}' && depth > 0) depth -= 1;
    // One that closes nothing at all is told of by the reader of the file.
    else if (token.image === '}') excess -= 1;
    mended.push(token);
    const header =
      excess > 0 && tokens[at + 1]?.startLine !== token.startLine
        ? headerWithoutBrace(tokens, at)
        : undefined;
    if (header) {
      mended.push(insert('{', token, false));
      errors.push(
        token.image.startsWith('"') && !/^".*"$/.test(token.image)
          ? errorAt(token, OPEN_QUOTE)
          : errorAt(header, MISSING),
      );
      depth += 1;
      excess -= 1;
    }
  }
  return errors.length > 0 ? { tokens: mended, errors } : undefined;
};

/** Whether blocks were opened, or braces left out, that the text has otherwise: its layout then carries meaning. */
export function reshapesBlocks(error: { readonly message: string }): boolean {
  return [MISSING, OPEN_QUOTE, TOO_MANY].includes(error.message);
}

/** Whether the deeper lines that follow end with a brace right under the beginning of this one. */
function isClosedBelow(tokens: readonly Token[], end: number, first: Token): boolean {
  if (!/^[a-z]/i.test(first.image)) return false;
  let at = end + 1;
  while (at < tokens.length && !(isFirst(tokens, at) && (tokens[at]!.startColumn ?? 1) <= first.startColumn!))
    at += 1;
  return tokens[at]?.image === '}' && tokens[at]!.startColumn === first.startColumn;
}

/** The first token of the line that ends here, when it should open a block, does not, and deeper lines follow it. */
function headerWithoutBrace(tokens: readonly Token[], end: number): Token | undefined {
  let at = end;
  while (at > 0 && !isFirst(tokens, at)) at -= 1;
  const first = tokens[at]!;
  const next = tokens[end + 1];
  if (!next || (next.startColumn ?? 1) <= (first.startColumn ?? 1)) return undefined;
  if (!opensBlock(first) && !isClosedBelow(tokens, end, first)) return undefined;
  return lineOf(tokens, at).some(one => one.image === '{' || one.image === '}') ? undefined : first;
}
