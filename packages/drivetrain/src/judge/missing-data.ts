import type { Origin } from '@tailshaft/mechanics';
import type { Missing, Verdict } from './verdict.js';

/** One datum that is missing, with every check that waits for it. */
export interface MissingDatum {
  readonly gap: Missing;
  readonly waiting: readonly Verdict[];
  /** How much its answer settles: what is graver weighs more, and a check that waits for two data is half settled by each. */
  readonly value: number;
}

/** Checks that cannot tell, as everything that is counted or listed takes them: what is not known of the vessel as found is asked for by the proposals that rest on it. */
export function openChecks(verdicts: readonly Verdict[]): Verdict[] {
  return verdicts.filter(isOpenCheck);
}

export function isOpenCheck({ outcome, asFound }: Verdict): boolean {
  return outcome === 'cannot tell' && !asFound;
}

/** What an open check waits for, with what each datum is worth to it. */
export function gapsOf(
  verdict: Verdict,
): { readonly gap: Missing; readonly place: Origin; readonly worth: number }[] {
  if (!isOpenCheck(verdict)) return [];
  const worth = WEIGHT[verdict.severity] / verdict.missing.length;
  return verdict.missing.map(gap => ({ gap, place: gap.at ?? gap.host, worth }));
}

const WEIGHT = { error: 4, warning: 2, note: 1 } as const;

/**
 * Each missing datum once, the one whose answer settles most first. A datum is known by its property and by where it is to
 * be written; `keyOf` says which places are one, where two objects may stand for the same.
 */
export function missingData(
  verdicts: readonly Verdict[],
  keyOf: (place: Origin) => unknown = place => place,
): MissingDatum[] {
  const byPlace = new Map<unknown, Map<string, { gap: Missing; waiting: Verdict[]; value: number }>>();
  for (const verdict of verdicts) {
    for (const { gap, place, worth } of gapsOf(verdict)) {
      const key = keyOf(place);
      const here = byPlace.get(key) ?? new Map();
      byPlace.set(key, here);
      const had = here.get(gap.property) ?? { gap, waiting: [], value: 0 };
      here.set(gap.property, had);
      had.waiting.push(verdict);
      had.value += worth;
    }
  }
  const all = [...byPlace.values()].flatMap(here => [...here.values()]);
  return all.sort((one, other) => other.value - one.value);
}
