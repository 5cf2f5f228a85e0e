import type { Verdict } from '@tailshaft/drivetrain';
import type { JudgedVessel } from '@tailshaft/language';
import type { Io } from '../terminal/io.js';
import { wrapped } from '../terminal/layout.js';
import { visible } from '../terminal/visible.js';
import { percentWords, shortName } from './tally.js';

/** The margins of one line or arrangement of a vessel, the least first. */
export interface VesselMargins {
  readonly vessel: string;
  readonly arrangement: string;
  readonly subjects: string[];
  readonly margins: readonly string[];
  readonly least: number;
}

/** Margins told for each line, and lines told, without `--all`. */
const MOST = 6;
const MOST_LINES = 12;

/** Lines whose margins are the same, as mirrored ones have them, share a row. */
export function vesselMargins({ vessel, verdicts }: JudgedVessel): VesselMargins[] {
  const rows: VesselMargins[] = [];
  const add = (arrangement: string, subject: string, own: readonly Verdict[]) => {
    const sorted = own
      .filter(one => one.margin !== undefined && !one.asFound)
      .sort((a, b) => a.margin! - b.margin!);
    if (sorted.length === 0) return;
    const margins = sorted.map(one => `${shortName(one.rule)} ${percentWords(one.margin!)}`);
    const same = rows.find(
      one => one.arrangement === arrangement && subject !== '' && one.margins.join() === margins.join(),
    );
    if (same) same.subjects.push(subject);
    else
      rows.push({
        vessel: vessel.name,
        arrangement,
        subjects: subject === '' ? [] : [subject],
        margins,
        least: sorted[0]!.margin!,
      });
  };
  for (const { name, path, lines } of vessel.arrangements) {
    const inLine = (verdict: Verdict) =>
      lines.some(line => verdict.subject === line.path || verdict.subject.startsWith(`${line.path}.`));
    for (const line of lines)
      add(
        name,
        line.name,
        verdicts.filter(one => one.subject === line.path || one.subject.startsWith(`${line.path}.`)),
      );
    add(
      name,
      '',
      verdicts.filter(one => (one.subject === path || one.subject.startsWith(`${path}.`)) && !inLine(one)),
    );
  }
  return rows;
}

export function marginLines(io: Io, rows: readonly VesselMargins[], all: boolean): string {
  if (rows.length === 0) return '';
  const vessels = new Set(rows.map(one => one.vessel)).size;
  const ordered = [...rows].sort((a, b) => a.least - b.least);
  const shown = all ? ordered : ordered.slice(0, MOST_LINES);
  const lines = shown.map(one => {
    const names = [
      ...(vessels > 1 ? [one.vessel] : []),
      one.arrangement,
      ...(one.subjects.length > 0 ? [one.subjects.join(' and ')] : []),
    ];
    const told = all ? one.margins : one.margins.slice(0, MOST);
    const more = one.margins.length - told.length;
    const words = `${told.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
    return wrapped(words, io.width, '      ', `  ${visible(names.join(', '))}: `);
  });
  const more = ordered.length - shown.length;
  if (more > 0) lines.push(`  and ${more} more: see --all`);
  return [io.paint.strong('Margins, the least first'), ...lines].join('\n');
}
