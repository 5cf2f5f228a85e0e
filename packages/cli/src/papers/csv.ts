import type { Verdict } from '@tailshaft/drivetrain';
import { formatValue } from '@tailshaft/mechanics';
import type { SheetInput } from '@tailshaft/sheet';
import { partsList } from '@tailshaft/sheet';
import { csvRow } from '../forms/csv-row.js';

/** Every declared fact of every part, one a row, in both unit systems. */
export function partsCsv(input: SheetInput): string {
  const head = [
    'arrangement',
    'line',
    'part',
    'name',
    'title',
    'work',
    'fact',
    'as written',
    'converted',
    'evidence',
    'source',
    'where',
  ];
  return table([head, ...partsList(input)]);
}

/** Every verdict that has a margin, the least first. */
export function marginsCsv({ verdicts, placeText }: SheetInput): string {
  const head = [
    'subject',
    'check',
    'verdict',
    'as found',
    'margin (%)',
    'capacity',
    'demand',
    'criterion',
    'criterion chosen by',
    'message',
    'where',
  ];
  const counted = verdicts
    .filter((one): one is Verdict & { margin: number } => one.margin !== undefined)
    .sort((one, other) => one.margin - other.margin);
  return table([
    head,
    ...counted.map(one => [
      one.subject,
      one.rule,
      one.outcome,
      one.asFound ? 'yes' : '',
      (one.margin * 100).toFixed(1),
      one.capacity ? formatValue(one.capacity) : '',
      one.demand ? formatValue(one.demand) : '',
      one.criterion ?? '',
      one.criterionChosenBy ?? '',
      one.message,
      placeText?.(one.place) ?? '',
    ]),
  ]);
}

function table(rows: readonly (readonly string[])[]): string {
  return `${rows.map(csvRow).join('\n')}\n`;
}
