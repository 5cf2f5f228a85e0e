import type { Verdict } from '@tailshaft/drivetrain';
import { formatValue } from '@tailshaft/mechanics';
import type { Judged } from '../report/judged.js';
import { csvRow } from './csv-row.js';
import type { Form } from './form.js';

const COLUMNS = [
  ...['file', 'of', 'subject', 'check', 'verdict', 'severity', 'as found', 'margin (%)'],
  ...['capacity', 'demand', 'criterion', 'criterion chosen by', 'message'],
];

/** Every verdict as a row of a table, with its margin: cells as RFC 4180 has them. What has no margin leaves it empty. */
export class CsvForm implements Form {
  private readonly rows: string[] = [csvRow(COLUMNS)];

  add({ spec }: Judged): void {
    for (const { vessel, verdicts } of spec.check.vessels)
      for (const one of verdicts) this.rows.push(csvRow([spec.shown, vessel.name, ...cells(one)]));
    for (const { reading, verdicts } of spec.check.entries)
      for (const one of verdicts) this.rows.push(csvRow([spec.shown, reading.name, ...cells(one)]));
  }

  text(): string {
    return this.rows.join('\n');
  }
}

function cells(verdict: Verdict): string[] {
  const { margin, capacity, demand } = verdict;
  return [
    verdict.subject,
    verdict.rule,
    verdict.outcome,
    verdict.severity,
    verdict.asFound ? 'yes' : '',
    margin === undefined ? '' : (margin * 100).toFixed(1),
    capacity ? formatValue(capacity) : '',
    demand ? formatValue(demand) : '',
    verdict.criterion ?? '',
    verdict.criterionChosenBy ?? '',
    verdict.message,
  ];
}
