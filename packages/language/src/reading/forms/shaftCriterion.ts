import type { ShaftCriterion } from '@tailshaft/drivetrain';
import type { Cursor } from '../cursor.js';
import { takeQuantity } from './quantity.js';
import { takeWord, unquoted } from './words.js';

/** `small-craft formula factor 5.0 "pilot service"`, `class formula`. */
export function takeShaftCriterion(cursor: Cursor, property: string): ShaftCriterion | undefined {
  const word = takeWord(cursor, property, ['small-craft formula', 'class formula']);
  if (!word) return undefined;
  const formula = word === 'class formula' ? 'class' : 'small-craft';
  const factor = cursor.takeWords('factor')
    ? takeQuantity(cursor, `${property}, factor`, 'number')
    : undefined;
  const reason = cursor.take('string');
  return { formula, ...(factor ? { factor } : {}), ...(reason ? { reason: unquoted(reason.text) } : {}) };
}
