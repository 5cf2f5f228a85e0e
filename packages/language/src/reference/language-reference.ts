import { allUnits, ambiguousSpellings, ambiguousUnit, type Dimension, type Unit } from '@tailshaft/mechanics';
import {
  type BlockRow,
  ENTRY_VOCABULARY,
  EVIDENCE_KINDS,
  EVIDENCE_MEANINGS,
  HEADER_ROWS,
  leadOf,
  MODE_VOCABULARY,
  PLACE_VOCABULARY,
  type Row,
  STATEMENTS,
  type Statement,
  unitsRead,
  VESSEL_VOCABULARY,
  type Vocabulary,
} from '@tailshaft/vocabulary';
import { NUMBER_FORMS, UNIT_ORDER, VALUE_FORMS } from './forms.js';
import { boundOf, formOf, remarksOf } from './properties.js';

/** The reference page of the language in Markdown, made from the same tables that the reader of specs uses. */
export function languageReference(): string {
  const seen = new Set<Vocabulary>();
  return `${[
    '# Reference of the language',
    'Made from the tables of the language: change `packages/vocabulary`, then run `npm run docs`.',
    'Statements, values, units and evidence come first, then the properties of every block: [statements](#statements), [values](#values), [units](#units), [evidence](#evidence), [catalogue entries](#catalogue-entries), [parts in a shaft line](#parts-in-a-shaft-line), [blocks of a vessel](#blocks-of-a-vessel).',
    '## Statements',
    'Text in angle brackets is filled in by the author; braces show that a block may follow. A final item in angle brackets is optional, as is a title.',
    table(
      ['statement', 'stands', 'form', 'meaning', 'example'],
      STATEMENTS.map(one => [
        code(leadOf(one)),
        STANDS[one.where],
        code(one.form),
        one.doc,
        one.example.split('\n').map(code).join('<br>'),
      ]),
    ),
    '### Clauses',
    table(
      ['statement', 'clause', 'meaning'],
      STATEMENTS.flatMap(one =>
        (one.clauses ?? []).map(([form, meaning]) => [code(leadOf(one)), code(form), meaning]),
      ),
    ),
    'The clauses of a statement may come in any order.',
    '`unknown` may also follow `because`, `by`, `dated`, `until`, the `of` of a trial and the bound of `require` and `assume`: an unknown covers and verifies nothing.',
    '## Values',
    'A property is its words followed by its value, with no mark between; a line may hold several. A name is made of letters, digits, hyphens, dots and slashes and begins with a letter. A text is in quotes and ends on its line.',
    '### Numbers',
    table(
      ['written', 'meaning'],
      NUMBER_FORMS.map(([written, meaning]) => [written.split(', ').map(code).join(', '), meaning]),
    ),
    '### Forms',
    table(
      ['form', 'written', 'example'],
      VALUE_FORMS.map(one => [one.form, one.written, one.examples.map(code).join('<br>')]),
    ),
    '## Units',
    'Every quantity carries its unit, except plain numbers. The first unit of each row is the one that is offered. Spellings in brackets are read as the unit before them; typographic signs (`N·m`, `m³/s`, `°`) are read too.',
    table(
      ['quantity', 'units'],
      dimensions().map(dimension => [dimension, unitsRead(dimension).map(unitWords).join(', ')]),
    ),
    'Refused, because they have more than one meaning:',
    table(
      ['spelling', 'why', 'write instead'],
      refusedUnits().map(({ spellings, why, choices }) => [spellings.map(code).join(', '), why, choices]),
    ),
    '## Evidence',
    'Any value may be followed by its evidence in brackets, with a date, or a document in quotes: `[measured 2026-01-14]`, `[drawing "S-201 rev C"]`. `[hearsay]` or `[assumed]` at the head of a block in a block, as `clutch A [hearsay] { }`, is that of all in it that has no evidence of its own.',
    table(
      ['evidence', 'meaning'],
      EVIDENCE_KINDS.map(kind => [code(`[${kind}]`), EVIDENCE_MEANINGS[kind] ?? '']),
    ),
    '## Properties',
    '*Bounds and remarks* give the plausible range, what is used when the property is absent (otherwise it is an open question), whether a limit is a minimum or a maximum, whether the fact is handed and therefore never mirrored, and what it was measured with: when one of those changes, the value must be stated again.',
    '## Catalogue entries',
    ...Object.entries(ENTRY_VOCABULARY).flatMap(([kind, vocabulary]) =>
      section(`\`${kind} Name "title" { ... }\``, vocabulary, seen),
    ),
    '## Parts in a shaft line',
    'In the header of a part:',
    propertyTable(Object.values(HEADER_ROWS).map(rowCells)),
    'A part in a line may state everything that its catalogue entry may, and:',
    ...Object.entries(PLACE_VOCABULARY).flatMap(([role, vocabulary]) => {
      const entry = ENTRY_VOCABULARY[role];
      const own = {
        ...vocabulary,
        rows: vocabulary.rows.filter(row => !entry?.rows.includes(row)),
        blocks: vocabulary.blocks.filter(block => !entry?.blocks.includes(block)),
      };
      return own.rows.length + own.blocks.length > 0 ? section(`\`${role}\` in its line`, own, seen) : [];
    }),
    '## Ways of running',
    'A line with several movers says how they are used: `mode harbour { driven by motor }`. Every mode is judged by every check on ' +
      'the line, and a check tells the mode that it goes worst in. Arrangement, sheet and comparison show the mode in which ' +
      'an engine drives alone and no generator takes power, or the first that comes near it. A motor stands where it is written: in front of the gear, behind it, or on the shaft. Two engines of one entry at ' +
      'one rating drive one shaft by a gear that says what each of its inputs is (`input shaft first { ... }`, the first engine of ' +
      'the text on the first): each input is judged with what its own engine gives, the shaft with both. What is written between an ' +
      'engine and such a gear belongs to that engine. `require shaft torque at most 6 kN.m at full power in mode passage` is judged in that ' +
      'mode, any other requirement in the mode that is shown. A kept line is compared mode by mode: with the mode of the same name, else with one in ' +
      'which the same movers drove, else with the most loaded one there was. Checks that do not count two movers together cannot tell.',
    ...section('`mode Name { ... }`', MODE_VOCABULARY, seen),
    '## Revisions',
    'An arrangement that revises another states an action for each part, `retain`, `modify`, `replace` or `remove`, by ' +
      'name where there are several: `retain coupling Elm-4`. For a removed line it states `remove shaftline Port`. In a line ' +
      'that mirrors another, a part that the other retains or modifies is the one that this side had; only new parts are mirrored. An ' +
      'arrangement that revises nothing and is revised is the vessel as found: its failures are notes. What the hull states with a ' +
      'part of the line, such as its wake, is taken as stated with the part as found: with another one it is used and nothing holds ' +
      'on it, unless `[drawing]`, `[sheet]` or `[assumed]` marks it as of the plan.',
    '`trial "sea trial" of proposed dated 2026-06-12 { ... }` names the arrangement that was tried, and is compared with it.',
    '## Blocks of a vessel',
    ...Object.entries(VESSEL_VOCABULARY).flatMap(([kind, vocabulary]) =>
      section(`\`${kind} { ... }\``, vocabulary, seen),
    ),
  ].join('\n\n')}\n`;
}

function section(title: string, vocabulary: Vocabulary, seen: Set<Vocabulary>): string[] {
  if (seen.has(vocabulary)) return [];
  seen.add(vocabulary);
  const nested = vocabulary.blocks.flatMap(block =>
    section(`\`${block.words}\` in ${vocabulary.title}`, block.block, seen),
  );
  return [
    `### ${title}`,
    propertyTable([...vocabulary.rows.map(rowCells), ...vocabulary.blocks.map(blockCells)]),
    ...nested,
  ];
}

