import type { Arrangement, Part, ShaftLine } from '@tailshaft/drivetrain';
import { capital, listed } from '@tailshaft/mechanics';
import { type Block, paragraph, section, table } from '../document/blocks.js';
import { lineBreak, plainText, quiet, separated, strong, type Text } from '../document/text.js';
import { linesFromAft } from '../drawing/lines-from-aft.js';
import { checklistSection } from '../sections/checklist.js';
import { CHANGE_WORDS, partRows } from '../sections/parts.js';
import { linesTable } from '../sections/rotation-table.js';
import { modesTable } from '../sections/ways-of-running.js';
import type { Sheet } from '../sheet.js';
import { closing } from './closing.js';
import { factCells, factTable } from './fact-table.js';
import { foldMirrored } from './mirrored.js';
import { arrangementWords, lastArrangements } from './proposals.js';
import { foldSides } from './sides.js';
import { standsSection } from './stands.js';
import { changesTable } from './what-changes.js';

/** For the yard: what is bought, kept, altered and removed, how it turns, and where it meets what it is bolted to. */
export function specificationBlocks(sheet: Sheet): Block[] {
  return [
    standsSection(sheet, 'specification'),
    ...lastArrangements(sheet.vessel).flatMap(after => arrangementBlocks(sheet, after)),
    checklistSection(),
    ...closing(sheet, 'specification', ['Prepared', 'Checked', 'Yard', 'Owner']),
  ];
}

function arrangementBlocks(sheet: Sheet, after: Arrangement): Block[] {
  return [
    section(`work-${after.path}`, `Arrangement ${arrangementWords(after)}`, [
      worksTable(sheet, after),
      after.before && after.lines.some(line => line.chain.some(one => one.change === 'modified'))
        ? changesTable(sheet, after.before, after)
        : undefined,
      {
        block: 'figure',
        svg: linesFromAft(sheet, after),
        caption: 'Seen from aft, looking forward; the arrows show how the shafts turn with the lever ahead.',
      },
      {
        ...linesTable(sheet, after),
        caption: 'Sides, clutches, hands and pump settings; every turn is seen from aft, looking forward',
      },
      modesTable(sheet, after),
    ]),
    ...foldMirrored(after.lines.map(line => ({ name: line.name, section: interfaces(line) }))),
  ];
}

/** What the yard does with each part. */
function worksTable(sheet: Sheet, after: Arrangement): Block {
  const rows = after.lines.flatMap(line =>
    line.chain.map((part): Text[] => [
      line.name,
      capital(part.role),
      WORK[part.change],
      separated(' ', part.entry ? strong(part.entry.name) : undefined, part.entry?.title ?? inPlace(part)),
      part.source?.value
        ? `${part.source.value.title}${part.source.value.dated ? `, ${part.source.value.dated}` : ''}`
        : quiet('none named'),
    ]),
  );
  const gone = (after.before?.lines ?? []).flatMap(line => removedFrom(line, after));
  return table(
    'Parts bought, kept, altered and removed',
    [
      { title: 'Line' },
      { title: 'Part' },
      { title: 'Work' },
      { title: 'What it is', wide: true },
      { title: 'Data from', wide: true },
    ],
    foldSides([...rows, ...gone], sheet.vessel, row => ({
      subject: plainText(row[0]!),
      words: row.slice(1).map(plainText).join('\n'),
    })).map(({ subjects, first }) => [listed(subjects), ...first.slice(1)]),
  );
}

const WORK: typeof CHANGE_WORDS = {
  new: 'fitted',
  replaced: 'bought and fitted new',
  retained: 'kept as it is',
  modified: 'kept and altered',
};

/** What was there and has no successor that keeps it. */
function removedFrom(line: ShaftLine, after: Arrangement): Text[][] {
  const now = after.lines.find(one => one.name === line.name);
  return line.chain
    .filter(part => {
      const same = now?.chain.filter(one => one.role === part.role) ?? [];
      return !same.some(one => one.change === 'retained' || one.change === 'modified');
    })
    .map(part => [
      line.name,
      capital(part.role),
      'removed',
      separated(' ', part.entry ? strong(part.entry.name) : undefined, part.entry?.title ?? inPlace(part)),
      quiet('as found'),
    ]);
}

/** What a part without an entry is known by. */
function inPlace(part: Part): string {
  const rows = partRows(part).filter(one => !one.open);
  // What it is made of and how large comes before what stands at it.
  const own = [
    ...rows.filter(one => !one.label.includes(':')),
    ...rows.filter(one => one.label.includes(':')),
  ];
  const told = own.slice(0, 4).map(one => `${one.label} ${one.written}`);
  return told.join(', ') || 'declared in place';
}

/** What a part is bolted, keyed, splined or laid to: the words of its facts tell. */
const INTERFACE =
  /housing|flywheel|flange|bolt|bore|key|spline|taper|pilot|spigot|hub|coupling end|bearing .*: (at|kind|length)|mount|bed|space|removal|angle|seal|length$|^diameter|^hand$|^pump|^ratio|ahead|shift cable|position|material|clearance|axis/;

function interfaces(line: ShaftLine) {
  const groups = line.chain.map(part => ({
    title: separated(
      ' — ',
      `${capital(part.role)}${part.entry ? ` ${part.entry.name}` : ''}`,
      CHANGE_WORDS[part.change],
    ),
    rows: partRows(part)
      .filter(row => INTERFACE.test(row.label))
      .map(row => factCells(row)),
  }));
  const shown = factTable(`${line.name}: what the parts are fitted by, forward to aft`, []);
  return section(`interfaces-${line.path}`, `Interfaces, ${line.name}`, [
    groups.some(one => one.rows.length > 0)
      ? {
          ...(shown as Extract<Block, { block: 'table' }>),
          groups: groups.filter(one => one.rows.length > 0),
        }
      : paragraph(['No interface is declared.', lineBreak]),
  ]);
}
