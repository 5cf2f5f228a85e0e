import {
  COMPARISON_CAUTION,
  type Comparison,
  type DerivedChange,
  headline,
  isChanged,
  isSame,
  keptWords,
  type Line,
  outcomeWords,
  type Section,
  type SpecChange,
  sectionsOf,
  type VerdictMove,
  type VesselComparison,
} from '@tailshaft/drivetrain';
import type { Io } from '../terminal/io.js';
import { type Cell, count, table, wrapped } from '../terminal/layout.js';
import { visible } from '../terminal/visible.js';
import { nameWithTitle } from './name-with-title.js';
import { percentWords } from './tally.js';

/** A comparison for the terminal. */
export function comparisonText(io: Io, comparison: Comparison): string {
  if (isSame(comparison)) return 'No change in meaning.\n';
  const { vessels, addedVessels, removedVessels, entries } = comparison;
  const blocks = vessels.map(one => vesselText(io, one));
  for (const { vessel, key } of removedVessels) {
    blocks.push(`${io.paint.warning('Vessel taken out')}  ${key ?? vessel.name}\n`);
  }
  for (const { vessel, key, verdicts } of addedVessels) {
    const failing = verdicts.filter(one => one.outcome === 'fails').length;
    const open = verdicts.filter(one => one.outcome === 'cannot tell').length;
    blocks.push(
      `${io.paint.strong('Vessel added')}  ${key ?? vessel.name}: ${count(failing, 'check fails', 'checks fail')}, ${open} not checked\n`,
    );
  }
  if (entries.length > 0) {
    const lines = entries.map(one => wrapped(visible(one.words), io.width, '      ', '  '));
    blocks.push([io.paint.strong('Catalogue entries'), ...lines, ''].join('\n'));
  }
  return `${blocks.join('\n')}\n${io.paint.quiet(wrapped(COMPARISON_CAUTION, io.width))}\n`;
}

/** One vessel of it, or two arrangements of one. */
export function vesselText(io: Io, comparison: VesselComparison): string {
  const { name, title, addedLines, removedLines } = comparison;
  const lines = [nameWithTitle(io, name, title), wrapped(headline(comparison), io.width, '  ')];
  if (addedLines.length > 0) lines.push(`  Shaft lines added: ${addedLines.join(', ')}`);
  if (removedLines.length > 0) lines.push(`  Shaft lines taken out: ${removedLines.join(', ')}`);
  for (const section of sectionsOf(comparison)) lines.push('', sectionText(io, section));
  const kept = keptWords(comparison);
  if (kept && isChanged(comparison)) lines.push('', wrapped(kept, io.width, '    ', '  Parts kept: '));
  return `${lines.join('\n')}\n`;
}

function sectionText(io: Io, section: Section): string {
  const head = `  ${io.paint.strong(section.title)}`;
  if (section.kind === 'verdict') return [head, ...section.lines.map(one => moveText(io, one))].join('\n');
  if (section.kind === 'derived') {
    return [
      head,
      table(
        section.lines.map(one => derivedRow(io, one)),
        '    ',
      ),
    ].join('\n');
  }
  const lines = section.lines.map(({ subjects, change }) =>
    wrapped(visible(`${subjects.join(', ')}: ${change.words}`), io.width, '      ', '    '),
  );
  return [head, ...lines].join('\n');
}

function moveText(io: Io, { change }: Line): string {
  const move = change as VerdictMove;
  const tint = tintOf(io, move);
  const lines = [
    `    ${tint(move.movement)}  ${move.rule} on ${move.subject}`,
    wrapped(`${beforeWords(move)} → ${outcomeWords(move.after)}`, io.width, '      '),
  ];
  const tellsWhy = move.after && move.after.outcome !== 'holds';
  if (tellsWhy) lines.push(wrapped(visible(move.after.message), io.width, '      '));
  return lines.join('\n');
}

/** The words of the move know what covered it before; its outcome alone does not. */
function beforeWords(move: VerdictMove): string {
  return move.before
    ? outcomeWords(move.before)
    : move.words.slice(move.movement.length + 2).split(' → ')[0]!;
}

function tintOf(io: Io, { movement, severity }: VerdictMove): (text: string) => string {
  if (movement === 'newly fails' || movement === 'no longer accepted' || movement === 'fails by more') {
    return severity === 'error' ? io.paint.error : io.paint.warning;
  }
  if (movement === 'newly cannot tell') return io.paint.open;
  if (movement === 'newly holds' || movement === 'margin larger') return io.paint.good;
  return io.paint.strong;
}

function derivedRow(io: Io, { subjects, change }: Line): Cell[] {
  const { what, before, after, share } = change as SpecChange & DerivedChange;
  return [
    { text: what },
    { text: subjects.join(', '), paint: io.paint.quiet },
    { text: before ?? 'could not be told', right: true },
    { text: '→' },
    { text: after ?? 'CANNOT BE TOLD', right: true },
    { text: share === undefined ? '' : `${share > 0 ? '+' : ''}${percentWords(share)}`, right: true },
  ];
}
