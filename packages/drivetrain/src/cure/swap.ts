import type { Value } from '@tailshaft/mechanics';
import { declareFact, homeOfFact } from '../model/declared-fact.js';
import type { Fact } from '../model/fact.js';

/** A fact as it would stand with another value in its place; what vouched for the old value does not vouch for it. */
export function otherFact<T>(fact: Fact<T>, value: T, written: string): Fact<T> {
  const home = homeOfFact(fact);
  const other: Fact<T> = { value, written, origin: fact.origin };
  return home ? declareFact(other, home) : other;
}

export function quantityAs(fact: Fact<Value>, value: Value): Fact<Value> {
  return otherFact(fact, value, value.written ?? '');
}
