import { type Dimension, findUnit, measures } from '@tailshaft/mechanics';
import { UNKNOWN } from '@tailshaft/vocabulary';
import type { Cursor } from '../cursor.js';
import { type AtomTok, isTok } from '../token.js';

/**
 * `unknown` for a part of a compound value: noted, so that the whole is an open question and the rest is kept. Its unit may
 * be known already.
 */
export function takeOpen(cursor: Cursor, part: string, dimension?: Dimension): boolean {
  if (!cursor.takeWords(UNKNOWN)) return false;
  if (dimension && isUnitOf(cursor.peek(), dimension)) cursor.index += 1;
  cursor.open.push(part);
  return true;
}

/** Whether a word is a unit of this kind. */
export function isUnitOf(atom: AtomTok | undefined, dimension: Dimension): boolean {
  const unit = isTok(atom) && atom.kind === 'word' ? findUnit(atom.text) : undefined;
  return unit !== undefined && measures(unit, dimension);
}
