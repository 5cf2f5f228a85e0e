import type { Verdict } from '@tailshaft/drivetrain';
import {
  formatValue,
  signedPercent,
  type Value,
  valuesBehind,
  workingLine,
  workingMarkdown,
} from '@tailshaft/mechanics';
import type { Place } from '../../reading/place.js';
import { derivedValues, type JudgedLine } from '../lines.js';
import { inside } from '../places.js';
import { bullets, paragraphs, plain, shortened } from './markdown.js';

/** A computed quantity that rests on a declared one, and whose lines it is of. */
interface Driven {
  readonly value: Value;
  readonly lines: string[];
}

const WORKING_LINES = 16;

/** What a declared value drives: the derived quantities and margins, and the working of the first. */
export function drivenBy(place: Place, lines: readonly JudgedLine[]): string | undefined {
  const driven = new Map<string, Driven>();
  const margins: string[] = [];
  const seen = new Set<string>();
  for (const line of lines) {
    for (const value of derivedValues(line)) if (restsOn(value, place)) add(driven, value, line);
    for (const verdict of line.verdicts) {
      const values = [verdict.capacity, verdict.demand, ...verdict.workings].filter(one => one !== undefined);
      if (!values.some(value => restsOn(value, place))) continue;
      for (const value of values) if (value.working && restsOn(value, place)) add(driven, value, line);
      const said = marginLine(verdict, line, place);
      if (said && !seen.has(said)) margins.push(said);
      seen.add(said ?? '');
    }
  }
  const all = [...driven.values()];
  if (all.length + margins.length === 0) return undefined;
  const items = all.map(
    one => `${plain(one.value.label)}: **${formatValue(one.value)}** (${one.lines.map(plain).join(', ')})`,
  );
  return paragraphs(
    '**It drives**',
    bullets([...items.slice(0, 6), ...margins.slice(0, 4)]),
    all[0] && `**${plain(all[0].value.label)}**`,
    all[0] && shortened(workingMarkdown(all[0].value), WORKING_LINES),
    all.length > 1 && bullets(all.slice(1, 5).map(one => `\`${workingLine(one.value).replace(/`/g, '')}\``)),
  );
}

/** Whether a value was computed from what is declared at this place. */
export function restsOn(value: Value, place: Place): boolean {
  if (!value.working && !value.assumed) return false;
  for (const one of valuesBehind(value)) if (one.origin && inside(one.origin, place)) return true;
  return false;
}

function marginLine(verdict: Verdict, { line }: JudgedLine, place: Place): string | undefined {
  const here = verdict.needed?.find(one => inside(one.at, place));
  if (verdict.margin === undefined && !here) return undefined;
  const margin = verdict.margin === undefined ? '' : `, margin **${signedPercent(verdict.margin)}**`;
  const needed = here ? `; it needs ${here.bound} **${plain(here.written)}** here` : '';
  return `${verdict.rule} of ${plain(line.path)}: ${verdict.outcome}${margin}${needed}`;
}

function add(driven: Map<string, Driven>, value: Value, { line }: JudgedLine): void {
  const key = `${value.label} ${formatValue(value)}`;
  const had = driven.get(key);
  if (!had) driven.set(key, { value, lines: [line.path] });
  else if (!had.lines.includes(line.path)) had.lines.push(line.path);
}
