import { leafAt, noteSlot } from '../model/reads.js';
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

  /** Whether something stands there in some candidates and nothing in others. */
  get comesAndGoes(): boolean {
    return this.#distinct.includes(undefined);
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
  readonly #views = new Map<string, View>();

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

  /** Gives the objects the fields that this candidate has, and no others. */
  stand(leaves: readonly number[]): void {
    for (const { made, comesAndGoes } of this.#views.values())
      for (const [field, slot] of comesAndGoes) {
        const enumerable = this.#slots[slot]!.valueOf(leaves[slot]!) !== undefined;
        if (Object.getOwnPropertyDescriptor(made, field)!.enumerable !== enumerable)
          Object.defineProperty(made, field, { enumerable });
      }
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
      known.set(field, this.reserve());
      this.#byPlace.set(place, known);
      grown = true;
    };
    if (base !== now) {
      for (const field of Object.keys(base)) compare(field);
      for (const field of Object.keys(now)) if (!Object.hasOwn(base, field)) compare(field);
    }
    for (const [field, number] of known) {
      const slot = this.#slots[number]!;
      const before = slot.comesAndGoes;
      leaves[number] = slot.leafOf(ownOf(now, field));
      if (slot.comesAndGoes !== before) grown = true;
    }
    return grown;
  }

  /**
   * One object for all candidates: it has in its varied places what the candidate has that stands now, and in all others what the
   * first one has.
   */
  view<T extends object>(place: string, base: T): T {
    const known = this.#byPlace.get(place);
    if (!known) return base;
    const had = this.#views.get(place);
    if (had) return had.seen as T;
    const made: object = Object.create(Object.getPrototypeOf(base));
    for (const [field, value] of Object.entries(base)) if (!known.has(field)) define(made, field, value);
    for (const [field, slot] of known) this.#look(made, field, slot);
    const comesAndGoes = [...known].filter(([, slot]) => this.#slots[slot]!.comesAndGoes);
    const seen = comesAndGoes.length > 0 ? tellingItsFields(made, comesAndGoes) : made;
    this.#views.set(place, { made, seen, comesAndGoes });
    return seen as T;
  }

  #look(made: object, field: string, slot: number): void {
    const proto = Object.getPrototypeOf(made) as object;
    const place = this.#slots[slot]!;
    Object.defineProperty(made, field, {
      enumerable: true,
      configurable: true,
      get() {
        const value = place.valueOf(leafAt(slot));
        // What is not there is told of by what the object is made of.
        return value === undefined ? Reflect.get(proto, field, this) : value;
      },
    });
  }
}

interface View {
  readonly made: object;
  /** The object as others see it. */
  readonly seen: object;
  readonly comesAndGoes: readonly (readonly [field: string, slot: number])[];
}

/** Whoever asks which fields there are looks at those that some candidates have and others have not. */
function tellingItsFields(made: object, comesAndGoes: View['comesAndGoes']): object {
  const look = () => {
    for (const [, slot] of comesAndGoes) noteSlot(slot);
  };
  return new Proxy(made, {
    ownKeys: target => {
      look();
      return Reflect.ownKeys(target);
    },
    has: (target, key) => {
      look();
      return Reflect.has(target, key);
    },
    getOwnPropertyDescriptor: (target, key) => {
      look();
      return Reflect.getOwnPropertyDescriptor(target, key);
    },
  });
}

function define(made: object, field: string, value: unknown): void {
  Object.defineProperty(made, field, { value, enumerable: true, writable: true, configurable: true });
}

function ownOf(fields: Fields, field: string): unknown {
  return Object.hasOwn(fields, field) ? fields[field] : undefined;
}
