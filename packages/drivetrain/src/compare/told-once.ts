import { listed } from '@tailshaft/mechanics';
import type { FactChange, PartChange, SpecChange } from './change.js';
import type { EntryChange } from './entries.js';

/**
 * What a catalogue entry changed is told once, with the entry, above the vessels that it touches: a vessel says only
 * that its part changed with it, and what follows.
 */
export function toldAtEntries(changes: readonly SpecChange[], entries: readonly EntryChange[]): SpecChange[] {
  const known = entries.filter(one => one.facts.length > 0);
  if (known.length === 0) return [...changes];
  return changes.flatMap((change): SpecChange[] => {
    if (change.kind === 'silent' && ABOUT_ENTRIES.has(change.what)) {
      return known.some(one => change.words.startsWith(`${one.kind} ${one.name} keeps its name`))
        ? []
        : [change];
    }
    if (change.kind !== 'part' || change.fate !== 'modified') return [change];
    const behind = known.filter(one => change.facts.some(fact => isOf(fact, one)));
    if (behind.length === 0 || !change.facts.every(fact => behind.some(one => isOf(fact, one))))
      return [change];
    const names = listed(behind.map(one => `${one.kind} ${one.name}`));
    const told: PartChange = {
      ...change,
      words: `${change.role} changed with its catalogue entry, ${names}`,
    };
    return [told];
  });
}

const ABOUT_ENTRIES = new Set(['same name, other facts', 'source']);

/** A fact of a part goes by fewer words than that of its entry, which offers several ratios, or by more. */
function isOf(fact: FactChange, { facts }: EntryChange): boolean {
  return facts.some(
    one =>
      one.before === fact.before &&
      one.after === fact.after &&
      (one.what.endsWith(fact.what) || fact.what.endsWith(one.what)),
  );
}
