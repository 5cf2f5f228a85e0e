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
  /** Likeness from which a common name is never doubted; without it any difference is looked at. */
  readonly unlike?: number;
}

export function pairUp<T>(before: readonly T[], after: readonly T[], by: PairBy<T>): Paired<T> {
  const pairs: (readonly [T, T])[] = [];
  let [old, now] = [[...before], [...after]];
  const take = (one: T, other: T) => {
    pairs.push([one, other]);
    old = old.filter(each => each !== one);
    now = now.filter(each => each !== other);
  };
  for (const [one, other] of byName(before, after, by)) take(one, other);
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

/** Pairs of one name, save where names went round among several that stay what they were: those by what they are. */
function byName<T>(before: readonly T[], after: readonly T[], by: PairBy<T>): (readonly [T, T])[] {
  const later = new Map<string, T>();
  for (const other of after) if (!later.has(by.name(other))) later.set(by.name(other), other);
  const named = new Map<T, T>();
  for (const one of before) {
    const same = later.get(by.name(one));
    if (same !== undefined) named.set(one, same);
    later.delete(by.name(one));
  }
  return [...wentRound(named, by)];
}

/** The pairs that names make, with those put right whose likeness leads through others of the list and back. */
function wentRound<T>(named: ReadonlyMap<T, T>, by: PairBy<T>): ReadonlyMap<T, T> {
  if (named.size < 2) return named;
  const alike = likenessBy(by);
  const unlike = [...named].filter(([one, same]) => alike(one, same) < (by.unlike ?? 1));
  if (unlike.length < 2) return named;
  const ownerOf = new Map(unlike.map(([one, same]) => [same, one]));
  const next = new Map<T, T>();
  for (const [one, same] of unlike) {
    const there = unlike.map(([, is]) => is).filter(is => by.place?.(is) === by.place?.(one));
    const likest = there.reduce((best, is) => (alike(one, is) > alike(one, best) ? is : best), same);
    if (1 - alike(one, likest) <= CLEARLY * (1 - alike(one, same))) next.set(one, likest);
  }
  const found = new Map(named);
  for (const one of next.keys()) {
    const round = new Set<T | undefined>([undefined]);
    let at: T | undefined = one;
    while (!round.has(at)) {
      round.add(at);
      const is: T | undefined = next.get(at!);
      at = is === undefined ? undefined : ownerOf.get(is);
    }
    if (at === one) found.set(one, next.get(one)!);
  }
  return found;
}

/** Something that only changed its name differs from what it was by less than this share of what the names would have it differ. */
const CLEARLY = 0.25;

function byLikeness<T>(old: readonly T[], now: readonly T[], by: PairBy<T>): [T, T][] {
  if (old.length === 0 || now.length === 0) return [];
  const alike = likenessBy(by);
  return old
    .flatMap(one => now.map(other => ({ one, other, share: alike(one, other) })))
    .filter(each => each.share >= by.likeness)
    .sort((a, b) => b.share - a.share)
    .map(({ one, other }) => [one, other]);
}

/** How like two are, with the traits of each worked out once. */
function likenessBy<T>({ traits }: PairBy<T>): (one: T, other: T) => number {
  const known = new Map<T, ReadonlySet<string>>();
  const of = (one: T) => {
    const had = known.get(one) ?? traits(one);
    known.set(one, had);
    return had;
  };
  return (one, other) => commonShare(of(one), of(other));
}

/** What two sets have in common, of all that either has. */
export function commonShare(one: ReadonlySet<string>, other: ReadonlySet<string>): number {
  const common = [...one].filter(each => other.has(each)).length;
  const all = one.size + other.size - common;
  return all === 0 ? 0 : common / all;
}
