/**
 * What was gathered on the way of a piece of work, in the order of its finding, each once. What another piece had gathered is
 * taken over whole and laid out only when somebody asks: hundreds of checks rest on the same few results.
 */
export class Gathered<T> {
  #own: Set<T | Gathered<T>> | undefined;
  #all: ReadonlySet<T> | undefined;

  get isEmpty(): boolean {
    return this.#own === undefined;
  }

  add(one: T): void {
    this.#own ??= new Set();
    this.#own.add(one);
    this.#all = undefined;
  }

  /** Takes over what was gathered elsewhere and no longer grows. */
  take(other: Gathered<T>): void {
    if (other.isEmpty) return;
    this.#own ??= new Set();
    this.#own.add(other);
    this.#all = undefined;
  }

  get all(): ReadonlySet<T> {
    this.#all ??= this.#laidOut();
    return this.#all;
  }

  /** Whether any of it is such a one. `known` keeps the answers for what several have taken over. */
  has(isSuch: (one: T) => boolean, known: Map<Gathered<T>, boolean>): boolean {
    if (!this.#own) return false;
    const had = known.get(this);
    if (had !== undefined) return had;
    let found = false;
    for (const one of this.#own) {
      found = one instanceof Gathered ? one.has(isSuch, known) : isSuch(one);
      if (found) break;
    }
    known.set(this, found);
    return found;
  }

  #laidOut(): ReadonlySet<T> {
    if (!this.#own) return NONE as ReadonlySet<T>;
    const all = new Set<T>();
    for (const one of this.#own) {
      if (one instanceof Gathered) for (const each of one.all) all.add(each);
      else all.add(one);
    }
    return all;
  }
}

const NONE: ReadonlySet<unknown> = new Set();
