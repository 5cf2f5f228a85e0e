import type { Spelling } from '@tailshaft/vocabulary';
import type { TokenType } from 'chevrotain';
import { nearest } from '../../reading/misspelt.js';
import { errorAt, isFirst, type Repaired, type Token } from './tokens.js';

/** The word that may stand behind name and title of a header, by what the header begins with. */
const JOINS: Readonly<Record<string, Spelling>> = {
  arrangement: 'revises',
  shaftline: 'mirrors',
} satisfies Partial<Record<Spelling, Spelling>>;
const SHORTEST = 3;

/** A message about one word, with the word that was probably meant. */
export interface Misspelt {
  readonly meant?: string;
}

/**
 * `arrangement proposed revis existing {`: the word half typed or misspelt is taken for the one that alone can stand
 * there, with one message. Without it all that follows would be read as something else.
 */
export function headerWords(tokens: readonly Token[], types: Readonly<Record<string, TokenType>>) {
  const mended: Token[] = [...tokens];
  const errors: (ReturnType<typeof errorAt> & Misspelt)[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const join = isFirst(tokens, at) ? JOINS[tokens[at]!.image] : undefined;
    if (join === undefined) continue;
    // Behind the name, and the title if there is one.
    const index = tokens[at + 2]?.image.startsWith('"') ? at + 3 : at + 2;
    const token = tokens[index];
    if (token?.tokenType.name !== 'WORD' || token.startLine !== tokens[at]!.startLine) continue;
    const { image } = token;
    const begun = image.length >= SHORTEST && join.startsWith(image);
    if (!begun && nearest(image, [join]) !== join) continue;
    const tokenType = types[join]!;
    mended[index] = { ...token, tokenType, tokenTypeIdx: tokenType.tokenTypeIdx! };
    errors.push({
      ...errorAt(token, `Unknown word "${image}". Did you mean "${join}"?`),
      meant: join,
    });
  }
  return errors.length > 0 ? ({ tokens: mended, errors } satisfies Repaired) : undefined;
}
