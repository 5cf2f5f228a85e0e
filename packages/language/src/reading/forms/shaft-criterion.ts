import type { ShaftCriterion } from '@tailshaft/drivetrain';
import { SHAFT_FORMULAS } from '@tailshaft/vocabulary';
import type { Cursor } from '../cursor.js';
import { takeOpen } from './open.js';
import { takeQuantity } from './quantity.js';
import { takeWord, unquoted } from './words.js';

/** `small-craft formula factor 5.0 "pilot service"`, `class formula`. */
export function takeShaftCriterion(cursor: Cursor, property: string): ShaftCriterion | undefined {
  const wordOpen = takeOpen(cursor, 'formula');
  const word = wordOpen
    ? undefined
    : takeWord(
        cursor,
        property,
        SHAFT_FORMULAS.map(([words]) => words),
      );
  const formula = SHAFT_FORMULAS.find(([words]) => words === word)?.[1];
  if (!formula && !wordOpen) return undefined;
  const wanted = cursor.takeJoin('factor');
  // A factor that is not known is not the default one: nothing is judged by it.
  const open = wanted && takeOpen(cursor, 'factor');
  const factor = wanted && !open ? takeQuantity(cursor, `${property}, factor`, 'number') : undefined;
  const reason = takeOpen(cursor, 'reason') ? undefined : cursor.take('string');
  if (!formula || open) {
    cursor.known = { ...(formula ? { formula } : {}), ...(factor ? { factor } : {}) };
    return undefined;
  }
  return { formula, ...(factor ? { factor } : {}), ...(reason ? { reason: unquoted(reason.text) } : {}) };
}
