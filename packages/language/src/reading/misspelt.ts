import { editDistance } from '@tailshaft/mechanics';

/** The known spelling nearest to what was typed, when it is near enough to be meant. */
export function nearest(typed: string, known: Iterable<string>): string | undefined {
  const lower = typed.toLowerCase();
  const all = [...known];
  let best: string | undefined;
  let least = Math.max(1, Math.floor(typed.length / 3)) + 1;
  for (const one of all) {
    const distance = one.toLowerCase() === lower ? 0 : editDistance(lower, one.toLowerCase());
    if (distance < least || (distance === least && best === undefined)) {
      if (distance >= Math.max(1, Math.floor(typed.length / 3)) + 1) continue;
      least = distance;
      best = one;
    }
  }
  if (best) return best;
  if (typed.length < 3) return undefined;
  const begun = all.filter(one => one.toLowerCase().startsWith(lower));
  return begun.length === 1 ? begun[0] : undefined;
}
