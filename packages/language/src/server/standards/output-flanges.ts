import { type OutputFlange, outputFlanges } from '@tailshaft/mechanics';
import { paragraphs } from '../hover/markdown.js';
import { inches, millimetres } from './figures.js';
import { rowsMarkdown, type StandardTable, sizeMarkdown } from './table.js';

/** Output flanges of inboard reduction gears, inch series, as far as they are known. */
export const OUTPUT_FLANGES: StandardTable<OutputFlange> = {
  title: 'output flange of',
  nameOf: row => `${row.size} in`,
  rows: outputFlanges,
  columns: [
    { head: 'outside diameter', cell: row => inches(row.outsideDiameter) },
    { head: 'bolt circle', cell: row => some(row.boltCircle, inches) },
    { head: 'bolts', cell: row => (row.bolts && row.bolt ? `${row.bolts} x ${row.bolt} in` : undefined) },
    { head: 'bolt hole', cell: row => some(row.boltHole, millimetres) },
    { head: 'pilot', cell: row => some(row.pilot, inches) },
  ],
  sourcesOf: row => [{ source: row.source }],
  noteOf: row => row.note,
};

/** What still passes for a named size, m: drawings round to the millimetre. */
const SAME = 1e-3;

/** The named flange of an outside diameter in metres, or all that are named when it is none of them. */
export function outputFlangeMarkdown(outsideDiameter: number | undefined): string {
  const row =
    outsideDiameter === undefined
      ? undefined
      : outputFlanges.find(one => Math.abs(one.outsideDiameter - outsideDiameter) <= SAME);
  if (row) return sizeMarkdown(OUTPUT_FLANGES, row, outputFlanges.length);
  const why =
    outsideDiameter === undefined
      ? 'Named sizes of the inch series, for comparison only: bolt together what the two drawings say.'
      : `${millimetres(outsideDiameter)} is not a named size of the inch series; many makers use their own. The named sizes are:`;
  return paragraphs(why, rowsMarkdown(OUTPUT_FLANGES, outputFlanges), 'Source: SAE J756 (from memory).');
}

function some(value: number | undefined, say: (value: number) => string): string | undefined {
  return value === undefined ? undefined : say(value);
}
