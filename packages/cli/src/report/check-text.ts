import { silentTopics, type Verdict } from '@tailshaft/drivetrain';
import type { Finding, JudgedVessel } from '@tailshaft/language';
import { formatValue } from '@tailshaft/mechanics';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';
import { type Cell, count, table, wrapped } from '../terminal/layout.js';
import { CAUTION } from './cautions.js';
import { visible } from './excerpt.js';
import { findingText } from './finding-text.js';
import { severityOf } from './severity.js';
import { countOutcome, percentWords, shortName, type Tally, verdictsOf } from './tally.js';

/** Everything to say of one file: what was not checked, then the findings, then how its lines stand. */
export function specText(io: Io, specs: Specs, spec: CheckedSpec, withVerdicts: boolean): string {
  const open = spec.findings.filter(one => severityOf(one) === 'information');
  const rest = spec.findings.filter(one => severityOf(one) !== 'information' && !one.verdict?.asFound);
  const found = spec.findings.filter(one => one.verdict?.asFound);
  const blocks: string[] = [];
  const waiting = countOutcome(
    verdictsOf(spec).filter(one => !one.asFound),
    'cannot tell',
  );
  if (waiting > 0) blocks.push(notChecked(io, specs, open, waiting));
  for (const vessel of spec.check.vessels) blocks.push(...notLookedAt(io, vessel));
  for (const finding of rest) blocks.push(findingText(io, specs, finding));
  if (found.length > 0) blocks.push(asFound(io, specs, found));
  for (const vessel of spec.check.vessels) blocks.push(vesselText(io, vessel));
  if (withVerdicts) blocks.push(verdictTable(io, specs, spec));
  if (blocks.length === 0) return '';
  return `${io.paint.strong(spec.shown)}\n\n${blocks.join('\n\n')}\n`;
}

/** The loudest part: what this report does not say, and what would have to be written for it to. */
function notChecked(io: Io, specs: Specs, open: readonly Finding[], waiting: number): string {
  const head = `NOT CHECKED: ${count(waiting, 'check waits', 'checks wait')} for data`;
  const lines = [io.paint.open(head)];
  for (const finding of open) {
    const { verdict } = finding;
    const spot = specs.spot(finding.place);
    const at = spot ? io.paint.quiet(` (${spot.shown}:${spot.line}:${spot.column})`) : '';
    lines.push(`  ${finding.code}${verdict ? ` on ${verdict.subject}` : ''}${at}`);
    const missing = verdict?.missing ?? [];
    if (missing.length === 0) lines.push(wrapped(visible(finding.message), io.width, '      '));
    for (const one of missing) {
      const host = specs.spot((one.at ?? one.host) as Finding['place']);
      const where = host ? ` at ${host.shown}:${host.line}` : '';
      const what = one.at ? 'what stands there is not enough,' : `write: ${one.property} ...`;
      lines.push(wrapped(`${visible(one.what)} (${what}${where})`, io.width, '        ', '      needs '));
    }
  }
  const behind = waiting - open.length;
  if (behind > 0)
    lines.push(
      `  ${count(behind, 'more waits', 'more wait')} until the text can be read, or for the same data`,
    );
  return lines.join('\n');
}

/** What fails of the vessel as it was found: no fault of any proposal, and what a comparison starts from. */
function asFound(io: Io, specs: Specs, found: readonly Finding[]): string {
  const lines = [
    io.paint.strong(`AS FOUND: ${count(found.length, 'check fails', 'checks fail')} before any change`),
  ];
  for (const finding of found) {
    const spot = specs.spot(finding.place);
    const at = spot ? io.paint.quiet(` (${spot.shown}:${spot.line}:${spot.column})`) : '';
    lines.push(`  ${finding.code} on ${finding.verdict!.subject}${at}`);
    lines.push(wrapped(visible(finding.message), io.width, '      '));
  }
  return lines.join('\n');
}

/** Rules that say nothing, because the spec says nothing of what they judge. Silence is no consent. */
function notLookedAt(io: Io, { vessel, verdicts }: JudgedVessel): string[] {
  const topics = silentTopics(vessel, verdicts);
  if (topics.length === 0) return [];
  const words = topics.map(one => one.of).join('; ');
  const head = io.paint.open(`NOT LOOKED AT in ${visible(vessel.name)}`);
  return [wrapped(`because nothing is declared of it: ${words}.`, io.width, '  ', `${head} `)];
}

