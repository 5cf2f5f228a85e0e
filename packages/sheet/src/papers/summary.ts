import { type Requirement, verificationOf } from '@tailshaft/drivetrain';
import { type Block, list, paragraph, section } from '../document/blocks.js';
import { quiet, separated, type Text, verdict as verdictMark, warning } from '../document/text.js';
import { linesFromAft } from '../drawing/lines-from-aft.js';
import { profileTable } from '../sections/running-profile.js';
import { modesTable } from '../sections/ways-of-running.js';
import type { Sheet } from '../sheet.js';
import { closingInBrief } from './closing.js';
import { gainsTable } from './gains.js';
import { arrangementWords, lastArrangements } from './proposals.js';
import { standsSection } from './stands.js';
import { changesTable } from './what-changes.js';

/** For the owner: what changes, what it gives, what fails or is open, in one or two pages. */
export function summaryBlocks(sheet: Sheet): Block[] {
  const { vessel } = sheet;
  return [
    standsSection(sheet, 'summary'),
    ...lastArrangements(vessel).map(after =>
      section(`proposal-${after.path}`, capitalWords(arrangementWords(after)), [
        after.before
          ? changesTable(sheet, after.before, after)
          : paragraph('Nothing is compared here: the spec has no earlier arrangement of it.'),
        gainsTable(sheet, after.before, after),
        profileTable(sheet, after.before, after),
        modesTable(sheet, after),
        {
          block: 'figure',
          svg: linesFromAft(sheet, after),
          caption:
            'Seen from aft, looking forward; the arrows show how the shafts turn with the lever ahead.',
        },
      ]),
    ),
    asked(sheet),
    ...closingInBrief(sheet, 'summary', ['Prepared', 'Owner']),
  ];
}

const capitalWords = (text: string) => `Arrangement ${text}`;

/** What the owner asked for, with the answer. */
function asked(sheet: Sheet): Block {
  const { requirements } = sheet.vessel;
  if (requirements.length === 0)
    return section('asked', 'What was asked for', [paragraph('The spec records no requirement.')]);
  return section('asked', 'What was asked for', [
    list(
      requirements.map(one =>
        separated(' ', answer(sheet, one), one.written, one.note && quiet(`(${one.note})`)),
      ),
    ),
  ]);
}

function answer(sheet: Sheet, requirement: Requirement): Text {
  const outcomes = sheet.input.verdicts
    .flatMap(one => [one, ...(one.folds ?? [])])
    .filter(one => one.answers === requirement.origin)
    .map(one => one.outcome);
  if (outcomes.length > 0) return separated(' ', ...[...new Set(outcomes)].map(one => verdictMark(one)));
  const why = verificationOf(requirement);
  return warning(why.by === 'nothing' ? 'not verified' : 'not judged');
}
