import type { Fact } from '@tailshaft/drivetrain';
import {
  type BlockRow,
  ENTRY_VOCABULARY,
  PLACE_VOCABULARY,
  type Row,
  VESSEL_VOCABULARY,
  type Vocabulary,
} from '@tailshaft/vocabulary';
import { readFacts, startReading } from '../../src/reading/block.js';
import { kindOfText } from '../../src/reading/token.js';
import { piecesOf } from '../../src/text/tokens.js';

/** Reads what stands in a block of this kind, by the tokens that the grammar makes of it. */
export function readLine(vocabulary: Vocabulary, text: string) {
  const atoms = piecesOf(text).map(({ text: word, start, end, line }) => ({
    kind: kindOfText(word),
    text: word,
    start,
    end,
    line,
  }));
  const host = { uri: '', start: 0, end: 0, headEnd: 0, vocabulary, form: 'nested' as const };
  const reading = startReading(host);
  readFacts(reading, atoms);
  return { reading, fact: reading.facts[0]?.fact as Fact<unknown> | undefined };
}

type Wrap = (facts: string) => string;

/** Every row of every block once, with the words that lead to it, and a text around facts of that block. */
export function everyRow(): (readonly [path: string, Vocabulary, Row, around: Wrap])[] {
  const seen = new Set<Vocabulary>();
  const found: (readonly [string, Vocabulary, Row, Wrap])[] = [];
  const visit = (path: string, vocabulary: Vocabulary, around: Wrap): void => {
    if (seen.has(vocabulary)) return;
    seen.add(vocabulary);
    for (const row of vocabulary.rows) found.push([`${path}: ${row.words}`, vocabulary, row, around]);
    for (const one of vocabulary.blocks)
      visit(`${path} ${one.words}`, one.block, facts => around(`${one.words}${headOf(one)} {\n${facts}\n}`));
  };
  for (const [kind, vocabulary] of Object.entries(ENTRY_VOCABULARY))
    visit(kind, vocabulary, facts => `${kind} N {\n${facts}\n}\n`);
  for (const [role, vocabulary] of Object.entries(PLACE_VOCABULARY))
    visit(role, vocabulary, facts =>
      inVessel(`arrangement a {\nshaftline Port {\n${role} {\n${facts}\n}\n}\n}`),
    );
  for (const [kind, vocabulary] of Object.entries(VESSEL_VOCABULARY)) {
    const heads: Readonly<Record<string, string>> = {
      duty: ' medium',
      hull: ' planing',
      trial: ' "t"',
      revision: ' A',
    };
    visit(kind, vocabulary, facts => inVessel(`${kind}${heads[kind] ?? ''} {\n${facts}\n}`));
  }
  return found;
}

const inVessel: Wrap = members => `vessel V {\n${members}\n}\n`;

/** What a block may be headed by. */
export function headOf({ head }: BlockRow): string {
  if (!head) return '';
  const { kind } = head;
  if (kind.form === 'word') return ` ${kind.words[0]}`;
  if (kind.form === 'ratio') return ' 2:1';
  if (kind.form === 'text') return ' "t"';
  return kind.form === 'quantity' ? ' 2' : ' A';
}
