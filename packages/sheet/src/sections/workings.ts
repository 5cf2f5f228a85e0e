import { count } from '@tailshaft/mechanics';
import { type Block, type Details, list, paragraph, section } from '../document/blocks.js';
import type { Text } from '../document/text.js';
import type { Sheet } from '../sheet.js';
import type { BookEntry } from './workings-book.js';

/** Every number that the sheet computed, with its formula, its inputs back to the text, its source and its range. */
export function workingsSection(sheet: Sheet): Block {
  const groups = new Map<string, BookEntry[]>();
  for (const entry of sheet.workings.entries) {
    const group = groups.get(entry.under);
    if (group) group.push(entry);
    else groups.set(entry.under, [entry]);
  }
  const details = [...groups].map(
    ([under, entries]): Details => ({
      block: 'details',
      summary: `${under}: ${count(entries.length, 'working')}`,
      blocks: entries.flatMap(entry => entryBlocks(sheet, entry)),
    }),
  );
  return section(
    'workings',
    'Workings',
    [
      paragraph(
        details.length > 0
          ? 'Computed in SI, rounded only for print. Each number marked W in this sheet is listed here with its formula; a computed letter refers to its own entry, any other to the line that declares it or to the assumption made.'
          : 'Nothing was computed for this paper.',
      ),
      ...details,
    ],
    { newPage: details.length > 0 },
  );
}

function entryBlocks(sheet: Sheet, entry: BookEntry): Block[] {
  const title: Text = sheet.workings.title(entry);
  return [paragraph(title), list(sheet.workings.lines(entry))];
}
