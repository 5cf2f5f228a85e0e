import type { ModelEdit } from '../../judge/route.js';
import { statementOf } from '../../model/part.js';
import type { Propeller } from '../../model/shafting.js';
import { writeInPlace } from '../rotation/edits.js';

/** Writes several facts of the propeller at its place; a retained one becomes a modified one with all of them. */
export function writePropeller(propeller: Propeller, facts: Readonly<Record<string, string>>): ModelEdit[] {
  const entries = Object.entries(facts);
  if (statementOf(propeller) !== 'retained') {
    return entries.map(([property, text]) => writeInPlace(propeller, property, text));
  }
  const words = entries.map(([property, text]) => `${property} ${text}`).join('  ');
  return [{ do: 'replace', at: propeller.origin, text: `modify propeller { ${words} }` }];
}
