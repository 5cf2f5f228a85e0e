import { outcomeWords, type VerdictMove } from '@tailshaft/drivetrain';
import { type Table, table } from '../document/blocks.js';
import type { Sheet } from '../sheet.js';

/** Checks that come out otherwise after than before: which way each moved, of what, and what it was and is. */
export function movedTable(
  sheet: Sheet,
  title: string,
  names: { readonly before: string; readonly after: string },
  moved: readonly { readonly where: string; readonly change: VerdictMove }[],
): Table {
  return table(
    title,
    [
      { title: 'Movement' },
      { title: 'Of' },
      { title: 'Check', wide: true },
      { title: names.before },
      { title: names.after },
    ],
    moved.map(({ where, change }) => [
      change.movement,
      where,
      sheet.forPaper ? sheet.rule(change.rule) : change.rule,
      outcomeWords(change.before),
      outcomeWords(change.after),
    ]),
  );
}
