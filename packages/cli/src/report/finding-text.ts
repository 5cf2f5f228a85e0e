import type { Verdict } from '@tailshaft/drivetrain';
import type { Finding, Place } from '@tailshaft/language';
import type { Specs } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';
import { wrapped } from '../terminal/layout.js';
import { visible } from '../terminal/visible.js';
import { excerpt } from './excerpt.js';
import { severityOf } from './severity.js';
import type { TriedWays } from './tried-ways.js';

/** A finding for a person: where, how grave, the line itself, what is wrong, why, and the ways out. */
export function findingText(io: Io, specs: Specs, finding: Finding, all = false, tried?: TriedWays): string {
  const { paint, width } = io;
  const most = all ? Number.POSITIVE_INFINITY : MOST;
  // A fact of a catalogue entry is told at the entry, whatever uses it.
  const spot = (finding.entryPlace && specs.spot(finding.entryPlace)) ?? specs.spot(finding.place);
  const severity = severityOf(finding);
  const tint = severity === 'error' ? paint.error : severity === 'warning' ? paint.warning : paint.open;
  const at = spot ? `${spot.shown}:${spot.line}:${spot.column}` : '';
  const lines = [`${tint(severity)}  ${finding.code}  ${paint.quiet(at)}`];
  if (spot) {
    const { number, line, marks } = excerpt(spot);
    lines.push(`${paint.quiet(`${number.padStart(6)} |`)} ${line}`);
    lines.push(`${paint.quiet(`${''.padStart(6)} |`)} ${tint(marks)}`);
  }
  lines.push(wrapped(visible(finding.message), width, '  '));
  const criterion = finding.verdict?.criterion;
  const byDefault = finding.verdict?.criterionChosenBy === 'default' ? ' (default)' : '';
  if (criterion && finding.verdict?.margin !== undefined) {
    lines.push(wrapped(`judged by: ${visible(criterion)}${byDefault}`, width, '    ', '  '));
  }
  for (const related of finding.related.slice(0, most)) lines.push(relatedText(io, specs, related));
  if (finding.related.length > most)
    lines.push(`       and ${finding.related.length - MOST} more: --all lists them`);
  // As the editor offers them: tried, what costs nothing else first. Without that, what rule and text know, and that it is not tried.
  const isTried = tried !== undefined && !tried.triesEnded;
  const ways = isTried ? tried.waysOutTried.map(one => one.title) : waysOut(finding);
  const lead = `  ${paint.good(isTried || !finding.verdict ? 'way out:' : 'way out, not tried:')} `;
  for (const way of ways.slice(0, most)) lines.push(wrapped(visible(way), width, '           ', lead));
  if (ways.length > most) lines.push(`           and ${ways.length - MOST} more, offered in the editor`);
  return lines.join('\n');
}

/** A failure that somebody accepted: it is not hidden, and it is not repeated as a finding. */
export function acceptedText(io: Io, specs: Specs, verdict: Verdict, vessel: string): string {
  const said = `${vessel}, ${verdict.message}`;
  return shortText(io, specs, io.paint.warning('accepted'), verdict.rule, verdict.place as Place, said);
}

/** What fails of the vessel as it was found: no fault of any proposal, and what a comparison starts from. */
export function asFoundText(io: Io, specs: Specs, finding: Finding): string {
  return shortText(io, specs, io.paint.open('as found'), finding.code, finding.place, finding.message);
}

/** What the baseline knows already, and nobody has put right. */
export function knownText(io: Io, specs: Specs, finding: Finding): string {
  const head = `known ${severityOf(finding)}`;
  return shortText(io, specs, io.paint.warning(head), finding.code, finding.place, finding.message);
}

function shortText(io: Io, specs: Specs, head: string, code: string, place: Place, message: string): string {
  const spot = specs.spot(place);
  const at = spot ? `${spot.shown}:${spot.line}:${spot.column}` : '';
  return `${head}  ${code}  ${io.paint.quiet(at)}\n${wrapped(visible(message), io.width, '  ')}`;
}

/** More of either would hide the next finding. */
const MOST = 5;

/** What stands elsewhere and made the finding so. */
function relatedText(io: Io, specs: Specs, related: { place: Place; message: string }): string {
  const spot = specs.spot(related.place);
  const at = spot ? ` (${spot.shown}:${spot.line}:${spot.column})` : '';
  return wrapped(`${visible(related.message)}${at}`, io.width, '       ', `  ${io.paint.quiet('see:')} `);
}

function waysOut(finding: Finding): string[] {
  const routes = finding.verdict?.routes().filter(one => !one.stub) ?? [];
  const ordered = [...routes.filter(one => one.preferred), ...routes.filter(one => !one.preferred)];
  return [...ordered.map(one => one.title), ...(finding.problem?.choices ?? []).map(one => one.title)];
}
