import {
  byGravity,
  COMPARISON_CAUTION,
  type Comparison,
  type DerivedChange,
  fleetHeadline,
  headline,
  isChanged,
  isSame,
  keptWords,
  type Line,
  outcomeWords,
  type Section,
  type SpecChange,
  sectionsOf,
  summaryLines,
  type VerdictMove,
  type VesselComparison,
} from '@tailshaft/drivetrain';
import { count, signedPercent } from '@tailshaft/mechanics';
import type { Io } from '../terminal/io.js';
import { type Cell, table, wrapped } from '../terminal/layout.js';
import { visible } from '../terminal/visible.js';
import { nameWithTitle } from './name-with-title.js';

/** A comparison for the terminal: what could not be read, the headline, the catalogue, then vessel by vessel. */
export function comparisonText(io: Io, comparison: Comparison, marginLost: number): string {
  if (isSame(comparison)) return 'No change in meaning.\n';
  const { vessels, addedVessels, removedVessels, entries } = comparison;
  const blocks = [`${headText(io, comparison, marginLost)}\n`];
  if (vessels.length + addedVessels.length > MOST_WITHOUT_CONTENTS)
    blocks.push(
      `${summaryLines(comparison, marginLost)
        .map(one => wrapped(visible(one), io.width, '      ', '  '))
        .join('\n')}\n`,
    );
  if (entries.length > 0) {
    const lines = entries.map(one => wrapped(visible(one.words), io.width, '      ', '  '));
    blocks.push([io.paint.strong('Catalogue entries'), ...lines, ''].join('\n'));
  }
  for (const { vessel, key } of removedVessels) {
    blocks.push(`${io.paint.warning('Vessel taken out')}  ${key ?? vessel.name}\n`);
  }
  for (const one of addedVessels) blocks.push(addedText(io, one));
  blocks.push(...vessels.map(one => vesselText(io, one)));
  return `${blocks.join('\n')}\n${io.paint.quiet(wrapped(COMPARISON_CAUTION, io.width))}\n`;
}

/** The headline, and a line for each vessel. */
export function summaryText(io: Io, comparison: Comparison, marginLost: number): string {
  if (isSame(comparison)) return 'No change in meaning.\n';
  const lines = summaryLines(comparison, marginLost).map(one =>
    wrapped(visible(one), io.width, '    ', '  '),
  );
  return `${[headText(io, comparison, marginLost), ...lines].join('\n')}\n`;
}

/** More vessels than this get a list of them at the top. */
const MOST_WITHOUT_CONTENTS = 3;

function headText(io: Io, comparison: Comparison, marginLost: number): string {
  const lines = comparison.unread.map(one =>
    io.paint.error(wrapped(visible(one), io.width, '  ', 'Not read whole: ')),
  );
  return [
    ...lines,
    io.paint.strong(wrapped(visible(fleetHeadline(comparison, marginLost)), io.width, '  ', '')),
  ].join('\n');
}

/** A vessel that has nothing to be compared with stands by its verdicts. */
function addedText(io: Io, { vessel, key, verdicts }: Comparison['addedVessels'][number]): string {
  const of = (outcome: string) => verdicts.filter(one => one.outcome === outcome);
  const head = `${io.paint.strong('Vessel added')}  ${key ?? vessel.name}: ${count(of('fails').length, 'check fails', 'checks fail')}, ${of('accepted').length} accepted, ${of('cannot tell').length} cannot tell`;
  const told = [...of('fails'), ...of('accepted')].sort(byGravity).map(one => {
    const tint = one.outcome === 'accepted' || one.severity !== 'error' ? io.paint.warning : io.paint.error;
    return `    ${tint(one.outcome)}  ${one.rule} on ${one.subject}\n${wrapped(visible(one.message), io.width, '      ')}`;
  });
  return `${[head, ...told].join('\n')}\n`;
}

/** One vessel of it, or two arrangements of one. */
function vesselText(io: Io, comparison: VesselComparison): string {
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
    wrapped(`${beforeWords(move)} → ${afterWords(move)}`, io.width, '      '),
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

function afterWords(move: VerdictMove): string {
  return move.coveredBy ? `reported under ${move.coveredBy}` : outcomeWords(move.after);
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
    { text: before ?? 'not known', right: true },
    { text: '→' },
    { text: after ?? 'NOT KNOWN', right: true },
    { text: share === undefined ? '' : signedPercent(share), right: true },
  ];
}
