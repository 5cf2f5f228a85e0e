import type { DerivedChange, VerdictMove } from './change.js';
import type { Comparison, VesselComparison } from './compare.js';
import { isChanged, isSame } from './compare.js';
import { shareWords } from './derived.js';
import { headline, keptWords, type Line, type Section, sectionsOf } from './sections.js';
import { outcomeWords } from './verdict-moves.js';

/** What a comparison never says by itself. */
export const COMPARISON_CAUTION =
  'This compares what the specs declare and what follows from it. It is a screening: it certifies nothing, and defers to ' +
  'the makers of the parts, to class, flag and local codes, and to a licensed practitioner.';

/** A comparison for a review comment. */
export function comparisonMarkdown(comparison: Comparison): string {
  if (isSame(comparison)) return 'No change in meaning.\n';
  const parts = comparison.vessels.map(one => vesselMarkdown(one));
  const { addedVessels, removedVessels, entries } = comparison;
  if (removedVessels.length > 0) {
    parts.push(`**Vessels taken out**: ${removedVessels.map(one => plain(one.vessel.name)).join(', ')}\n`);
  }
  if (addedVessels.length > 0) {
    const told = addedVessels.map(({ vessel, verdicts }) => {
      const failing = verdicts.filter(one => one.outcome === 'fails').length;
      const open = verdicts.filter(one => one.outcome === 'cannot tell').length;
      return `${plain(vessel.name)} (${failing} failing, ${open} not checked)`;
    });
    parts.push(`**Vessels added**: ${told.join(', ')}\n`);
  }
  if (entries.length > 0) {
    parts.push(`### Catalogue entries\n\n${entries.map(one => `- ${plain(one.words)}\n`).join('')}`);
  }
  return `${parts.join('\n')}\n${COMPARISON_CAUTION}\n`;
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
    plain(outcomeWords(move.after)),
  ];
  return `| ${cells.join(' | ')} |`;
}

function derivedRow(line: Line, change: DerivedChange): string {
  const cells = [
    change.what,
    line.subjects.join(', '),
    change.before ?? 'could not be told',
    change.after ?? 'cannot be told',
    shareWords(change.share).replace(/^ \(|\)$/g, ''),
  ];
  return `| ${cells.map(plain).join(' | ')} |`;
}

/** Words of the author are words, never mark-up. */
function plain(text: string): string {
  return text.replace(/[\\`*_[\]<>#|~]/g, sign => `\\${sign}`).replace(/\s+/g, ' ');
}
