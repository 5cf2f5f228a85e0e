import type { BlockRow, Row, Vocabulary } from '@tailshaft/vocabulary';
import { CompletionItemKind } from 'vscode-languageserver';
import type { Token } from '../../text/scan.js';
import { formWords } from '../hover/property.js';
import { nestedOn } from './context.js';
import type { Offer } from './items.js';

/** What is being typed on a line of facts. */
export interface FactPlace {
  readonly vocabulary: Vocabulary;
  /** The property whose value is being typed, with the tokens of the value so far. */
  readonly row?: Row;
  /** Properties that need no words, when a number stands by itself: its unit tells which it is. */
  readonly bare: readonly Row[];
  readonly value: readonly Token[];
  /** Words at the end that may begin a property of several words. */
  readonly begun: readonly Token[];
}

/** Takes the line of facts before the cursor apart, by the words that the vocabulary knows. */
export function factPlace(outer: Vocabulary, line: readonly Token[]): FactPlace {
  const vocabulary = nestedOn(outer, line) ?? outer;
  let row: Row | undefined;
  let from = 0;
  let index = 0;
  while (index < line.length) {
    const match = longest(vocabulary, line, index) ?? longest(outer, line, index);
    if (!match) {
      index += 1;
      continue;
    }
    row = match.row;
    index += match.length;
    from = index;
    if (match.head && line[index]) {
      // `clutch A`, `rated medium`: its name is said, and its own facts follow.
      row = undefined;
      index += 1;
      from = index;
    }
  }
  const value = line.slice(from);
  const bare =
    row === undefined && value[0]?.kind === 'number' ? vocabulary.rows.filter(one => one.bare) : [];
  const begun = trailing(vocabulary, value);
  return {
    vocabulary,
    ...(row ? { row } : {}),
    bare,
    value: begun.length > 0 ? value.slice(0, -begun.length) : value,
    begun,
  };
}

interface Found {
  readonly length: number;
  readonly row?: Row;
  readonly head: boolean;
}

function longest(vocabulary: Vocabulary, line: readonly Token[], index: number): Found | undefined {
  let best: Found | undefined;
  const consider = (text: string, row: Row | undefined, head: boolean) => {
    const words = text.split(' ');
    if (words.length <= (best?.length ?? 0)) return;
    if (words.every((word, ahead) => line[index + ahead]?.text === word))
      best = { length: words.length, head, ...(row ? { row } : {}) };
  };
  for (const row of vocabulary.rows) consider(row.words, row, false);
  for (const block of vocabulary.blocks)
    consider(block.words, block.head && headRow(block), block.head !== undefined);
  return best;
}

/** The word behind `clutch` or `rated` as if it were a property. */
function headRow(block: BlockRow): Row {
  return {
    words: block.words,
    field: block.head!.field,
    kind: block.head!.kind,
    doc: block.doc,
    example: block.example,
  };
}

/** The longest run of words at the end that begins a property without being all of it. */
function trailing(vocabulary: Vocabulary, value: readonly Token[]): readonly Token[] {
  for (let from = 0; from < value.length; from++) {
    const run = value.slice(from);
    const text = `${run.map(token => token.text).join(' ')} `;
    const all = [...vocabulary.rows, ...vocabulary.blocks];
    if (run.every(token => token.kind === 'word') && all.some(one => one.words.startsWith(text))) return run;
  }
  return [];
}

/** Properties and blocks that this block does not say yet, each with its example to fill in. */
export function propertyOffers(place: FactPlace, written: ReadonlySet<string>): Offer[] {
  const { vocabulary, begun } = place;
  const typed = begun.map(token => `${token.text} `).join('');
  const from = begun[0]?.start;
  const fits = (row: Row | BlockRow) =>
    row.words.startsWith(typed) && (row.many === true || !written.has(row.words));
  const at = from === undefined ? {} : { from };
  return [
    ...vocabulary.rows.filter(fits).map(
      (row): Offer => ({
        label: row.words,
        kind: CompletionItemKind.Property,
        detail: formWords(row).replace(/`/g, ''),
        doc: `${row.doc}\n\n\`${row.example}\``,
        ...ASKED_NEXT(row.words),
        ...at,
      }),
    ),
    ...vocabulary.blocks.filter(fits).map(
      (row): Offer => ({
        label: row.words,
        kind: CompletionItemKind.Struct,
        detail: row.block.title,
        doc: `${row.doc}\n\n\`${row.example}\``,
        ...blockInsert(row),
        ...at,
      }),
    ),
  ];
}

/**
 * A property is written as its words, and its value is asked for next: an example in its place would be a fact that
 * nobody stated.
 */
const ASKED_NEXT = (words: string) => ({ insert: `${words} `, filter: words, goOn: true });

/** A block is opened, or where it has a name of its own, that is asked for first. */
function blockInsert(row: BlockRow): Pick<Offer, 'insert' | 'snippet' | 'filter' | 'goOn'> {
  if (row.head) return ASKED_NEXT(row.words);
  return { insert: `${row.words} {\n\t$0\n}`, snippet: true, filter: row.words };
}
