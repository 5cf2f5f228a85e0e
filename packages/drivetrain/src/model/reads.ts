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
}

/** Every declared fact that a piece of work looked at, and every property that it looked for in vain. */
export interface Reads {
  readonly facts: ReadonlySet<Fact<unknown>>;
  readonly absent: ReadonlyMap<string, AbsentRead>;
}

interface Recording {
  readonly facts: Set<Fact<unknown>>;
  readonly absent: Map<string, AbsentRead>;
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

/** Whether anybody records at the moment: notes are made only then. */
export function isRecording(): boolean {
  return open !== undefined;
}

/** Does a piece of work and tells what it read. What it read goes to no other recording. */
export function recorded<T>(work: () => T): { readonly value: T; readonly reads: Reads } {
  const outer = open;
  const own: Recording = { facts: new Set(), absent: new Map() };
  open = own;
  try {
    return { value: work(), reads: own };
  } finally {
    open = outer;
  }
}

const ownReads = new WeakMap<object, Reads>();

/** Makes one of several results, so that it rests on what its own making read, and not on what the others did. */
export function apart<T extends object>(make: () => T): T {
  const { value, reads } = recorded(make);
  ownReads.set(value, reads);
  return value;
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
  if (!own) return shared;
  return {
    facts: new Set([...shared.facts, ...own.facts]),
    absent: new Map([...shared.absent, ...own.absent]),
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

/** Results kept by key. Whoever takes one rests on what its making read, as if it had been made for him. */
export class Kept {
  readonly #made = new Map<string, { readonly value: unknown; readonly reads: Reads }>();

  once<T>(key: string, make: () => T): T {
    let had = this.#made.get(key);
    if (!had) {
      had = recorded(make);
      this.#made.set(key, had);
    }
    replay(had.reads);
    return had.value as T;
  }
}

/** As `Kept`, by object: what is worked out once for each. */
export class KeptBy<K extends object> {
  readonly #made = new WeakMap<K, { readonly value: unknown; readonly reads: Reads }>();

  once<T>(key: K, make: () => T): T {
    let had = this.#made.get(key);
    if (!had) {
      had = recorded(make);
      this.#made.set(key, had);
    }
    replay(had.reads);
    return had.value as T;
  }
}

function replay(reads: Reads): void {
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
