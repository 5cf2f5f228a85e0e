import type { Origin } from '@tailshaft/mechanics';
import type { Fact } from './fact.js';

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

/** Every declared fact that a piece of work looked at, and every property that it looked for in vain. */
export interface Reads {
  readonly facts: ReadonlySet<Fact<unknown>>;
  readonly absent: ReadonlyMap<string, AbsentRead>;
  /** What was read for those of several subjects of which nothing was said in the end. */
  readonly silent: readonly Reads[];
}

interface Recording {
  readonly facts: Set<Fact<unknown>>;
  readonly absent: Map<string, AbsentRead>;
  readonly silent: Reads[];
}

let open: Recording | undefined;

/** Notes that the value of a declared fact was looked at. */
export function noteRead(fact: Fact<unknown>): void {
  open?.facts.add(fact);
}

/** Notes that a property was looked for and is not declared. */
export function noteAbsent(read: AbsentRead): void {
  if (open) open.absent.set(`${idOf(read.host)} ${read.property}`, read);
}

/** Does a piece of work and tells what it read. What it read goes to no other recording. */
export function recorded<T>(work: () => T): { readonly value: T; readonly reads: Reads } {
  const outer = open;
  const own: Recording = { facts: new Set(), absent: new Map(), silent: [] };
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
  return {
    facts: new Set([...one.facts, ...other.facts]),
    absent: new Map([...one.absent, ...other.absent]),
    silent: [],
  };
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

let openTouched: Set<number> | undefined;

/** Notes that a declared fact was looked at, by its number, whatever the reading proves. */
export function noteTouched(fact: number): void {
  openTouched?.add(fact);
}

/** Does a piece of work and tells the numbers of all declared facts that it looked at; whoever asked for it looked at them too. */
export function touching<T>(work: () => T): { readonly value: T; readonly touched: ReadonlySet<number> } {
  const outer = openTouched;
  const own = new Set<number>();
  openTouched = own;
  try {
    return { value: work(), touched: own };
  } finally {
    openTouched = outer;
    if (outer) for (const fact of own) outer.add(fact);
  }
}

let openSlots: Set<number> | undefined;

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
  const own = new Set<number>();
  openSlots = own;
  try {
    return { value: work(), slots: own };
  } finally {
    openSlots = outer;
    noteSlots(own);
  }
}

function noteSlots(slots: ReadonlySet<number>): void {
  if (openSlots) for (const slot of slots) openSlots.add(slot);
}

/** A result with everything that its making looked at. */
interface Made {
  readonly value: unknown;
  readonly reads: Reads;
  readonly slots: ReadonlySet<number>;
  readonly touched: ReadonlySet<number>;
}

function made(make: () => unknown): Made {
  const { value, touched } = touching(() => slotted(() => recorded(make)));
  return { ...value.value, slots: value.slots, touched };
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
  noteSlots(slots);
  if (openTouched) for (const fact of touched) openTouched.add(fact);
  if (!open) return;
  for (const fact of reads.facts) open.facts.add(fact);
  for (const [key, read] of reads.absent) open.absent.set(key, read);
}

let ids = 0;
const idsOf = new WeakMap<object, number>();

function idOf(host: Origin): number {
  const had = idsOf.get(host);
  if (had !== undefined) return had;
  ids += 1;
  idsOf.set(host, ids);
  return ids;
}
