/** What stands in each varied place of one candidate, by number. */
export type Leaves = readonly number[];

/** So many results are kept of one piece of work before it must have paid. */
const TRIED = 256;

/**
 * Results of one piece of work by what it found in the varied places that it looked at. A candidate that has the same in all
 * of these has the same result. Work of which hardly a result is ever asked for again is not kept.
 */
export class SlotMemo<T> {
  #groups: { readonly slots: readonly number[]; readonly results: Map<string, T> }[] = [];
  #kept = 0;
  #found = 0;
  #pays = true;

  find(leaves: Leaves): T | undefined {
    for (const { slots, results } of this.#groups) {
      const had = results.get(keyOf(slots, leaves));
      if (had === undefined) continue;
      this.#found += 1;
      return had;
    }
    return undefined;
  }

  keep(slots: ReadonlySet<number>, leaves: Leaves, result: T): void {
    if (!this.#pays) return;
    this.#kept += 1;
    if (this.#kept > TRIED && this.#found < this.#kept) {
      this.#pays = false;
      this.#groups = this.#groups.filter(one => one.slots.length === 0);
      return;
    }
    const sorted = [...slots].sort((a, b) => a - b);
    const key = sorted.join();
    let group = this.#groups.find(one => one.slots.join() === key);
    if (!group) {
      group = { slots: sorted, results: new Map() };
      this.#groups.push(group);
    }
    group.results.set(keyOf(sorted, leaves), result);
  }
}

function keyOf(slots: readonly number[], leaves: Leaves): string {
  let key = '';
  for (const slot of slots) key += `${leaves[slot]},`;
  return key;
}
