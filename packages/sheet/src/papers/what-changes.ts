import {
  type Arrangement,
  compareArrangements,
  type PartChange,
  type VesselComparison,
} from '@tailshaft/drivetrain';
import { capital, listed } from '@tailshaft/mechanics';
import { type Block, paragraph, table } from '../document/blocks.js';
import { quiet, type Text } from '../document/text.js';
import type { Sheet } from '../sheet.js';
import { foldSides } from './sides.js';

/** The arrangement as found and a proposal, by consequence. */
export function comparedWith(sheet: Sheet, before: Arrangement, after: Arrangement): VesselComparison {
  const { vessel, verdicts, analysisOf } = sheet.input;
  return compareArrangements({ vessel, verdicts, analysisOf }, before, after);
}

/** What becomes of each part, sides that fare alike in one row. */
export function changesTable(sheet: Sheet, before: Arrangement, after: Arrangement): Block {
  const comparison = comparedWith(sheet, before, after);
  const changed = comparison.changes.filter((one): one is PartChange => one.kind === 'part');
  const lines: Text[][] = [
    ...comparison.addedLines.map(one => [one, 'line', 'added', quiet('—'), quiet('new line')]),
    ...comparison.removedLines.map(one => [one, 'line', 'removed', quiet('as found'), quiet('—')]),
  ];
  const rows = foldSides([...changed, ...comparison.kept], sheet.vessel, one => ({
    subject: one.subject,
    words: `${one.role} ${one.fate} ${one.before ?? ''} ${one.after ?? ''} ${one.facts.map(fact => `${fact.what} ${fact.after}`).join()}`,
  })).map(({ subjects, first }): Text[] => [
    listed(subjects),
    capital(first.role),
    first.fate,
    first.before ?? quiet('—'),
    first.after ?? quiet('—'),
  ]);
  if (rows.length + lines.length === 0) return paragraph('No part is declared.');
  return table(
    'What changes, from the arrangement as found to the one proposed',
    [
      { title: 'Line' },
      { title: 'Part' },
      { title: 'What is done' },
      { title: 'Before', wide: true },
      { title: 'After', wide: true },
    ],
    [...lines, ...rows],
  );
}
