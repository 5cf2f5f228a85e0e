import { isInInches, type Value } from '@tailshaft/mechanics';
import { amount, inUnit, type NewValue, numberIn } from '@tailshaft/vocabulary';
import type { ModelEdit } from '../../judge/route.js';
import { statementOf } from '../../model/part.js';
import type { Propeller } from '../../model/shafting.js';
import { modified, writeInPlace } from '../rotation/edits.js';

/** Writes several facts of the propeller at its place; a retained one becomes a modified one with all of them. */
export function writePropeller(propeller: Propeller, facts: Readonly<Record<string, NewValue>>): ModelEdit[] {
  const entries = Object.entries(facts);
  if (statementOf(propeller) !== 'retained') {
    return entries.map(([property, value]) => writeInPlace(propeller, property, value));
  }
  return [
    modified(
      propeller,
      entries.map(([property, value]) => ({ property, value })),
    ),
  ];
}

/** Down to a tenth of the unit's usual fineness, so that it never promises more than there is. */
export function roundedGap(gap: Value<'length'>, model: Value<'length'>): NewValue {
  const [unit, steps] = isInInches(model) ? (['in', 100] as const) : (['mm', 1] as const);
  return amount(inUnit('length', Math.floor(numberIn(gap, unit) * steps) / steps, unit));
}
