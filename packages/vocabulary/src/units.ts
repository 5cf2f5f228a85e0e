import { type Dimension, findUnit, type Unit, unitsOf } from '@tailshaft/mechanics';
import type { ValueKind } from './kinds.js';

/** Shares are written in percent or as plain numbers; slopes of a taper have units of their own. */
const OF_SHARES = ['%', '1'];
const OF_SLOPES = ['in/ft', 'mm/m'];

/** Every unit that a number of this kind is read in, best known first: what is offered and printed is what is read. */
export function unitsOfKind(kind: ValueKind): readonly Unit[] {
  switch (kind.form) {
    case 'quantity':
    case 'span':
      return unitsRead(kind.dimension);
    case 'point':
      return unitsRead(kind.of);
    case 'ratio':
      return kind.slope ? named(OF_SLOPES) : [];
    case 'bolts':
    case 'pilot':
      return unitsRead('length');
    case 'layout':
      return unitsRead('angle');
    default:
      return [];
  }
}

/** Every unit that a number of this dimension is read in. */
export function unitsRead(dimension: Dimension): readonly Unit[] {
  if (dimension === 'ratio') return named(OF_SHARES);
  return dimension === 'number' ? named(['1']) : unitsOf(dimension);
}

function named(symbols: readonly string[]): Unit[] {
  return symbols.flatMap(symbol => findUnit(symbol) ?? []);
}
