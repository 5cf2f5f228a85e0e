import type { Verdict } from '@tailshaft/drivetrain';
import { ruleWords } from '@tailshaft/drivetrain';
import type { JudgedVessel } from '@tailshaft/language';
import { listed, percent } from '@tailshaft/mechanics';
import type { Io } from '../terminal/io.js';
import { wrapped } from '../terminal/layout.js';
import { visible } from '../terminal/visible.js';

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
    const margins = named(sorted);
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

/** Each figure once, under a name that no other has: what cannot be told apart by name stands together, the least first. */
function named(sorted: readonly Verdict[]): string[] {
  const byName = new Map<string, Set<string>>();
  for (const one of sorted) {
    const name = nameIn(sorted, one);
    // What is known of the figure is told, and that nothing rests on it.
    const figure = `${percent(one.margin!)}${one.outcome === 'cannot tell' ? ' (cannot tell)' : ''}`;
    byName.set(name, (byName.get(name) ?? new Set()).add(figure));
  }
  return [...byName].map(([name, figures]) => {
    return `${name} ${listed([...figures])}`;
  });
}

/** What has the margin: a rule that judges several things of a line says which, one that judges one thing in several ways how. */
function nameIn(all: readonly Verdict[], verdict: Verdict): string {
  const alike = all.filter(one => one.rule === verdict.rule);
  const name = ruleWords(verdict.rule);
  if (alike.length === 1) return name;
  const same = alike.filter(one => one.subject === verdict.subject);
  const of = same.length === alike.length ? '' : ` of ${thingOf(verdict)}`;
  const labels = new Set(same.map(one => one.demand?.label));
  return same.length > 1 && labels.size === same.length && verdict.demand
    ? `${name}${of} (${verdict.demand.label})`
    : `${name}${of}`;
}

/** `housing aft`, of `proposed.Port.shaft.housing-aft`. */
function thingOf({ subject }: Verdict): string {
  return subject.split('.').at(-1)!.replaceAll('-', ' ');
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
      ...(one.subjects.length > 0 ? [listed(one.subjects)] : []),
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
