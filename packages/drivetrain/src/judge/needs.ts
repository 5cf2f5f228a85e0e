import type { Origin, Value } from '@tailshaft/mechanics';
import { homeOfFact } from '../model/declared-fact.js';
import type { Fact } from '../model/fact.js';
import type { Missing } from './verdict.js';

/** Where a fact belongs when it is not there. */
export interface Wanted {
  /** In words, with whose it is: `rotation of engine Kittiwake-9`. */
  readonly what: string;
  readonly host: Origin;
  readonly property: string;
  readonly example?: string;
}

/** Collects what a check needs; anything absent or open is kept, so that one verdict names all of it. */
export class Needs {
  readonly missing: Missing[] = [];
  /** What was computed on the way: the half that a check which waits can tell already. */
  readonly known = new Set<Value>();

  /** The fact's value, or undefined with the gap noted. */
  fact<T>(fact: Fact<T> | undefined, wanted: Wanted): T | undefined {
    if (fact === undefined) this.miss(wanted);
    // Said anew it is said of the part as it is now: where it stood it is a record of the part as it was.
    else if (fact.lapsed)
      this.miss({
        ...wanted,
        host: homeOfFact(fact)?.host ?? wanted.host,
        what: `${wanted.what} (${fact.lapsed})`,
      });
    else if (fact.value === undefined) this.miss(wanted, fact.origin);
    else return fact.value;
    return undefined;
  }

  miss(wanted: Wanted, at?: Origin): undefined {
    const { host, property } = wanted;
    if (!this.missing.some(one => one.host === host && one.property === property))
      this.missing.push(asMissing(wanted, at));
    return undefined;
  }

  /** A worked-out result, or undefined with what was missing for it noted. */
  take<T>(derived: { readonly value: T | undefined; readonly missing: readonly Missing[] }): T | undefined {
    for (const { what, host, property, example, at } of derived.missing) {
      this.miss({ what, host, property, example }, at);
    }
    return derived.value === undefined ? undefined : this.found(derived.value);
  }

  /** The same, and what it holds of computed values is told by a verdict that waits for the rest. */
  found<T>(computed: T): T {
    for (const value of computedIn(computed)) this.known.add(value);
    return computed;
  }

  get any(): boolean {
    return this.missing.length > 0;
  }
}

/** A fact as a datum that is missing; `at` where something is written that is of no use. */
export function asMissing({ what, host, property, example = 'unknown' }: Wanted, at?: Origin): Missing {
  return { what, host, property, example, ...(at ? { at } : {}) };
}

/** A computed value, those of a point, or those of a list. */
function computedIn(result: unknown): Value[] {
  if (typeof result !== 'object' || result === null) return [];
  if ('si' in result) return 'working' in result ? [result as Value] : [];
  return Object.values(result).filter((one): one is Value => isComputed(one));
}

function isComputed(one: unknown): boolean {
  return typeof one === 'object' && one !== null && 'si' in one && 'working' in one;
}
