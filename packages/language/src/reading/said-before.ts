import { type Fact, meaningOf } from '@tailshaft/drivetrain';
import type { BlockRow } from '@tailshaft/vocabulary';
import type { BlockReading, Host } from './place.js';

/** Whether a block before this one has the same head: the model knows one of each, and would pass the other over. */
export function isSaidBefore(
  reading: BlockReading,
  row: BlockRow,
  host: Host,
  head: Fact<unknown> | undefined,
): boolean {
  if (row.again === 'freely' || (row.head && head?.value === undefined)) return false;
  const key = keyOf(row, host, head);
  return reading.nested.some(
    one => one.host !== host && one.row === row && keyOf(one.row, one.host, one.head?.fact) === key,
  );
}

/** What tells a block from its likes: its head, and the properties by which several with one head differ. */
function keyOf({ again }: BlockRow, { reading }: Host, head: Fact<unknown> | undefined): string {
  const apart: readonly string[] = again === undefined || again === 'freely' ? [] : again;
  const said = apart.map(words => {
    const fact = reading?.facts.find(one => one.row.words === words)?.fact;
    return fact === undefined ? '' : meaningOf(fact.value ?? fact.written);
  });
  return [meaningOf(head?.value), ...said].join('; ');
}
