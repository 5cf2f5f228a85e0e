import type { TextEdit } from '../edit/text-edit.js';
import type { DocumentReading } from '../reading/document.js';
import type { Place } from '../reading/place.js';
import type { VesselReading } from '../reading/vessel.js';

/**
 * Arrangements of a vessel that some edits of its file leave as they are, with all that they rest on: the facts of the vessel,
 * the entries, and the arrangements that they revise. None where that is not certain.
 */
export function leftAlone(
  vessel: VesselReading,
  { entries, vessels, uri }: DocumentReading,
  edits: readonly TextEdit[],
): ReadonlySet<string> {
  const named = vessel.arrangements.map(one => one.name);
  const certain =
    new Set(named).size === named.length && vessels.filter(one => one.name === vessel.name).length === 1;
  if (!certain) return new Set();
  const touched = new Set<string>();
  for (const edit of edits) {
    if (edit.uri !== uri) return new Set();
    const inside = vessel.arrangements.find(one => holds(one.whole, edit));
    if (inside) touched.add(inside.name);
    // What is written between statements is a new one.
    else if ([vessel, ...entries].some(one => meets(one.whole, edit))) return new Set();
  }
  const same = new Set<string>();
  for (const one of vessel.arrangements) {
    const { revises, name } = one;
    if (!touched.has(name) && (!revises || same.has(revises.name))) same.add(name);
  }
  return same;
}

function holds({ start, end }: Place, edit: TextEdit): boolean {
  return edit.start > start && edit.end < end;
}

function meets({ start, end }: Place, edit: TextEdit): boolean {
  return edit.start < end && edit.end > start;
}
