import type { Arrangement, ShaftLine } from '@tailshaft/drivetrain';
import { type Block, type Section, section } from '../document/blocks.js';
import { linesFromAbove } from '../drawing/lines-from-above.js';
import { assumptionsSection } from '../sections/assumptions.js';
import { criticalsSection } from '../sections/criticals.js';
import { particularsSection } from '../sections/heading.js';
import { operatingSection } from '../sections/operating-points.js';
import { partsSection } from '../sections/parts.js';
import { verdictSection } from '../sections/verdict-table.js';
import { workingsSection } from '../sections/workings.js';
import type { Sheet } from '../sheet.js';
import { belongsTo } from './belongs.js';
import { closing } from './closing.js';
import { foldMirrored } from './mirrored.js';
import { arrangementWords, lastArrangements } from './proposals.js';
import { standsSection } from './stands.js';

/** For class, flag and surveyor: the criteria chosen, every figure against its limit, and how each was worked out. */
export function shaftLineBlocks(sheet: Sheet): Block[] {
  return [
    standsSection(sheet, 'shaft-line'),
    particularsSection(sheet),
    ...lastArrangements(sheet.vessel).flatMap(after => arrangementBlocks(sheet, after)),
    assumptionsSection(sheet),
    ...closing(sheet, 'shaft-line', ['Prepared', 'Checked', 'Approved', 'Class or flag', 'Surveyor']),
    workingsSection(sheet),
  ];
}

function arrangementBlocks(sheet: Sheet, after: Arrangement): Block[] {
  const own = sheet.ofArrangement(after).filter(one => belongsTo('shaft-line', one));
  const found: (Section | Block | undefined)[] = [
    section(`lines-${after.path}`, `Arrangement ${arrangementWords(after)}`, [
      {
        block: 'figure',
        svg: linesFromAbove(sheet, after),
        caption:
          'Seen from above. An arrow across a part shows how its top moves with the lever ahead. Shafts to one scale where their length is declared.',
      },
      own.length > 0
        ? verdictSection(sheet, `checks-${after.path}`, `${after.name} as a whole`, own)
        : undefined,
      criticalsSection(sheet, after),
    ]),
    ...foldMirrored(after.lines.map(line => ({ name: line.name, section: lineSection(sheet, line) }))),
  ];
  return found.filter(one => one !== undefined);
}

function lineSection(sheet: Sheet, line: ShaftLine): Section {
  const verdicts = sheet.ofLine(line).filter(one => belongsTo('shaft-line', one));
  return section(`line-${line.path}`, `Line ${line.name}`, [
    verdictSection(sheet, `checks-${line.path}`, line.path, verdicts),
    operatingSection(sheet, line),
    partsSection(sheet, line),
  ]);
}
