import { fromSI, type Origin, type Value, writtenUnit } from '@tailshaft/mechanics';
import {
  blockOf,
  ENTRY_VOCABULARY,
  PLACE_VOCABULARY,
  type Row,
  rowOf,
  type Vocabulary,
  wordsOf,
} from '@tailshaft/vocabulary';
import { clutchesOf, ratingsOf } from '../analysis/gear-data.js';
import type { Evidence, Fact } from '../model/fact.js';
import type { Gear } from '../model/gear.js';
import { meaningOf } from '../model/meaning.js';
import type { Part } from '../model/part.js';
import type { Shaft } from '../model/shafting.js';
import type { FactChange } from './change.js';
import { type Marks, marksMoved, marksOf } from './evidence.js';

/** One declared fact freed of its place: two that mean the same have the same `meaning`. */
export interface FlatFact {
  readonly what: string;
  readonly meaning: string;
  readonly written: string;
  readonly value: unknown;
  readonly evidence?: Evidence;
  /** How it is known; of a list, how each of it is. */
  readonly marks: Marks;
  readonly origin?: Origin;
  /** The fact whose choice brought this one along: the ratio of a gear, the grade of a shaft. */
  readonly behind?: string;
  /** The property that it is, where it is one of the language. */
  readonly row?: Row;
  /** Stands in a block that has a hand as a whole: an accessory. */
  readonly handed?: true;
}

/** Every fact of a block by its words. Blocks inside go by their own names; order does not matter. */
export function flatFacts(
  block: object,
  vocabulary: Vocabulary | undefined,
  prefix = '',
): Map<string, FlatFact> {
  const found = new Map<string, FlatFact>();
  // What a block is called is said by its name already, unless there is nothing else in it.
  const heads: Fact<unknown>[] = [];
  for (const [field, value] of Object.entries(block)) {
    if (value === undefined || NOT_FACTS.has(field)) continue;
    const what = joined(prefix, wordsOf(vocabulary, field));
    const row = rowOf(vocabulary, field);
    if (isFact(value) && field.endsWith('Fact')) heads.push(value);
    else if (isFact(value)) found.set(what, flatFact(what, value, row));
    else if (Array.isArray(value)) addList(found, value, what, vocabulary, field);
    else if (typeof value === 'object' && value !== null && 'origin' in value && !('si' in value)) {
      const inner = flatFacts(value, blockOf(vocabulary, field)?.block, what);
      for (const [key, fact] of inner) found.set(key, fact);
    }
  }
  for (const head of heads) if (!found.has(prefix)) found.set(prefix, flatFact(prefix, head, undefined));
  return found;
}

/** The facts of a part as it is used: of a gear, those of the ratio that is fitted; of a shaft, those of its grade. */
export function factsOfPart(part: Part): Map<string, FlatFact> {
  const vocabulary = PLACE_VOCABULARY[part.role];
  if (part.role === 'shaft') {
    const { grade } = part as Shaft;
    const ofGrade = flatFacts(grade ?? {}, ENTRY_VOCABULARY['shaft material'], 'material');
    return joinedFacts(flatFacts(part, vocabulary), ofGrade, 'material');
  }
  if (part.role !== 'gear') return flatFacts(part, vocabulary);
  const gear = part as Gear;
  const { ratios: _all, clutches: _clutches, ratings: _ratings, variant, ...general } = gear;
  const facts = flatFacts(general, vocabulary);
  if (variant && !gear.ratioUsed)
    facts.set('ratio', flatFact('ratio', variant.nominalFact, rowOf(vocabulary, 'ratioUsed')));
  const ofRatio = {
    ...variant,
    clutches: clutchesOf({ clutches: gear.clutches ?? [] }, variant),
    ratings: ratingsOf({ ratings: gear.ratings ?? [] }, variant),
  };
  return joinedFacts(facts, flatFacts(ofRatio, blockOf(vocabulary, 'ratios')?.block), 'ratio');
}

function joinedFacts(
  own: Map<string, FlatFact>,
  brought: ReadonlyMap<string, FlatFact>,
  behind: string,
): Map<string, FlatFact> {
  for (const [what, fact] of brought) own.set(what, { ...fact, behind });
  return own;
}

/**
 * What a part has changed. With another ratio of a gear, or another grade of a shaft, everything that comes with it is
 * another too, which says nothing: then the choice alone is told.
 */
export function partFactChanges(
  before: ReadonlyMap<string, FlatFact>,
  after: ReadonlyMap<string, FlatFact>,
): FactChange[] {
  const same = (choice: string) => before.get(choice)?.meaning === after.get(choice)?.meaning;
  const own = (facts: ReadonlyMap<string, FlatFact>) =>
    new Map([...facts].filter(([, fact]) => fact.behind === undefined || same(fact.behind)));
  return factChanges(own(before), own(after));
}