/** How each line of a vessel stands: counts, and the margins with the smallest first. */
function vesselText(io: Io, { vessel, verdicts }: JudgedVessel): string {
  const rows: Cell[][] = [];
  const margins: (readonly Verdict[])[] = [];
  const subjects = [
    ...vessel.arrangements.flatMap(one => [...one.lines.map(line => line.path), one.path]),
    vessel.name,
  ];
  const claimed = new Set<Verdict>();
  for (const subject of subjects) {
    const own = verdicts.filter(
      one => !claimed.has(one) && (one.subject === subject || one.subject.startsWith(`${subject}.`)),
    );
    for (const one of own) claimed.add(one);
    if (own.length > 0) {
      rows.push(countCells(io, subject, own));
      margins.push(own.filter(one => one.margin !== undefined).sort((a, b) => a.margin! - b.margin!));
    }
  }
  const others = verdicts.filter(one => !claimed.has(one));
  if (others.length > 0) {
    rows.push(countCells(io, 'elsewhere', others));
    margins.push([]);
  }
  const lines = [nameWithTitle(io, vessel.name, vessel.title)];
  const laid = rows.length > 0 ? table(rows, '  ').split('\n') : [];
  laid.forEach((row, index) => {
    lines.push(row);
    const least = margins[index]!;
    if (least.length > 0) {
      const told = least.map(one => `${shortName(one.rule)} ${percentWords(one.margin!)}`);
      lines.push(wrapped(told.join(', '), io.width, '      ', '    margins: '));
    }
  });
  return lines.join('\n');
}

/** The name, and the title without the name that it usually begins with. */
export function nameWithTitle(io: Io, name: string, title: string | undefined): string {
  const rest = title?.startsWith(name) ? title.slice(name.length).replace(/^\W+/, '') : title;
  return rest ? `${io.paint.strong(name)}  ${io.paint.quiet(visible(rest))}` : io.paint.strong(name);
}

function countCells(io: Io, subject: string, verdicts: readonly Verdict[]): Cell[] {
  const fails = countOutcome(verdicts, 'fails');
  const open = countOutcome(verdicts, 'cannot tell');
  const accepted = countOutcome(verdicts, 'accepted');
  const holds = countOutcome(verdicts, 'holds');
  return [
    { text: subject },
    { text: fails ? `${fails} ${fails === 1 ? 'fails' : 'fail'}` : '', paint: io.paint.error },
    { text: open ? `${open} not checked` : '', paint: io.paint.open },
    { text: accepted ? `${accepted} accepted` : '', paint: io.paint.warning },
    { text: `${holds} ${holds === 1 ? 'holds' : 'hold'}`, ...(holds ? { paint: io.paint.good } : {}) },
  ];
}

const OUTCOME_ORDER = ['fails', 'cannot tell', 'accepted', 'holds', 'does not apply'];

/** Every verdict, by subject; the ones to look at first. */
function verdictTable(io: Io, specs: Specs, spec: CheckedSpec): string {
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
        { text: verdict.margin === undefined ? '' : percentWords(verdict.margin), right: true },
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

/** The last words: numbers, the smallest margin, and what this is not. */
export function summaryText(io: Io, tally: Tally): string {
  const { paint } = io;
  const found = [
    tally.errors ? paint.error(count(tally.errors, 'error')) : 'no error',
    tally.warnings ? paint.warning(count(tally.warnings, 'warning')) : '',
    tally.notes ? count(tally.notes, 'note') : '',
  ].filter(Boolean);
  const least = tally.smallest
    ? `, the least by ${percentWords(tally.smallest.margin!)} (${shortName(tally.smallest.rule)} of ${tally.smallest.subject})`
    : '';
  const lines = [
    `${count(tally.files, 'file')}, ${count(tally.vessels, 'vessel')}: ${found.join(', ')}; ${tally.holds} ${tally.holds === 1 ? 'check holds' : 'checks hold'}${least}.`,
  ];
  if (tally.notChecked > 0) {
    lines.push(paint.open(`${tally.notChecked} NOT CHECKED for want of data: see the top of each file.`));
  }
  if (tally.asFound > 0)
    lines.push(`${count(tally.asFound, 'check fails', 'checks fail')} as found, before any change.`);
  if (tally.accepted > 0)
    lines.push(`${count(tally.accepted, 'failure')} accepted, by the persons named in the spec.`);
  lines.push('', paint.quiet(wrapped(CAUTION, io.width)));
  return `${lines.join('\n')}\n`;
}
