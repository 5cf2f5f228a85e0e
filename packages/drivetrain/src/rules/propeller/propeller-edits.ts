import type { NewValue } from '@tailshaft/vocabulary';
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
