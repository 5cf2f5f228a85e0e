import type { Finding } from '@tailshaft/language';
import { formatValue, percent } from '@tailshaft/mechanics';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';
import { type Cell, table } from '../terminal/layout.js';
import { verdictsOf } from './tally.js';

const OUTCOME_ORDER = ['fails', 'cannot tell', 'accepted', 'holds', 'does not apply'];

/** Every verdict, by subject; the ones to look at first. */
export function verdictTable(io: Io, specs: Specs, spec: CheckedSpec): string {
  const tints: Record<string, (text: string) => string> = {
    fails: io.paint.error,
    'cannot tell': io.paint.open,
    accepted: io.paint.warning,
    holds: io.paint.good,
    'does not apply': io.paint.quiet,
  };
  const all = verdictsOf(spec);
  const subjects = inOrder(spec, [...new Set(all.map(one => one.subject))]);
  const rows: Cell[][] = [
    ['outcome', 'check', 'margin', 'capacity', 'demand', 'at'].map(text => ({ text, paint: io.paint.quiet })),
  ];
  for (const subject of subjects) {
    rows.push([{ text: subject, paint: io.paint.strong }]);
    const own = all
      .filter(one => one.subject === subject)
      .sort((a, b) => OUTCOME_ORDER.indexOf(a.outcome) - OUTCOME_ORDER.indexOf(b.outcome));
    for (const verdict of own) {
      const spot = specs.spot(verdict.place as Finding['place']);
      rows.push([
        { text: verdict.outcome, paint: tints[verdict.outcome]! },
        { text: verdict.rule },
        { text: verdict.margin === undefined ? '' : percent(verdict.margin), right: true },
        { text: verdict.capacity ? formatValue(verdict.capacity) : '', right: true },
        { text: verdict.demand ? formatValue(verdict.demand) : '', right: true },
        { text: spot ? `${spot.shown}:${spot.line}` : '', paint: io.paint.quiet },
      ]);
    }
  }
  // The subject heads its rows and must not widen the first column.
  const heads = new Map(rows.flatMap((row, index) => (row.length === 1 ? [[index, row[0]!] as const] : [])));
  const laid = table(
    rows.map((row, index) => (heads.has(index) ? [{ text: '' }] : row)),
    '  ',
  ).split('\n');
  return laid
    .map((line, index) => {
      const head = heads.get(index);
      return head ? `  ${head.paint!(head.text)}` : line;
    })
    .join('\n');
}

/** Lines as the spec has them, their parts behind them, then arrangements, vessels and entries. */
function inOrder(spec: CheckedSpec, subjects: readonly string[]): string[] {
  const lines = spec.check.vessels.flatMap(({ vessel }) =>
    vessel.arrangements.flatMap(one => one.lines.map(line => line.path)),
  );
  const rank = (subject: string) => {
    const at = lines.findIndex(line => subject === line || subject.startsWith(`${line}.`));
    return at < 0 ? lines.length : at;
  };
  return [...subjects].sort((one, other) => rank(one) - rank(other));
}
