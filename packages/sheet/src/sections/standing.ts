import { type Counts, countsOf, type Outcome, silentTopics } from '@tailshaft/drivetrain';
import { count, percent } from '@tailshaft/mechanics';
import { type Block, list, paragraph, type Section, section } from '../document/blocks.js';
import { quiet, separated, strong, type Text, verdict as verdictMark } from '../document/text.js';
import type { SheetFailure } from '../input.js';
import type { Sheet } from '../sheet.js';
import { missingIn } from './not-checked.js';

/** More of them would push what was not checked off the first page. */
const MOST = 4;

/** How the vessel stands, at the head of its sheet: what fails, the worst first, what is accepted, what is open. */
export function standingSection(sheet: Sheet): Section {
  const { input } = sheet;
  const failing = input.failures.filter(one => !one.verdict.asFound);
  const counts = countsIn(sheet);
  const unread = input.problems.length;
  const blocks: (Block | undefined)[] = [
    input.verdicts.length === 0 ? paragraph(strong('No check was made.')) : undefined,
    counts.failed.all > 0 ? told('fails', failedWords(sheet, counts.failed, failing.length)) : undefined,
    failing.length > 0 ? list(failureItems(sheet, failing)) : undefined,
    unread > 0
      ? told('cannot tell', [
          strong(`${count(unread, 'problem')} in the text`),
          ': what depends on it was not judged. ',
          below('not-checked', 'Not checked'),
        ])
      : undefined,
    counts.accepted.all > 0 ? told('accepted', acceptedWords(sheet, counts.accepted)) : undefined,
    counts.unknown.all > 0 ? told('cannot tell', openWords(sheet, counts.unknown)) : undefined,
    counts.held.all > 0 ? told('holds', heldWords(sheet, counts.held)) : undefined,
    notAssessed(sheet),
    counts.asFound.all > 0
      ? paragraph(
          quiet(`${count(counts.asFound.all, 'check fails', 'checks fail')} as found, before any change.`),
        )
      : undefined,
  ];
  const standing: Outcome | undefined =
    counts.failed.all > 0
      ? 'fails'
      : counts.unknown.all + unread > 0
        ? 'cannot tell'
        : counts.held.all > 0 && sheet.vessel.arrangements.length > 0
          ? 'holds'
          : undefined;
  return section('standing', 'Status', blocks, standing ? { standing } : {});
}

interface Counted {
  readonly all: number;
  readonly onEntries: number;
}

/** Counted as everywhere else: the vessel, and the catalogue entries of its file. */
export function countsIn({ input }: Pick<Sheet, 'input'>): Record<keyof Counts, Counted> {
  const entries = new Set(input.entryVerdicts);
  const ofVessel = countsOf(input.verdicts.filter(one => !entries.has(one)));
  const ofEntries = countsOf(input.entryVerdicts);
  const of = (key: keyof Counts): Counted => ({
    all: ofVessel[key] + ofEntries[key],
    onEntries: ofEntries[key],
  });
  return {
    held: of('held'),
    failed: of('failed'),
    unknown: of('unknown'),
    accepted: of('accepted'),
    asFound: of('asFound'),
  };
}

const told = (outcome: Outcome, words: Text): Block => paragraph([verdictMark(outcome), ' ', words]);

const below = (to: string, text: string): Text => ({ as: 'reference', text, to });

/** `3 checks (1 on catalogue entries)`. */
function checks({ all, onEntries }: Counted, one = 'check'): Text {
  return [strong(count(all, one)), onEntries > 0 ? ` (${onEntries} on catalogue entries)` : ''];
}

/** `3 checks for 2 causes, 1 error and 2 warnings:`. */
function failedWords({ input }: Sheet, counted: Counted, causes: number): Text {
  const failed = input.verdicts.filter(one => one.outcome === 'fails' && !one.asFound);
  const kinds = (['error', 'warning', 'note'] as const)
    .map(severity => [severity, failed.filter(one => one.severity === severity).length] as const)
    .filter(([, number]) => number > 0);
  return [
    checks(counted),
    causes > 0 && causes < failed.length ? ` for ${count(causes, 'cause')}` : '',
    failed.length > 1 ? `: ${kinds.map(([severity, number]) => count(number, severity)).join(', ')}` : '',
  ];
}

function failureItems(sheet: Sheet, failing: readonly SheetFailure[]): Text[] {
  const shown = failing.length === MOST + 1 ? failing : failing.slice(0, MOST);
  const more = failing.length - shown.length;
  return [
    ...shown.map(one => failureItem(sheet, one)),
    ...(more > 0 ? [[`and ${more} more: `, below('summary', 'Summary')]] : []),
  ];
}

function failureItem(sheet: Sheet, { verdict, message, others }: SheetFailure): Text {
  return separated(
    ' ',
    strong(`${verdict.severity}:`),
    message,
    others > 0 ? `(${count(others, 'more check fails', 'more checks fail')} for it)` : undefined,
    quiet(verdict.rule),
    sheet.place(verdict.place),
  );
}

/** Who accepted what: the rules by name; what each of them says stands in the summary. */
function acceptedWords({ input }: Sheet, counted: Counted): Text {
  const accepted = input.verdicts.filter(one => one.outcome === 'accepted');
  const words = accepted.slice(0, MOST).map(({ rule, subject, acceptance }): Text => {
    const until = acceptance?.until ? ` until ${acceptance.until}` : '';
    return `${rule} of ${subject}${acceptance?.by ? `, by ${acceptance.by}${until}` : ''}`;
  });
  const more = accepted.length - words.length;
  return [
    checks(counted, 'failure'),
    ': ',
    separated('; ', ...words, more > 0 ? `${more} more` : undefined),
    '. ',
    below('summary', 'Summary'),
  ];
}

/** The datum that most checks wait for; the others stand in the table below. */
function openWords(sheet: Sheet, counted: Counted): Text {
  const [first] = missingIn(sheet);
  const waiting = first?.waiting.length ?? 0;
  const share = waiting < counted.all ? `${waiting} of them for lack of one datum` : 'for lack of';
  return [
    checks(counted),
    first ? `, ${share}: ${first.gap.what}. ` : '. ',
    below('not-checked', 'Not checked'),
  ];
}

function heldWords({ input }: Sheet, counted: Counted): Text {
  const [least] = input.verdicts
    .filter(one => one.outcome === 'holds' && one.margin !== undefined && !one.asFound)
    .sort((one, other) => one.margin! - other.margin!);
  const margin = least ? `, the least by ${percent(least.margin!)} (${least.rule} of ${least.subject})` : '';
  return [checks(counted), `${margin}.`];
}

function notAssessed(sheet: Sheet): Block | undefined {
  const topics = silentTopics(sheet.vessel, sheet.input.verdicts);
  if (topics.length === 0) return undefined;
  const named = topics.slice(0, MOST).map(one => one.of);
  return paragraph([
    strong(`Not assessed: ${count(topics.length, 'subject')}`),
    `, nothing declared: ${named.join('; ')}${topics.length > MOST ? ' …' : '.'} `,
    below('not-checked', 'Not checked'),
  ]);
}
