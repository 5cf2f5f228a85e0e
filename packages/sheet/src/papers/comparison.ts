import {
  type Arrangement,
  COMPARISON_CAUTION,
  sectionsOf as changedSections,
  type DerivedChange,
  headline,
  keptWords,
  type VerdictMove,
} from '@tailshaft/drivetrain';
import { capital, listed, signedPercent } from '@tailshaft/mechanics';
import { besideWords } from '../both-units.js';
import { type Block, list, paragraph, section, table } from '../document/blocks.js';
import { quiet, separated, strong, type Text } from '../document/text.js';
import { linesFromAft } from '../drawing/lines-from-aft.js';
import { movedTable } from '../sections/moved-verdicts.js';
import { profileTable } from '../sections/running-profile.js';
import type { Sheet } from '../sheet.js';
import { closing } from './closing.js';
import { lastArrangements } from './proposals.js';
import { foldSides, subjectWords } from './sides.js';
import { standsSection } from './stands.js';
import { changesTable, comparedWith } from './what-changes.js';

/** For the reviewer: the arrangement as found beside the one proposed, by consequence. */
export function comparisonBlocks(sheet: Sheet): Block[] {
  return [
    standsSection(sheet, 'comparison'),
    ...lastArrangements(sheet.vessel).flatMap(after =>
      after.before
        ? compared(sheet, after.before, after)
        : [
            section(`compared-${after.path}`, `Arrangement ${after.name}`, [
              paragraph('There is nothing to compare it with: the spec has no earlier arrangement of it.'),
            ]),
          ],
    ),
    paragraph(COMPARISON_CAUTION),
    ...closing(sheet, 'comparison', ['Prepared', 'Reviewed']),
  ];
}

function compared(sheet: Sheet, before: Arrangement, after: Arrangement): Block[] {
  const comparison = comparedWith(sheet, before, after);
  const kept = keptWords(comparison);
  return [
    section(`compared-${after.path}`, `From ${before.name} to ${after.name}`, [
      paragraph(strong(headline(comparison))),
      {
        block: 'row',
        figures: [before, after].map(one => ({
          block: 'figure' as const,
          svg: linesFromAft(sheet, one),
          caption: `${capital(one.title ?? one.name)}, seen from aft, lever ahead.`,
        })),
      },
      changesTable(sheet, before, after),
      profileTable(sheet, before, after),
      kept ? paragraph([quiet('Kept: '), kept, '.']) : undefined,
      ...changedSections(comparison)
        .filter(one => one.kind !== 'part')
        .map(({ title, kind, lines }) =>
          section(`${kind}-${after.path}`, title, [linesOf(sheet, { title, kind, lines }, before, after)]),
        ),
    ]),
  ];
}

type ChangedSection = ReturnType<typeof changedSections>[number];

function linesOf(sheet: Sheet, { kind, lines }: ChangedSection, before: Arrangement, after: Arrangement) {
  switch (kind) {
    case 'derived':
      return derivedTable(
        lines.map(one => ({ subjects: one.subjects, change: one.change as DerivedChange })),
      );
    case 'verdict':
      return movedTable(
        sheet,
        `${before.name} beside ${after.name}`,
        { before: before.name, after: after.name },
        foldSides(lines, sheet.vessel, ({ subjects, change }) => ({
          subject: listed(subjects),
          words: `${(change as VerdictMove).rule} ${change.words}`,
        })).map(({ subjects, first }) => ({
          where: subjectWords(subjects),
          change: first.change as VerdictMove,
        })),
      );
    default:
      return list(
        lines.map((one): Text => separated(' ', strong(`${subjectWords(one.subjects)}:`), one.change.words)),
      );
  }
}

function derivedTable(lines: readonly { subjects: readonly string[]; change: DerivedChange }[]): Block {
  const figure = (words: string | undefined, value: DerivedChange['valueAfter']): Text => {
    const other = value && words !== undefined ? besideWords(value, words) : undefined;
    return words === undefined ? quiet('not known') : separated(' ', words, other && quiet(`(${other})`));
  };
  return table(
    'What follows for the lines',
    [
      { title: 'Figure', wide: true },
      { title: 'Lines' },
      { title: 'Before', numeric: true },
      { title: 'After', numeric: true },
      { title: 'Change', numeric: true },
    ],
    lines.map(({ subjects, change }) => [
      capital(change.what),
      listed(subjects),
      figure(change.before, change.valueBefore),
      figure(change.after, change.valueAfter),
      change.share === undefined ? quiet('—') : signedPercent(change.share),
    ]),
  );
}
