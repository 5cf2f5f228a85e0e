import type { Origin } from '@tailshaft/mechanics';
import type { Fact } from './fact.js';
import { Gathered } from './gathered.js';

/** A property that a piece of work looked for and that is not declared. */
export interface AbsentRead {
  /** The block that would hold it. */
  readonly host: Origin;
  readonly property: string;
  /** What would hold it: `engine`. */
  readonly of?: string;
  /** What it is taken as when it is left out, in words; undefined where its absence is an open question. */
  readonly takenAs?: string;
  /** It says what kind of thing its block is, so that nothing can be said of that without it. */
  readonly selects?: true;
}

/** Every declared fact that a piece of work looked at, and what it looked for in vain that is an open question. */
export class Reads {
  readonly #facts = new Gathered<Fact<unknown>>();
  readonly #notable = new Gathered<Fact<unknown>>();
  readonly #absent = new Gathered<AbsentRead>();
  /** What was read for those of several subjects of which nothing was said in the end. */
  readonly silent: Reads[] = [];

  get facts(): ReadonlySet<Fact<unknown>> {
    return this.#facts.all;
  }

  /** Those of the facts that are open, doubted or out of range: nearly always none. */
  get notable(): ReadonlySet<Fact<unknown>> {
    return this.#notable.all;
  }

  /** Nothing of it is in question. */
  get isPlain(): boolean {
    return this.#notable.isEmpty && this.#absent.isEmpty;
  }

  get absent(): Iterable<AbsentRead> {
    return this.#absent.all;
  }

  note(fact: Fact<unknown>, isPlain: boolean): void {
    this.#facts.add(fact);
    if (!isPlain) this.#notable.add(fact);
  }

  noteAbsent(read: AbsentRead): void {
    this.#absent.add(read);
  }

  take(other: Reads): void {
    this.#facts.take(other.#facts);
    this.#notable.take(other.#notable);
    this.#absent.take(other.#absent);
  }
}

let open: Reads | undefined;

/** Notes that the value of a declared fact was looked at, which is plain where it is known, proven and in its range. */
export function noteRead(fact: Fact<unknown>, isPlain: boolean): void {
  open?.note(fact, isPlain);
}

/**
 * Notes that a property was looked for and is not declared: always the same object for the same property of a block. What is
 * taken as something when it is left out, and chooses nothing, is no question to anybody.
 */
export function noteAbsent(read: AbsentRead): void {
  if (read.takenAs === undefined || read.selects) open?.noteAbsent(read);
}

/** Does a piece of work and tells what it read. What it read goes to no other recording. */
export function recorded<T>(work: () => T): { readonly value: T; readonly reads: Reads } {
  const outer = open;
  const own = new Reads();
  open = own;
  try {
    return { value: work(), reads: own };
  } finally {
    open = outer;
  }
}

const ownReads = new WeakMap<object, Reads>();

declare const APART: unique symbol;

/** Several results of which each rests on what its own making read: nothing but `each` makes such a list. */
export type Apart<T> = readonly T[] & { readonly [APART]: true };

/**
 * Makes what is to be said of each of several subjects, so that it rests on what its own making read, and not on what the
 * others did. Where nothing is said of one, what was read for it is kept: an open question among it is still one.
 */
export function each<S, T extends object>(
  subjects: Iterable<S>,
  make: (subject: S, index: number) => T | Apart<T> | undefined,
): Apart<T> {
  const made = [...subjects].flatMap((subject, index): readonly T[] => {
    const { value, reads } = recorded(() => make(subject, index));
    const results: readonly T[] = value === undefined ? [] : Array.isArray(value) ? value : [value as T];
    if (results.length === 0) open?.silent.push(reads);
    open?.silent.push(...reads.silent.map(one => merged(reads, one)));
    for (const one of results) ownReads.set(one, readsOf(one, reads));
    return results;
  });
  return made as readonly T[] as Apart<T>;
}

