import type { Origin } from '@tailshaft/mechanics';
import type { Row } from '@tailshaft/vocabulary';
import { type Evidence, type Fact, isWeak } from './fact.js';
import { noteRead, noteTouched } from './reads.js';

/** Where a fact stands: for questions about it. */
export interface FactHome {
  readonly host: Origin;
  /** The words of its property. */
  readonly property: string;
  /** What holds it: `engine`. */
  readonly of?: string;
  /** Where it is not known the product estimates it, and says so. */
  readonly estimated?: boolean;
  /** What its property is. */
  readonly row?: Row;
}

let facts = 0;

/**
 * A fact as the text declares it. Looking at its value is noted, so that a verdict knows what it rests on: every reader of a
 * specification makes its facts with `declareFact`, and no check can look past the record.
 */
class DeclaredFact<T> implements Fact<T> {
  readonly #value: T | undefined;
  readonly #home: FactHome;
  readonly #isPlain: boolean;
  #number: number;
  declare readonly value: T | undefined;
  readonly written: string;
  readonly origin: Origin;
  declare readonly evidence?: Evidence;

  constructor(given: Fact<T>, home: FactHome) {
    this.#value = given.value;
    this.#home = home;
    facts += 1;
    this.#number = facts;
    this.#isPlain =
      this.#value !== undefined &&
      !isWeak(given) &&
      given.outdated === undefined &&
      given.outOfRange === undefined;
    Object.defineProperty(this, 'value', VALUE);
    this.written = given.written;
    this.origin = given.origin;
    for (const [name, value] of Object.entries(given)) {
      if (name === 'value' || name === 'written' || name === 'origin' || value === undefined) continue;
      Object.defineProperty(this, name, { value, enumerable: true });
    }
  }

  static homeOf(fact: Fact<unknown>): FactHome | undefined {
    return #home in fact ? fact.#home : undefined;
  }

  static valueOf(fact: Fact<unknown>): unknown {
    return #value in fact ? fact.#value : fact.value;
  }

  /** Its value, with a note that somebody looked at it. */
  static look(fact: Fact<unknown>): unknown {
    if (!(#value in fact)) return fact.value;
    noteRead(fact, fact.#isPlain);
    noteTouched(fact.#number);
    return fact.#value;
  }

  static numberOf(fact: Fact<unknown>): number | undefined {
    return #number in fact ? fact.#number : undefined;
  }

  static numberAs(fact: Fact<unknown>, other: Fact<unknown>): void {
    if (#number in fact && #number in other) fact.#number = other.#number;
  }
}

/** One descriptor for all facts, so that they share one shape; an own property, so that copies of a fact hold the value. */
const VALUE: PropertyDescriptor = {
  get(this: Fact<unknown>) {
    return DeclaredFact.look(this);
  },
  enumerable: true,
  configurable: true,
};

/** A fact whose value cannot be looked at unnoticed. */
export function declareFact<T>(fact: Fact<T>, home: FactHome): Fact<T> {
  return new DeclaredFact(fact, home);
}

/** The block and the property of a declared fact; undefined for one that the product made up. */
export function homeOfFact(fact: Fact<unknown>): FactHome | undefined {
  return DeclaredFact.homeOf(fact);
}

/** Whether a fact is an open question, without noting that anybody looked. */
export function isOpen(fact: Fact<unknown>): boolean {
  return DeclaredFact.valueOf(fact) === undefined;
}

/** The value of a fact, without noting that anybody looked. */
export function valueUnnoticed(fact: Fact<unknown>): unknown {
  return DeclaredFact.valueOf(fact);
}

/** The number by which it is noted that somebody looked at a declared fact. */
export function numberOfFact(fact: Fact<unknown>): number | undefined {
  return DeclaredFact.numberOf(fact);
}

/** Gives a fact the number of the one that stood in its place before its text was read anew. */
export function standsFor(fact: Fact<unknown>, before: Fact<unknown>): void {
  DeclaredFact.numberAs(fact, before);
}
