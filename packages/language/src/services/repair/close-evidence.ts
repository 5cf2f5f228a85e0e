import { errorAt, type Repair, type Token } from './tokens.js';

/** `[drawing }`: the mark ends where the line or its block does. A `]` that closes none is read as if it were not there. */
export const closeEvidence: Repair = (tokens, insert) => {
  const mended: Token[] = [];
  const errors: ReturnType<typeof errorAt>[] = [];
  let open: Token | undefined;
  let depth = 0;
  const close = () => {
    if (!open) return;
    mended.push(insert(']', mended.at(-1)!, false));
    errors.push(errorAt(open, 'This evidence is not closed: a ] is missing, as in [measured 2026-01-14].'));
    open = undefined;
  };
  for (const token of tokens) {
    if (
      open &&
      (token.startLine !== open.startLine ||
        token.image === '{' ||
        token.image === '}' ||
        token.image === '[')
    )
      close();
    if (token.image === '{') depth += 1;
    else if (token.image === '}') depth -= 1;
    // Outside of all blocks no mark can stand: there it is a stray sign.
    if (token.image === '[' && depth > 0) open = token;
    else if (token.image === ']' && open) open = undefined;
    else if (token.image === ']' && depth > 0) {
      errors.push(errorAt(token, 'This ] closes nothing and is ignored.'));
      continue;
    }
    mended.push(token);
  }
  close();
  return errors.length > 0 ? { tokens: mended, errors } : undefined;
};
