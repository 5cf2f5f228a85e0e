import { count } from '@tailshaft/mechanics';
import { byGravity } from '../judge/gravity.js';
import type { DerivedChange, VerdictMove } from './change.js';
import type { Comparison, VesselComparison } from './compare.js';
import { isChanged, isSame } from './compare.js';
import { shareWords } from './derived.js';
import { fleetHeadline, summaryLines } from './fleet.js';
import { headline, keptWords, type Line, type Section, sectionsOf } from './sections.js';
import type { Judged } from './side.js';
import { outcomeWords } from './verdict-moves.js';

/** What a comparison never says by itself. */
export const COMPARISON_CAUTION =
  'This compares what the specs declare and what follows from it. It is a screening: it certifies nothing, and defers to ' +
  'the makers of the parts, to class, flag and local codes, and to a licensed practitioner.';

/** How a comment is to be written. */
export interface MarkdownOptions {
  /** Characters at most: vessels that do not fit are counted. */
  readonly limit?: number;
  readonly marginLost?: number;
}

/** A comparison for a review comment, the gravest first. What could not be read is its first line. */
export function comparisonMarkdown(comparison: Comparison, options: MarkdownOptions = {}): string {
  if (isSame(comparison)) return 'No change in meaning.\n';
  const { addedVessels, removedVessels, entries, unread, vessels } = comparison;
  const head = [
    ...unread.map(one => `**Not read whole**: ${plain(one)}\n`),
    `**${plain(fleetHeadline(comparison, options.marginLost))}**\n`,
  ];
  if (vessels.length + addedVessels.length > MOST_WITHOUT_CONTENTS) {
    const lines = summaryLines(comparison, options.marginLost);
    head.push(lines.map(one => `- ${plain(one)}\n`).join(''));
  }
  const parts: string[] = [];
  if (entries.length > 0)
    parts.push(`### Catalogue entries\n\n${entries.map(one => `- ${plain(one.words)}\n`).join('')}`);
  if (removedVessels.length > 0) {
    parts.push(
      `**Vessels taken out**: ${removedVessels.map(one => plain(one.key ?? one.vessel.name)).join(', ')}\n`,
    );
  }
  for (const one of addedVessels) parts.push(addedMarkdown(one));
  parts.push(...vessels.map(one => vesselMarkdown(one)));
  const caution = `\n${COMPARISON_CAUTION}\n`;
  return `${[...head, ...within(parts, options.limit, [...head, caution].join('').length)].join('\n')}${caution}`;
}

/** More vessels than this get a list of them at the top. */
const MOST_WITHOUT_CONTENTS = 3;

/** As many parts as fit, whole; the rest is counted. */
function within(parts: readonly string[], limit: number | undefined, taken: number): string[] {
  if (limit === undefined) return [...parts];
  const shown: string[] = [];
  let size = taken + ROOM;
  for (const [index, part] of parts.entries()) {
    if (size + part.length > limit) {
      const left = parts.length - index;
      return [...shown, `_${count(left, 'more section')} left out for length: see the whole comparison._\n`];
    }
    shown.push(part);
    size += part.length + 1;
  }
  return shown;
}

/** Room for the sentence that counts what is left out. */
const ROOM = 120;

/** A vessel that has nothing to be compared with stands by its verdicts. */
function addedMarkdown({ vessel, key, verdicts }: Judged): string {
  const told = verdicts
    .filter(one => one.outcome === 'fails' || one.outcome === 'accepted')
    .sort(byGravity)
    .map(one => `- ${one.outcome}: \`${one.rule}\` on ${plain(one.subject)}: ${plain(one.message)}`);
  const open = verdicts.filter(one => one.outcome === 'cannot tell').length;
  const failing = verdicts.filter(one => one.outcome === 'fails').length;
  const accepted = verdicts.filter(one => one.outcome === 'accepted').length;
  const head = `**Vessel added**: ${plain(key ?? vessel.name)}: ${failing} failing, ${accepted} accepted, ${open} cannot tell`;
  return `${[head, ...(told.length > 0 ? ['', ...told] : [])].join('\n')}\n`;
}

/** One vessel of it. */
export function vesselMarkdown(comparison: VesselComparison): string {
  const { name, title, addedLines, removedLines } = comparison;
  const lines = [`## ${plain(name)}${title ? `: ${plain(title)}` : ''}`, '', headline(comparison), ''];
  if (addedLines.length > 0) lines.push(`Shaft lines added: ${addedLines.map(plain).join(', ')}.`, '');
  if (removedLines.length > 0)
    lines.push(`Shaft lines taken out: ${removedLines.map(plain).join(', ')}.`, '');
  for (const section of sectionsOf(comparison)) lines.push(...sectionMarkdown(section), '');
  const kept = keptWords(comparison);
  if (kept && isChanged(comparison)) lines.push(`Parts kept: ${plain(kept)}.`, '');
  return lines.join('\n');
}

function sectionMarkdown(section: Section): string[] {
  const head = [`### ${section.title}`, ''];
  if (section.kind === 'verdict') {
    return [
      ...head,
      '| | check | on | before | after |',
      '|---|---|---|---|---|',
      ...section.lines.map(line => verdictRow(line.change as VerdictMove)),
    ];
  }
  if (section.kind === 'derived') {
    return [
      ...head,
      '| quantity | line | before | after | change |',
      '|---|---|---:|---:|---:|',
      ...section.lines.map(line => derivedRow(line, line.change as DerivedChange)),
    ];
  }
  return [
    ...head,
    ...section.lines.map(line => `- ${plain(`${line.subjects.join(', ')}: ${line.change.words}`)}`),
  ];
}

function verdictRow(move: VerdictMove): string {
  const cells = [
    move.movement,
    `\`${move.rule}\``,
    plain(move.subject),
    plain(outcomeWords(move.before)),
    plain(move.coveredBy ? `reported under ${move.coveredBy}` : outcomeWords(move.after)),
  ];
  return `| ${cells.join(' | ')} |`;
}

function derivedRow(line: Line, change: DerivedChange): string {
  const cells = [
    change.what,
    line.subjects.join(', '),
    change.before ?? 'not known',
    change.after ?? 'not known',
    shareWords(change.share).replace(/^ \(|\)$/g, ''),
  ];
  return `| ${cells.map(plain).join(' | ')} |`;
}

/** Words of the author are words, never mark-up. */
function plain(text: string): string {
  return text.replace(/[\\`*_[\]<>#|~]/g, sign => `\\${sign}`).replace(/\s+/g, ' ');
}
