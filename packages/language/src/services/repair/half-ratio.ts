import type { Spelling } from '@tailshaft/vocabulary';
import type { Repaired, Token } from './tokens.js';

const RATIO_WORDS: ReadonlySet<string> = new Set<Spelling>(['ratio', 'exact']);

/** `ratio 2.04:` and `ratio 2.`: the sign that waits for a digit is left out, as the reader asks for the whole ratio anyway. */
export function halfRatio(tokens: readonly Token[]): Repaired | undefined {
  const kept = tokens.filter((token, at) => {
    const before = tokens[at - 1];
    const half = (token.image === ':' || token.image === '.') && before?.tokenType.name === 'NUMBER';
    return !(
      half &&
      before.endOffset === token.startOffset - 1 &&
      RATIO_WORDS.has(tokens[at - 2]?.image ?? '')
    );
  });
  return kept.length < tokens.length ? { tokens: kept, errors: [] } : undefined;
}
