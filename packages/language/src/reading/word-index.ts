import type { BlockRow, Row, Vocabulary } from '@tailshaft/vocabulary';
import { type AtomTok, isTok } from './token.js';

export interface Match {
  readonly length: number;
  readonly row?: Row;
  readonly block?: BlockRow;
}

interface Candidate extends Match {
  readonly words: readonly string[];
}

/** Finds which property of a vocabulary begins at a token: the longest run of words wins. */
export class WordIndex {
  private static readonly made = new WeakMap<Vocabulary, WordIndex>();

  static of(vocabulary: Vocabulary): WordIndex {
    const had = WordIndex.made.get(vocabulary);
    if (had) return had;
    const made = new WordIndex(vocabulary);
    WordIndex.made.set(vocabulary, made);
    return made;
  }

  private readonly byFirst = new Map<string, Candidate[]>();

  private constructor(vocabulary: Vocabulary) {
    for (const row of vocabulary.rows) this.add(row.words, { row });
    for (const block of vocabulary.blocks) this.add(block.words, { block });
    for (const candidates of this.byFirst.values()) candidates.sort((a, b) => b.length - a.length);
  }

  match(atoms: readonly AtomTok[], index: number): Match | undefined {
    const first = atoms[index];
    if (!isTok(first)) return undefined;
    for (const candidate of this.byFirst.get(first.text) ?? []) {
      const all = candidate.words.every((word, ahead) => {
        const atom = atoms[index + ahead];
        return isTok(atom) && atom.text === word && atom.line === first.line;
      });
      if (all) return candidate;
    }
    return undefined;
  }

  get firstWords(): Iterable<string> {
    return this.byFirst.keys();
  }

  /** The properties that begin with this word. */
  startingWith(first: string): string[] {
    return (this.byFirst.get(first) ?? []).map(candidate => candidate.words.join(' ')).sort();
  }

  private add(text: string, found: { row: Row } | { block: BlockRow }): void {
    const words = text.split(' ');
    const list = this.byFirst.get(words[0]!) ?? [];
    list.push({ ...found, words, length: words.length });
    this.byFirst.set(words[0]!, list);
  }
}
