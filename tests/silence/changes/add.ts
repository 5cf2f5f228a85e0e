import type { Change } from '../change.js';
import type { Judged } from '../rejudge.js';
import { blocksOf, edited } from '../written.js';
import { blockWords } from './names.js';

/** (i) Each property that a block knows and does not say, as its own example writes it. */
export function* add({ text, check }: Judged): Generator<Change> {
  for (const [index, one] of blocksOf(check).entries()) {
    const { block, owner } = one;
    const open = block.host.block?.start;
    if (open === undefined || owner.kind === 'line') continue;
    const said = new Set(block.facts.map(fact => fact.row.words));
    // What stands beneath a part is known: saying something else above it is no addition.
    if (owner.kind === 'part') {
      if (owner.part.action === 'retain' || owner.part.action === 'modify' || owner.line.mirrors) continue;
      const entry = check.entries.find(
        other => other.reading.kind === owner.part.role && other.reading.name === owner.part.name,
      );
      for (const fact of entry?.reading.facts.facts ?? []) said.add(fact.row.words);
      for (const nested of entry?.reading.facts.nested ?? []) said.add(nested.row.words);
    }
    for (const row of block.host.vocabulary.rows) {
      if (said.has(row.words)) continue;
      yield {
        letter: 'i',
        what: `with ${row.example} in ${blockWords(one)} (${index})`,
        about: row.words,
        text: edited(text, { start: open + 1, end: open + 1, text: ` ${row.example}\n` }),
      };
    }
  }
}
