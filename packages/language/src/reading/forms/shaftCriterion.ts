import type { ShaftCriterion } from '@tailshaft/drivetrain';
import type { Cursor } from '../cursor.js';
import { takeOpen } from './compound.js';
import { takeQuantity } from './quantity.js';
import { takeWord, unquoted } from './words.js';

/** `small-craft formula factor 5.0 "pilot service"`, `class formula`. */
export function takeShaftCriterion(cursor: Cursor, property: string): ShaftCriterion | undefined {
  const word = takeWord(cursor, property, ['small-craft formula', 'class formula']);
  if (!word) return undefined;
  const formula = word === 'class formula' ? 'class' : 'small-craft';
  const wanted = cursor.takeWords('factor');
  // A factor that is not known is not the default one: nothing is judged by it.
  const open = wanted && takeOpen(cursor, 'factor');
  const factor = wanted && !open ? takeQuantity(cursor, `${property}, factor`, 'number') : undefined;
  const reason = cursor.take('string');
  if (open) cursor.known = { formula };
  if (open) return undefined;
  return { formula, ...(factor ? { factor } : {}), ...(reason ? { reason: unquoted(reason.text) } : {}) };
}
