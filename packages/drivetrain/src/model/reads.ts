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

/** What stands in each varied place of the candidate that is looked at, by the number of the place. */
let standing: readonly number[] = [];

/** From here on this candidate of a study is the one that is looked at. */
export function standsNow(leaves: readonly number[]): void {
  standing = leaves;
}

/** What stands in a varied place; that it was looked at is noted. */
export function leafAt(slot: number): number {
  openSlots?.add(slot);
  return standing[slot]!;
}

/** A result with everything that its making looked at. */
export interface Made {
  readonly value: unknown;
  readonly reads: Reads;
  readonly slots: Gathered<number>;
  /** Those places one by one, and what was found in them. */
  readonly places: readonly number[];
  readonly leaves: readonly number[];
  /** Absent where it was made for a study, in which nobody asks. */
  readonly touched?: Gathered<number>;
}

function madeBy(make: () => unknown): Made {
  const outer = { open, openTouched, openSlots };
  const reads = new Reads();
  const touched = standing.length > 0 && !openTouched ? undefined : new Gathered<number>();
  const slots = new Gathered<number>();
  open = reads;
  openTouched = touched;
  openSlots = slots;
  let value: unknown;
  try {
    value = make();
  } finally {
    ({ open, openTouched, openSlots } = outer);
    // What broke off half way was looked at too.
    if (touched) openTouched?.take(touched);
    openSlots?.take(slots);
  }
  const places = slots.isEmpty ? NOWHERE : [...slots.all].sort((a, b) => a - b);
  const leaves = slots.isEmpty ? NOWHERE : places.map(slot => standing[slot]!);
  return { value, reads, slots, places, leaves, ...(touched ? { touched } : {}) };
}

const NOWHERE: readonly number[] = [];

/** So many results are kept of one piece of work that looked at the same places. */
const MOST = 32;

/** Results of one piece of work, one for each content of the varied places that it looked at. */
class Results {
  #last: Made | undefined;
  #groups: { readonly places: readonly number[]; readonly made: Map<string, Made> }[] | undefined;

  constructor(private readonly most: number) {}

  /** The result for what stands there now. */
  find(): Made | undefined {
    const last = this.#last;
    if (!last) return undefined;
    // Made for a study, it does not tell what it touched.
    if (openTouched && !last.touched) return undefined;
    if (isAsNow(last)) return last;
    for (const { places, made } of this.#groups!) {
      const had = made.get(keyOf(places));
      if (had) {
        this.#last = had;
        return had;
      }
    }
    return undefined;
  }

  keep(one: Made): void {
    this.#last = one;
    const { places } = one;
    if (places.length === 0) return;
    this.#groups ??= [];
    let group = this.#groups.find(other => isSame(other.places, places));
    if (!group) {
      group = { places, made: new Map() };
      this.#groups.push(group);
    }
    if (group.made.size >= this.most) group.made.delete(group.made.keys().next().value!);
    group.made.set(keyOf(places), one);
  }
}

function isAsNow({ places, leaves }: Made): boolean {
  for (let at = 0; at < places.length; at += 1) if (standing[places[at]!] !== leaves[at]) return false;
  return true;
}

function isSame(some: readonly number[], others: readonly number[]): boolean {
  return some.length === others.length && some.every((one, at) => one === others[at]);
}

function keyOf(places: readonly number[]): string {
  let key = '';
  for (const slot of places) key += `${standing[slot]},`;
  return key;
}

function onceIn(results: Results, make: () => unknown): Made {
  let had = results.find();
  if (!had) {
    had = madeBy(make);
    results.keep(had);
  }
  replay(had);
  return had;
}

/**
 * Results kept by key. Whoever takes one rests on what its making read, as if it had been made for him. In a study it is made
 * anew for a candidate that has something else in a varied place that its making looked at: so nothing but the key, and what is
 * the same for all candidates, may come in from outside of `make`.
 */
export class Kept {
  readonly #results = new Map<string, Results>();

  once<T>(key: string, make: () => T): T {
    let results = this.#results.get(key);
    if (!results) {
      results = new Results(MOST);
      this.#results.set(key, results);
    }
    return onceIn(results, make).value as T;
  }
}

/** As `Kept`, by object: what is worked out once for each. */
export class KeptBy<K extends object> {
  readonly #results = new WeakMap<K, Results>();

  constructor(private readonly most = MOST) {}

  once<T>(key: K, make: () => T): T {
    return this.made(key, make).value as T;
  }

  /** The result with what its making looked at. */
  made(key: K, make: () => unknown): Made {
    let results = this.#results.get(key);
    if (!results) {
      results = new Results(this.most);
      this.#results.set(key, results);
    }
    return onceIn(results, make);
  }
}

function replay({ reads, slots, touched }: Made): void {
  openSlots?.take(slots);
  if (touched) openTouched?.take(touched);
  open?.take(reads);
}
