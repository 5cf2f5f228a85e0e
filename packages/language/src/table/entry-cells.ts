import type { BlockReading } from '../reading/place.js';
import { joined } from './columns.js';

/** Everything that a block says, as it is written, by its path. A block that says nothing has its path and no text. */
export function cellsOf(block: BlockReading, text: string): Map<string, string> {
  const cells = new Map<string, string>();
  gather(block, text, [], cells);
  return cells;
}

function gather(
  block: BlockReading,
  text: string,
  blocks: readonly string[],
  cells: Map<string, string>,
): void {
  const seen = new Map<string, number>();
  const numbered = (words: string) => {
    const count = (seen.get(words) ?? 0) + 1;
    seen.set(words, count);
    return count === 1 ? words : `${words} #${count}`;
  };
  for (const { row, value, evidence } of block.facts) {
    if (!value) continue;
    const written = text.slice(value.start, Math.max(value.end, evidence?.end ?? 0));
    cells.set(joined(blocks, numbered(row.words)), oneLine(written));
  }
  for (const { row, head, host } of block.nested) {
    const said = head?.value ? ` ${oneLine(text.slice(head.value.start, head.value.end))}` : '';
    const inside = [...blocks, numbered(`${row.words}${said}`)];
    const inner = host.reading;
    if (!inner || inner.facts.length + inner.nested.length === 0) cells.set(joined(inside, NOTHING), PRESENT);
    else gather(inner, text, inside, cells);
  }
}

/** The property of a block that is there and says nothing. */
export const NOTHING = 'present';
const PRESENT = 'yes';

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
