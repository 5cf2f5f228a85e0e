import type { Change, Letter, Lost } from '../change.js';
import type { Judged } from '../rejudge.js';
import { fateOf, newRefusals, pairs, type Tally, tallies } from './tally.js';

/**
 * The same was said in other words: every failure is still one, and there is no new one. Undefined where the other words
 * cannot be read.
 */
export function compareSame(change: Change, before: Judged, after: Judged): readonly Lost[] | undefined {
  if (newRefusals(before, after).length > 0) return undefined;
  const now = tallies(after);
  const found = pairs(tallies(before, change.renamed), now).flatMap(({ was, is }) => {
    const { rule, subject } = was;
    if (change.touches?.includes(rule)) return [];
    const fate = fateOf(was, is);
    if (fate) return [{ rule, subject, how: `fails became ${fate}` }];
    if (REPEATS.includes(change.letter) && is.fails > was.fails && !isNew(change, subject))
      return [{ rule, subject, how: `${wordOf(was)} became fails` }];
    // A name decides nothing, so that a new one changes nothing at all.
    if (change.letter !== 'h') return [];
    if (is.fails === was.fails && is.holds === was.holds && is.open === was.open) return [];
    return [{ rule, subject, how: `${wordOf(was)} became ${wordOf(is)}` }];
  });
  return [...found, ...againElsewhere(change, now), ...notAgain(change, now)];
}

/** Ways of saying exactly the same; a modification says something new, which may fail. */
const REPEATS: readonly Letter[] = ['b', 'c', 'f', 'g', 'h'];

/** Whether it is of an arrangement that the change puts in. */
function isNew({ adds }: Change, subject: string): boolean {
  return adds !== undefined && (subject === adds || subject.startsWith(`${adds}.`));
}

/** What an arrangement that changes nothing fails in and the one that it repeats does not. */
function againElsewhere(change: Change, now: ReadonlyMap<string, Tally>): Lost[] {
  const { adds = '', repeats } = change;
  if (!repeats) return [];
  return [...now.values()].flatMap(is => {
    const { rule, subject } = is;
    if (!isNew(change, subject)) return [];
    const there = now.get(`${rule} ${repeats}${subject.slice(adds.length)}`);
    if (is.fails <= (there?.fails ?? 0)) return [];
    return [{ rule, subject, how: `${there ? wordOf(there) : 'silence'} became fails when repeated` }];
  });
}

/** What an arrangement fails in and the one behind it, which keeps all of it, does not. */
function notAgain({ adds = '', repeats = '', about }: Change, now: ReadonlyMap<string, Tally>): Lost[] {
  if (about !== 'behind') return [];
  return [...now.values()].flatMap(was => {
    const { rule, subject } = was;
    if (was.fails === 0 || !(subject === repeats || subject.startsWith(`${repeats}.`))) return [];
    const there = now.get(`${rule} ${adds}${subject.slice(repeats.length)}`);
    if ((there?.fails ?? 0) >= was.fails) return [];
    return [{ rule, subject, how: `fails became ${there ? wordOf(there) : 'silence'} when kept` }];
  });
}

function wordOf({ fails, open, holds }: { fails: number; open: number; holds: number }): string {
  if (fails > 0) return 'fails';
  if (open > 0) return 'cannot tell';
  return holds > 0 ? 'holds' : 'silence';
}
