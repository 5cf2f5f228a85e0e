import {
  asSpelling,
  BOUNDS,
  partsOf,
  type Statement,
  type StatementPart,
  statement,
} from '@tailshaft/vocabulary';
import type { Token } from '../../text/scan.js';

/** The statement of a vessel that begins with this word, where more than the word belongs to it. */
export function sentenceOf(word: string): Statement | undefined {
  const found = statement(word, 'vessel');
  return found && partsOf(found).length > 1 ? found : undefined;
}

/** Which place of a sentence is being filled in: the one behind its last word that stands before the cursor. */
export function placeInSentence(parts: readonly StatementPart[], typed: readonly Token[]): number {
  const said = typed.map(token => token.text);
  let place = 0;
  let fills = -1;
  for (const part of parts) {
    if ('fill' in part) fills += 1;
    else if (leads(said, part.word)) place = fills + 1;
  }
  return Math.min(place, fills);
}

/** `at` of a condition is no `at least`: it stands behind the bound. */
function leads(said: readonly string[], words: string): boolean {
  const bound = said.findIndex((_, at) =>
    BOUNDS.some(one => one === said.slice(at, at + one.split(' ').length).join(' ')),
  );
  if ((BOUNDS as readonly string[]).includes(words)) return bound >= 0;
  if (asSpelling(words) === 'at') return bound >= 0 && said.lastIndexOf(words) > bound;
  return said.includes(words);
}