/** The same of a few checks that have nothing in common. */
export function apart<T extends object>(...makes: readonly (() => T | Apart<T> | undefined)[]): Apart<T> {
  return each(makes, make => make());
}

/** A copy of a result rests on what the result does. */
export function likewise<T extends object>(copy: T, result: object): T {
  const own = ownReads.get(result);
  if (own) ownReads.set(copy, own);
  return copy;
}

/** What a result rests on: what was read for all of them, and for it alone. */
export function readsOf(result: object, shared: Reads): Reads {
  const own = ownReads.get(result);
  return own ? merged(shared, own) : shared;
}

function merged(one: Reads, other: Reads): Reads {
  const both = new Reads();
  both.take(one);
  both.take(other);
  return both;
}

/** Does a piece of work whose reading proves nothing: which unit a figure is told in, the name of a part. */
export function aside<T>(work: () => T): T {
  const outer = open;
  open = undefined;
  try {
    return work();
  } finally {
    open = outer;
  }
}

/** Whether something is said at all. That alone proves nothing: a check rests on what it then reads. */
export function isSaid(look: () => unknown): boolean {
  return aside(look) !== undefined;
}

let openTouched: Gathered<number> | undefined;

/** Notes that a declared fact was looked at, by its number, whatever the reading proves. */
export function noteTouched(fact: number): void {
  openTouched?.add(fact);
}

/** Does a piece of work and tells the numbers of all declared facts that it looked at; whoever asked for it looked at them too. */
export function touching<T>(work: () => T): { readonly value: T; readonly touched: Gathered<number> } {
  const outer = openTouched;
  const own = new Gathered<number>();
  openTouched = own;
  try {
    return { value: work(), touched: own };
  } finally {
    openTouched = outer;
    outer?.take(own);
  }
}

let openSlots: Gathered<number> | undefined;

/**
 * Notes that a place was looked at which a study fills otherwise for each of its candidates, whatever the reading proves. What
 * looked at no such place, or finds the same in all that it looked at, comes to the same result.
 */
export function noteSlot(slot: number): void {
  openSlots?.add(slot);
}

/** Does a piece of work and tells which varied places it looked at; whoever asked for it looked at them too. */
export function slotted<T>(work: () => T): { readonly value: T; readonly slots: ReadonlySet<number> } {
  const outer = openSlots;
  const own = new Gathered<number>();
  openSlots = own;
  try {
    return { value: work(), slots: own.all };
  } finally {
    openSlots = outer;
    outer?.take(own);
  }
}

/** A result with everything that its making looked at. */
interface Made {
  readonly value: unknown;
  readonly reads: Reads;
  readonly slots: Gathered<number>;
  readonly touched: Gathered<number>;
}

function made(make: () => unknown): Made {
  const outer = { open, openTouched, openSlots };
  const reads = new Reads();
  const touched = new Gathered<number>();
  const slots = new Gathered<number>();
  open = reads;
  openTouched = touched;
  openSlots = slots;
  try {
    return { value: make(), reads, touched, slots };
  } finally {
    ({ open, openTouched, openSlots } = outer);
    // What broke off half way was looked at too.
    openTouched?.take(touched);
    openSlots?.take(slots);
  }
}

/** Results kept by key. Whoever takes one rests on what its making read, as if it had been made for him. */
export class Kept {
  readonly #made = new Map<string, Made>();

  once<T>(key: string, make: () => T): T {
    let had = this.#made.get(key);
    if (!had) {
      had = made(make);
      this.#made.set(key, had);
    }
    replay(had);
    return had.value as T;
  }
}

/** As `Kept`, by object: what is worked out once for each. */
export class KeptBy<K extends object> {
  readonly #made = new WeakMap<K, Made>();

  once<T>(key: K, make: () => T): T {
    let had = this.#made.get(key);
    if (!had) {
      had = made(make);
      this.#made.set(key, had);
    }
    replay(had);
    return had.value as T;
  }
}

function replay({ reads, slots, touched }: Made): void {
  openSlots?.take(slots);
  openTouched?.take(touched);
  open?.take(reads);
}
