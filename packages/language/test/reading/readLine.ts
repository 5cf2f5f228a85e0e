import type { Fact } from '@tailshaft/drivetrain';
import {
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

/** Every row of every block once, with the words that lead to it. */
export function everyRow(): (readonly [path: string, Vocabulary, Row])[] {
  const seen = new Set<Vocabulary>();
  const found: (readonly [string, Vocabulary, Row])[] = [];
  const visit = (path: string, vocabulary: Vocabulary): void => {
    if (seen.has(vocabulary)) return;
    seen.add(vocabulary);
    for (const row of vocabulary.rows) found.push([`${path}: ${row.words}`, vocabulary, row]);
    for (const one of vocabulary.blocks) visit(`${path} ${one.words}`, one.block);
  };
  for (const table of [ENTRY_VOCABULARY, PLACE_VOCABULARY, VESSEL_VOCABULARY])
    for (const [kind, vocabulary] of Object.entries(table)) visit(kind, vocabulary);
  return found;
}
