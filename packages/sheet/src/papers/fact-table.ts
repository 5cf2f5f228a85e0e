import type { Part } from '@tailshaft/drivetrain';
import { capital } from '@tailshaft/mechanics';
import { type Vocabulary, wordsOf } from '@tailshaft/vocabulary';
import { type Block, table } from '../document/blocks.js';
import { quiet, type Text, warning } from '../document/text.js';
import type { FactRow } from '../sections/facts.js';
import { partRows } from '../sections/parts.js';

/** Facts of a part in both unit systems, with the evidence that each rests on. */
export function factTable(caption: string, rows: readonly (readonly Text[])[]): Block {
  return table(
    caption,
    [{ title: 'Fact' }, { title: 'As written', wide: true }, { title: 'Converted' }, { title: 'Evidence' }],
    rows,
  );
}

export function factCells(row: FactRow, prefix = ''): Text[] {
  return [
    prefix ? `${prefix}${row.label}` : capital(row.label),
    row.open ? warning('open question') : row.written,
    row.other ?? '',
    row.evidence
      ? [row.evidence.kind, row.evidence.dated, row.evidence.note].filter(Boolean).join(' ')
      : quiet('—'),
  ];
}

/** What must be settled before anybody works by the paper: declared, or asked for in so many words. */
export function wantedRows(
  part: Part,
  fields: readonly string[],
  vocabulary: Vocabulary | undefined,
  ask: string,
): Text[][] {
  const rows = partRows(part);
  const wanted = fields.map(field => wordsOf(vocabulary, field));
  return wanted.map(words => {
    const found = rows.find(row => row.label === words);
    return found ? factCells(found) : [capital(words), warning(ask), '', quiet('—')];
  });
}