/** Facts that mean something else, are new or are gone. */
export function factChanges(
  before: ReadonlyMap<string, FlatFact>,
  after: ReadonlyMap<string, FlatFact>,
): FactChange[] {
  const changes: FactChange[] = [];
  for (const what of new Set([...before.keys(), ...after.keys()])) {
    const [old, now] = [before.get(what), after.get(what)];
    if (old?.meaning === now?.meaning) continue;
    const told = now ?? old!;
    const handed = told.handed ?? told.row?.handed;
    changes.push({ what, before: old?.written, after: now?.written, ...(handed ? { handed } : {}) });
  }
  return changes.sort((one, other) => (one.what < other.what ? -1 : 1));
}

/** Facts that are known otherwise than before, and mean the same. */
export function markChanges(
  before: ReadonlyMap<string, FlatFact>,
  after: ReadonlyMap<string, FlatFact>,
): FactChange[] {
  return [...after].flatMap(([what, now]) => {
    const old = before.get(what);
    return old && marksMoved(old, now)
      ? [{ what: `evidence of ${what}`, before: old.marks.words, after: now.marks.words }]
      : [];
  });
}

/** `diameter 23 in → 24 in`. */
export function factChangeWords({ what, before, after }: FactChange): string {
  // A block that is called by its first fact has said it: `damage cracked`.
  const whole = (written: string) =>
    what.endsWith(` ${written.replaceAll('"', '')}`) ? what : `${what} ${written}`;
  if (before === undefined) return `${whole(after ?? '')} added`;
  if (after === undefined) return `${whole(before)} taken out`;
  return `${what} ${before} → ${after}`;
}

/** What several facts mean together; equal for equal parts. */
export function signature(facts: ReadonlyMap<string, FlatFact>): string {
  return [...facts.values()]
    .map(fact => `${fact.what}=${fact.meaning}`)
    .sort()
    .join('\n');
}

/** Number and unit of a quantity as its author has them; nothing of other values. */
export function numberAndUnit({ value }: FlatFact): { number: number; unit: string } | undefined {
  if (typeof value !== 'object' || value === null || !('si' in value)) return undefined;
  const unit = writtenUnit(value as Value);
  if (!unit) return undefined;
  return { number: Number(fromSI((value as Value).si, unit).toPrecision(12)), unit: unit.symbol };
}

export function isFact(value: unknown): value is Fact<unknown> {
  return (
    typeof value === 'object' && value !== null && 'written' in value && 'origin' in value && 'value' in value
  );
}

/** Fields that are the part itself, where it stands, or what another field already says. */
const NOT_FACTS = new Set([
  ...[
    'role',
    'path',
    'change',
    'stated',
    'keptFrom',
    'restated',
    'entry',
    'origin',
    'nameOrigin',
    'source',
    'grade',
    'rating',
    'variant',
  ],
  ...['name', 'duty', 'nominal', 'nominalFact', 'order', 'orderFact', 'title', 'doc'],
]);

function joined(prefix: string, words: string): string {
  return [prefix, words].filter(Boolean).join(' ');
}

function addList(
  found: Map<string, FlatFact>,
  list: readonly unknown[],
  what: string,
  vocabulary: Vocabulary | undefined,
  field: string,
): void {
  const facts = list.filter(isFact);
  if (facts.length > 0) {
    const flat = facts.map(fact => flatFact(what, fact, rowOf(vocabulary, field)));
    const meaning = flat
      .map(one => one.meaning)
      .sort()
      .join(' | ');
    const marks = marksOf(facts.map(one => one.evidence));
    const written = flat.map(one => one.written).join(', ');
    found.set(what, { what, meaning, written, value: undefined, marks });
  }
  const of = blockOf(vocabulary, field);
  const taken = new Map<string, number>();
  for (const block of list) {
    if (typeof block !== 'object' || block === null || isFact(block)) continue;
    const name = blockName(block);
    const count = (taken.get(name) ?? 0) + 1;
    taken.set(name, count);
    const head = [what, name, count > 1 ? `(${count})` : ''].filter(Boolean).join(' ');
    for (const [key, fact] of flatFacts(block, of?.block, head))
      found.set(key, of?.handed ? { ...fact, handed: true } : fact);
  }
}

function blockName(block: object): string {
  const { name, what, duty, rules, nominal, order, fuel, direction } = block as Record<string, unknown>;
  const also = [fuel, direction].filter(isFact).map(one => one.written);
  const own = name ?? what ?? duty ?? rules ?? ((nominal ?? order) as Value | undefined)?.written ?? '';
  return [String(own), ...also].filter(Boolean).join(' ');
}

function flatFact(what: string, fact: Fact<unknown>, row: Row | undefined): FlatFact {
  return {
    what,
    // Of what is partly open the known part counts: `350 hp at unknown`.
    meaning:
      fact.value === undefined ? `unknown ${meaningOf(fact.known ?? '')}`.trim() : meaningOf(fact.value),
    written: fact.written,
    value: fact.value,
    origin: fact.origin,
    marks: marksOf([fact.evidence]),
    ...(fact.evidence ? { evidence: fact.evidence } : {}),
    ...(row ? { row } : {}),
  };
}