function rowCells(row: Row): string[] {
  return [code(row.words), formOf(row), row.doc, remarksOf(row), code(row.example)];
}

function blockCells(block: BlockRow): string[] {
  const remarks = [boundOf(block.head?.range), block.handed ? 'handed' : ''].filter(Boolean).join('; ');
  return [
    code(block.words),
    block.many ? 'block, may be repeated' : 'block',
    block.doc,
    remarks,
    code(block.example),
  ];
}

/** Every kind of quantity that has a unit, the usual ones first. */
function dimensions(): readonly Dimension[] {
  const all = new Set(allUnits().map(unit => unit.dimensions[0]!));
  all.add('ratio');
  all.delete('number');
  return [...UNIT_ORDER.filter(one => all.has(one)), ...[...all].filter(one => !UNIT_ORDER.includes(one))];
}

function unitWords(unit: Unit): string {
  return unit.aliases.length > 0
    ? `${code(unit.symbol)} (${unit.aliases.map(code).join(', ')})`
    : code(unit.symbol);
}

/** Spellings that are refused, those of one reason and one choice together. */
function refusedUnits(): { spellings: string[]; why: string; choices: string }[] {
  const rows = new Map<string, { spellings: string[]; why: string; choices: string }>();
  for (const spelling of ambiguousSpellings()) {
    const found = ambiguousUnit(spelling);
    if (!found) continue;
    const choices = found.choices.map(one => `${code(one.symbol)} ${one.meaning}`).join('; ');
    const row = rows.get(choices) ?? { spellings: [], why: found.why, choices };
    row.spellings.push(spelling);
    rows.set(choices, row);
  }
  return [...rows.values()];
}

const STANDS: Readonly<Record<Statement['where'], string>> = {
  anywhere: 'anywhere',
  file: 'in a file',
  vessel: 'in a vessel',
  arrangement: 'in an arrangement',
  line: 'in a shaft line',
};

const code = (text: string) => `\`${text}\``;

function propertyTable(rows: readonly (readonly string[])[]): string {
  return table(['words', 'value', 'meaning', 'bounds and remarks', 'example'], rows);
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const row = (cells: readonly string[]) =>
    `| ${cells.map(cell => cell.replace(/\|/g, '\\|').replace(/\n/g, ' ')).join(' | ')} |`;
  return [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n');
}
