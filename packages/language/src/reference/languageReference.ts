import type { BlockRow, Row, Vocabulary } from '@tailshaft/vocabulary';
import {
  ENTRY_VOCABULARY,
  HEADER_ROWS,
  PLACE_VOCABULARY,
  unitsRead,
  VESSEL_VOCABULARY,
} from '@tailshaft/vocabulary';
import { EVIDENCE_KINDS } from '../reading/evidence.js';

/** The reference page of the language in Markdown, made from the same tables that the reader of specs uses. */
export function languageReference(): string {
  const seen = new Set<Vocabulary>();
  const parts = [
    '# The language, property by property',
    'Made from the vocabulary of the language: change the tables in `packages/vocabulary`, then run `npm run docs`.',
    'A property is its words and its value, one after the other; several may stand on a line. `unknown` may stand for any ' +
      `value. Behind any value may stand how it is known: ${EVIDENCE_KINDS.map(kind => `\`[${kind}]\``).join(', ')}, with a date or a document. ` +
      'A number outside what its row says it lies between is an error where it stands, and no check passes on it.',
    '## Catalogue entries',
    ...Object.entries(ENTRY_VOCABULARY).flatMap(([kind, vocabulary]) =>
      section(`\`${kind} Name "title" { ... }\``, vocabulary, seen),
    ),
    '## Parts in a shaft line',
    'In the header of a part:',
    table(Object.values(HEADER_ROWS).map(rowCells)),
    'At its place a part may say everything that its catalogue entry may, and:',
    ...Object.entries(PLACE_VOCABULARY).flatMap(([role, vocabulary]) => {
      const entry = ENTRY_VOCABULARY[role];
      const own = {
        ...vocabulary,
        rows: vocabulary.rows.filter(row => !entry?.rows.includes(row)),
        blocks: vocabulary.blocks.filter(block => !entry?.blocks.includes(block)),
      };
      return own.rows.length + own.blocks.length > 0 ? section(`\`${role}\` in its line`, own, seen) : [];
    }),
    '## Revisions',
    'An arrangement that revises another says of each part what becomes of it, `retain`, `modify`, `replace` or `remove`, by ' +
      'name where there are several: `retain coupling Elm-4`. Of a line that is gone it says `remove shaftline Port`. In a line ' +
      'that mirrors another, what the other retains or modifies is what this side had; only what is new there is new here. An ' +
      'arrangement that revises nothing and is revised is the vessel as found: what fails of it is a note.',
    '`trial "sea trial" of proposed dated 2026-06-12 { ... }` names the arrangement that was tried, and is held against that one.',
    '## Blocks of a vessel',
    ...Object.entries(VESSEL_VOCABULARY).flatMap(([kind, vocabulary]) =>
      section(`\`${kind} { ... }\``, vocabulary, seen),
    ),
  ];
  return `${parts.join('\n\n')}\n`;
}

function section(title: string, vocabulary: Vocabulary, seen: Set<Vocabulary>): string[] {
  if (seen.has(vocabulary)) return [];
  seen.add(vocabulary);
  const nested = vocabulary.blocks.flatMap(block =>
    section(`\`${block.words}\` in ${vocabulary.title}`, block.block, seen),
  );
  return [
    `### ${title}`,
    table([...vocabulary.rows.map(rowCells), ...vocabulary.blocks.map(blockCells)]),
    ...nested,
  ];
}

function rowCells(row: Row): string[] {
  return [`\`${row.words}\``, formOf(row), row.doc, rangeOf(row), `\`${row.example}\``];
}

function blockCells(block: BlockRow): string[] {
  return [
    `\`${block.words}\``,
    block.many ? 'block, as many as there are' : 'block',
    block.doc,
    block.head?.range ? `${block.head.range.low} to ${block.head.range.high}` : '',
    `\`${block.example}\``,
  ];
}

/** What a number may lie between, and what holds when the property is left out. */
function rangeOf({ range, absent }: Row): string {
  const at = range?.at ? ` at ${range.at.low} to ${range.at.high}` : '';
  const ends = range ? `${range.low} to ${range.high}${at}` : '';
  return [ends, ...(absent ? [`if absent: ${absent}`] : [])].filter(Boolean).join('; ');
}

function formOf(row: Row): string {
  const { kind } = row;
  const many = row.many ? ', may be repeated' : '';
  if (kind.form === 'quantity' || kind.form === 'span') {
    const units = unitsRead(kind.dimension)
      .slice(0, 4)
      .map(unit => unit.symbol)
      .join(', ');
    return `${kind.form === 'span' ? 'range of ' : ''}${kind.dimension}${units && kind.dimension !== 'number' ? ` (${units} ...)` : ''}${many}`;
  }
  if (kind.form === 'point') return `${kind.of} at ${kind.at}${many}`;
  if (kind.form === 'word') return kind.words.map(word => `\`${word}\``).join(', ') + many;
  if (kind.form === 'any word') return kind.what + many;
  if (kind.form === 'name') return `name of a ${kind.of}${many}`;
  return kind.form + many;
}

function table(rows: readonly string[][]): string {
  const cell = (text: string) => text.replace(/\|/g, '\\|').replace(/\n/g, ' ');
  return [
    '| words | value | meaning | between | example |',
    '| --- | --- | --- | --- | --- |',
    ...rows.map(row => `| ${row.map(cell).join(' | ')} |`),
  ].join('\n');
}
