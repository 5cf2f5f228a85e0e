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
export class CsvForm implements Form<readonly string[]> {
  private readonly rows: string[] = [csvRow(COLUMNS)];

  pieceOf({ spec }: Judged): readonly string[] {
    const row = (name: string, one: Verdict) => csvRow([spec.shown, name, ...cells(one)]);
    return [
      ...spec.check.vessels.flatMap(({ vessel, verdicts }) => verdicts.map(one => row(vessel.name, one))),
      ...spec.check.entries.flatMap(({ reading, verdicts }) => verdicts.map(one => row(reading.name, one))),
    ];
  }

  take(rows: readonly string[]): void {
    for (const row of rows) this.rows.push(row);
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
