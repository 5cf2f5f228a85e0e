import { noteSlot } from '../model/reads.js';
import { same } from './same.js';

type Fields = Readonly<Record<string, unknown>>;

/** A varied place: one field of one object of the model, with everything that was found in it so far. */
class Slot {
  readonly #known = new Map<unknown, number>();
  readonly #passing = new WeakMap<object, number>();
  readonly #distinct: unknown[] = [];

  /** A number that is the same for what says the same. */
  leafOf(value: unknown): number {
    const had = this.#known.get(value) ?? (isObject(value) ? this.#passing.get(value) : undefined);
    if (had !== undefined) return had;
    const alike = this.#distinct.findIndex(one => same(one, value));
    if (alike >= 0) {
      if (isObject(value)) this.#passing.set(value, alike);
      return alike;
    }
    const leaf = this.#distinct.push(value) - 1;
    this.#known.set(value, leaf);
    return leaf;
  }

  valueOf(leaf: number): unknown {
    return this.#distinct[leaf];
  }
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}

/**
 * The varied places of a model, found by comparing each candidate with the first one. Whoever looks at one is noted, so that
 * it is known what a result does not depend on.
 */
export class Slots {
  readonly #slots: Slot[] = [];
  readonly #byPlace = new Map<string, Map<string, number>>();
  readonly #views = new Map<string, object>();

  /** A place for something that no two candidates share. */
  reserve(): number {
    return this.#slots.push(new Slot()) - 1;
  }

  get size(): number {
    return this.#slots.length;
  }

  /** Forgets all objects that were made: they do not tell of a place that was found since. */
  forgetViews(): void {
    this.#views.clear();
  }

  /**
   * What an object of a candidate has in its varied places, into `leaves`; true where it differs from the first one's in a
   * place that was not known to vary.
   */
  find(place: string, base: Fields, now: Fields, leaves: number[]): boolean {
    const known = this.#byPlace.get(place) ?? new Map<string, number>();
    let grown = false;
    const compare = (field: string) => {
      if (known.has(field)) return;
      const [was, is] = [ownOf(base, field), ownOf(now, field)];
      if (was === is || same(was, is)) return;
      known.set(field, this.#slots.push(new Slot()) - 1);
      this.#byPlace.set(place, known);
      grown = true;
    };
    if (base !== now) {
      for (const field of Object.keys(base)) compare(field);
      for (const field of Object.keys(now)) if (!Object.hasOwn(base, field)) compare(field);
    }
    for (const [field, slot] of known) leaves[slot] = this.#slots[slot]!.leafOf(ownOf(now, field));
    return grown;
  }

  /** The object with what the candidate has in its varied places; all else is what the first one has. */
  view<T extends object>(place: string, base: T, leaves: readonly number[]): T {
    const known = this.#byPlace.get(place);
    if (!known) return base;
    const key = `${place} ${[...known.values()].map(slot => leaves[slot]).join()}`;
    const had = this.#views.get(key);
    if (had) return had as T;
    const made: object = Object.create(Object.getPrototypeOf(base));
    for (const [field, value] of Object.entries(base)) if (!known.has(field)) define(made, field, value);
    for (const [field, slot] of known) this.#look(made, field, slot, leaves[slot]!);
    this.#views.set(key, made);
    return made as T;
  }

  #look(made: object, field: string, slot: number, leaf: number): void {
    const value = this.#slots[slot]!.valueOf(leaf);
    const proto = Object.getPrototypeOf(made) as object;
    Object.defineProperty(made, field, {
      enumerable: value !== undefined,
      get() {
        noteSlot(slot);
        // What is not there is told of by what the object is made of.
        return value === undefined ? Reflect.get(proto, field, this) : value;
      },
    });
  }
}

function define(made: object, field: string, value: unknown): void {
  Object.defineProperty(made, field, { value, enumerable: true, writable: true, configurable: true });
}

function ownOf(fields: Fields, field: string): unknown {
  return Object.hasOwn(fields, field) ? fields[field] : undefined;
}
