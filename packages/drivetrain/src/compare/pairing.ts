/** Two lists brought together: what belongs together, what is left of each. */
export interface Paired<T> {
  readonly pairs: readonly (readonly [before: T, after: T])[];
  readonly removed: readonly T[];
  readonly added: readonly T[];
}

/** A name that both sides have, then whatever else tells which belong together, then likeness, the likest first. */
export interface PairBy<T> {
  readonly name: (one: T) => string;
  /** Where it stands, if that can tell: a pair is made where exactly one is left on each side. */
  readonly place?: (one: T) => string | undefined;
  /** What is declared of it, as a set of words. */
  readonly traits: (one: T) => ReadonlySet<string>;
  /** Share of common traits from which two are the same. */
  readonly likeness: number;
}

export function pairUp<T>(before: readonly T[], after: readonly T[], by: PairBy<T>): Paired<T> {
  const pairs: (readonly [T, T])[] = [];
  let [old, now] = [[...before], [...after]];
  const take = (one: T, other: T) => {
    pairs.push([one, other]);
    old = old.filter(each => each !== one);
    now = now.filter(each => each !== other);
  };
  for (const one of before) {
    const same = now.find(other => by.name(other) === by.name(one));
    if (same) take(one, same);
  }
  if (old.length > 0 && now.length > 0 && by.place) {
    for (const place of new Set(old.map(by.place))) {
      if (place === undefined) continue;
      const [here, there] = [old, now].map(list => list.filter(one => by.place!(one) === place));
      if (here!.length === 1 && there!.length === 1) take(here![0]!, there![0]!);
    }
  }
  for (const [one, other] of byLikeness(old, now, by))
    if (old.includes(one) && now.includes(other)) take(one, other);
  return { pairs, removed: old, added: now };
}

function byLikeness<T>(old: readonly T[], now: readonly T[], by: PairBy<T>): [T, T][] {
  if (old.length === 0 || now.length === 0) return [];
  const traits = new Map([...old, ...now].map(one => [one, by.traits(one)]));
  return old
    .flatMap(one =>
      now.map(other => ({ one, other, share: commonShare(traits.get(one)!, traits.get(other)!) })),
    )
    .filter(each => each.share >= by.likeness)
    .sort((a, b) => b.share - a.share)
    .map(({ one, other }) => [one, other]);
}

/** What two sets have in common, of all that either has. */
function commonShare(one: ReadonlySet<string>, other: ReadonlySet<string>): number {
  const common = [...one].filter(each => other.has(each)).length;
  const all = one.size + other.size - common;
  return all === 0 ? 0 : common / all;
}
