import type { BlockRow, Row, Vocabulary } from '@tailshaft/vocabulary';
import { expect, it } from 'vitest';
import { everyRow, headOf, readLine } from './read-line.js';

const vocabularies = [...new Set(everyRow().map(([, vocabulary]) => vocabulary))];

/** A block's fact and a fact of what is around it, where no word of the block begins as the second does. */
function* pairs(): Iterable<readonly [string, Vocabulary, BlockRow, Row]> {
  for (const around of vocabularies)
    for (const block of around.blocks) {
      const own = new Set([...block.block.rows, ...block.block.blocks].map(one => one.words.split(' ')[0]));
      const outer = around.rows.find(row => !own.has(row.words.split(' ')[0]) && !row.bare);
      const inner = block.block.rows.find(row => !row.bare);
      if (!outer || !inner) continue;
      yield [`${block.words}${headOf(block)} ${inner.example}  ${outer.example}`, around, block, outer];
    }
}

it.each([...pairs()])('%s: the last fact is of the block around', (text, around, block, outer) => {
  const { reading } = readLine(around, text);
  expect(reading.problems.map(one => one.message)).toEqual([]);
  expect(reading.nested.map(one => one.row)).toEqual([block]);
  expect(reading.facts.map(one => one.row)).toEqual([outer]);
  // What is added to the inner block stands before that fact, not behind it.
  expect(text.slice(reading.nested[0]!.host.headEnd).trim()).toBe(outer.example);
});
