import type { Markup } from '../document/markup.js';
import type { SheetInput } from '../input.js';
import { lastArrangements } from '../papers/proposals.js';
import { Sheet } from '../sheet.js';
import { linesFromAbove } from './lines-from-above.js';
import { linesFromAft } from './lines-from-aft.js';

/** The lines of what is to be built, seen from aft and from above, for files of drawing programs. */
export function schematicOf(input: SheetInput): readonly Markup[] {
  const { placeKey: _, ...still } = input;
  const sheet = new Sheet(still);
  return lastArrangements(input.vessel).flatMap(one => [
    linesFromAft(sheet, one),
    linesFromAbove(sheet, one),
  ]);
}
