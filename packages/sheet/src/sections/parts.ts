import type { Change, Gear, Part, ShaftLine } from '@tailshaft/drivetrain';
import { capital, count } from '@tailshaft/mechanics';
import { blockOf, PLACE_VOCABULARY, SHAFT_MATERIAL } from '@tailshaft/vocabulary';
import { type Block, type Column, paragraph, type RowGroup, section } from '../document/blocks.js';
import { lineBreak, quiet, separated, type Text, warning } from '../document/text.js';
import type { Sheet } from '../sheet.js';
import { type FactRow, factRows } from './facts.js';

const columns = (sheet: Sheet): readonly Column[] => [
  { title: 'Fact' },
  { title: 'As written', wide: true },
  sheet.convertedColumn,
  { title: 'Evidence' },
  { title: 'Where' },
];

/** The parts of a line: what the repower does with each, what is declared of it, on which evidence. Folded on a screen. */
export function partsSection(sheet: Sheet, line: ShaftLine): Block {
  const groups = line.chain.map(part => group(sheet, part));
  const facts = groups.reduce((sum, one) => sum + one.rows.length, 0);
  return section(`parts-${line.path}`, 'Parts', [
    {
      block: 'details',
      summary: `${line.chain.map(nameOf).join(', ')}: ${count(facts, 'declared fact')}`,
      blocks: [
        paragraph(
          'A dash under evidence means that the fact has none of its own. A catalogue fact then rests on the source of its part, and a fact in the line on its author alone.',
          'quiet',
        ),
        {
          block: 'table',
          caption: `Parts of ${line.name}, in the order of the power flow`,
          columns: columns(sheet),
          groups,
        },
      ],
    },
  ]);
}

/** `Engine Kittiwake-9`. */
function nameOf({ role, entry }: Part): string {
  return `${capital(role)}${entry ? ` ${entry.name}` : ''}`;
}

function group(sheet: Sheet, part: Part): RowGroup {
  const rows = partRows(part);
  return {
    title: title(sheet, part),
    rows: rows.map(row => [
      row.label,
      row.open ? warning('open question') : row.written,
      sheet.converted(row),
      evidence(row),
      sheet.place(row.origin) ?? '',
    ]),
  };
}

function title(sheet: Sheet, part: Part): Text {
  const { entry } = part;
  const source = part.source?.value;
  return separated(
    lineBreak,
    separated(' — ', nameOf(part), entry?.title, CHANGE_WORDS[part.change]),
    source
      ? quiet(`Source: “${source.title}”${source.dated ? `, dated ${source.dated}` : ', undated'}`)
      : entry && warning('Source: none declared'),
    entry?.doc && quiet(entry.doc),
    otherRatios(part),
    sheet.place(part.origin),
  );
}

export const CHANGE_WORDS: Readonly<Record<Change, string>> = {
  new: 'as fitted',
  replaced: 'REPLACED',
  retained: 'kept (retained)',
  modified: 'kept, MODIFIED',
};

/** Own facts; of a gear those of the fitted ratio, of an engine those of the used rating. */
export function partRows(part: Part): FactRow[] {
  const vocabulary = PLACE_VOCABULARY[part.role];
  const rows = factRows(part, vocabulary, ['ratios', 'ratings']);
  if (part.role === 'gear') {
    const gear = part as Gear;
    if (gear.variant)
      rows.push(
        ...factRows(
          gear.variant,
          blockOf(vocabulary, 'ratios')?.block,
          gear.ratioUsed ? ['nominalFact'] : [],
        ),
      );
    // Ratings of the whole gear count where its fitted ratio has none of its own.
    if (!gear.variant?.ratings.length) rows.push(...factRows({ ratings: gear.ratings }, vocabulary));
  } else if (part.role === 'engine') {
    const { rating, ratings } = part as Part & { rating?: object; ratings?: readonly object[] };
    rows.push(...factRows({ ratings: rating ? [rating] : ratings }, vocabulary));
  }
  const grade = (part as Part & { grade?: object & { name: string } }).grade;
  if (grade)
    rows.push(
      ...factRows(grade, SHAFT_MATERIAL).map(row => ({
        ...row,
        label: `${grade.name}: ${row.label}`,
      })),
    );
  return rows;
}

function otherRatios(part: Part): Text | undefined {
  const { variant, ratios } = part as Gear;
  const others = (ratios ?? []).filter(one => one !== variant).map(one => one.nominalFact.written);
  return part.role === 'gear' && others.length > 0 ? quiet(`Also offered: ${others.join(', ')}`) : undefined;
}

/** Hearsay and the like are marked: they cannot close a check. */
function evidence({ evidence: known }: FactRow): Text {
  if (!known) return quiet('—');
  const words = [known.kind, known.dated, known.note].filter(Boolean).join(' ');
  return WEAK.has(known.kind) ? warning(words) : words;
}

const WEAK = new Set(['hearsay', 'assumed', 'sister vessel']);
