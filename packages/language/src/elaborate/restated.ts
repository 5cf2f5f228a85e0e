import type { BlockRow, Fact, Restated, Vocabulary } from '@tailshaft/vocabulary';
import { isSameBlock, isSameHead } from './overlay.js';

type Fields = Readonly<Record<string, unknown>>;

/** What is said at the place of a part that its catalogue entry says as well, with both. */
export function restatedAt(entry: Fields, place: Fields, vocabulary: Vocabulary, of = ''): Restated[] {
  const own = vocabulary.rows.flatMap((row): Restated[] => {
    const [inEntry, atPlace] = [entry[row.field], place[row.field]];
    if (row.many || !isFact(inEntry) || !isFact(atPlace)) return [];
    if (inEntry.value === undefined || atPlace.value === undefined) return [];
    return [{ property: `${of}${row.words}`, inEntry, atPlace, same: isSame(inEntry, atPlace) }];
  });
  const nested = vocabulary.blocks.flatMap(block => {
    const [inEntry, atPlace] = [entry[block.field], place[block.field]];
    if (Array.isArray(inEntry) && Array.isArray(atPlace))
      return (atPlace as Fields[]).flatMap(one => {
        const isSame = block.whole ? isSameHead : isSameBlock;
        const own = (inEntry as Fields[]).find(other => isSame(block, one, other));
        const words = `${of}${block.words} ${headOf(block, one)} `;
        return own ? restatedAt(own, one, block.block, words) : [];
      });
    if (block.many || !isBlock(inEntry) || !isBlock(atPlace)) return [];
    return restatedAt(inEntry, atPlace, block.block, `${of}${block.words} `);
  });
  return [...own, ...nested];
}

function headOf({ head }: BlockRow, one: Fields): string {
  const fact = head && one[`${head.field}Fact`];
  return isFact(fact) ? fact.written : '';
}

function isFact(one: unknown): one is Fact<unknown> {
  return typeof one === 'object' && one !== null && 'written' in one;
}

function isBlock(one: unknown): one is Fields {
  return typeof one === 'object' && one !== null && !Array.isArray(one);
}

/** The same number in whatever unit, or the same words. */
function isSame(one: Fact<unknown>, other: Fact<unknown>): boolean {
  const [a, b] = [one.value, other.value].map(value => (value as { si?: number }).si);
  if (a !== undefined && b !== undefined) return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
  return one.written.trim() === other.written.trim();
}
