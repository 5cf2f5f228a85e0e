import type { Evidence, Fact } from '@tailshaft/drivetrain';
import type { Origin, Value } from '@tailshaft/mechanics';
import { wordsOfKey } from '@tailshaft/mechanics';
import { blockOf, rowOf, type Vocabulary } from '@tailshaft/vocabulary';
import { otherUnits } from '../both-units.js';
import { siWords } from '../words.js';

/** One declared fact of a part or block, flat. */
export interface FactRow {
  /** `clutch A: friction`. */
  readonly label: string;
  readonly written: string;
  readonly si: string | undefined;
  /** In the other tradition: US customary beside SI, SI beside US customary. */
  readonly other: string | undefined;
  readonly origin: Origin;
  readonly evidence: Evidence | undefined;
  readonly open: boolean;
}

/**
 * Every declared fact below an object of the model, in the order in which it holds them. `skip` names fields that are
 * told elsewhere. New kinds of fact need no change here.
 */
export function factRows(
  host: object,
  vocabulary: Vocabulary | undefined,
  skip: readonly string[] = [],
): FactRow[] {
  return rowsOf(host, vocabulary, '', new Set([...NEVER, ...skip]));
}

/**
 * Of fields that are no facts of their own: ways back into the model, names that head the rows of their block, and what
 * the entry offers besides what is fitted.
 */
const NEVER = [
  'origin',
  'nameOrigin',
  'nameFact',
  'dutyFact',
  'orderFact',
  'entry',
  'before',
  'keptFrom',
  'source',
  'grade',
  'rating',
  'nominal',
  'variant',
];

function rowsOf(
  host: object,
  vocabulary: Vocabulary | undefined,
  prefix: string,
  skip: ReadonlySet<string>,
): FactRow[] {
  const rows: FactRow[] = [];
  for (const [key, value] of Object.entries(host)) {
    if (skip.has(key) || value === null || typeof value !== 'object') continue;
    const inner = blockOf(vocabulary, key)?.block;
    if (Array.isArray(value)) {
      for (const one of value) {
        if (isFact(one)) rows.push(row(prefix + label(key, vocabulary), one));
        else if (isObject(one))
          rows.push(...rowsOf(one, inner, `${prefix}${nameOf(label(key, vocabulary), one)}: `, skip));
      }
    } else if (isFact(value)) rows.push(row(prefix + label(key, vocabulary), value));
    else if (!('si' in value))
      rows.push(...rowsOf(value, inner, `${prefix}${label(key, vocabulary)}: `, skip));
  }
  return rows;
}

function row(what: string, fact: Fact<unknown>): FactRow {
  return {
    label: what,
    written: fact.written,
    si: fact.value === undefined ? undefined : converted(fact.value, siWords),
    other: fact.value === undefined ? undefined : converted(fact.value, otherUnits),
    origin: fact.origin,
    evidence: fact.evidence,
    open: fact.value === undefined,
  };
}

/** A value, a point, a span or anything else that holds quantities. */
function converted(value: unknown, say: Say): string | undefined {
  if (!isObject(value)) return undefined;
  if (isValue(value)) return say(value);
  const parts = value as Record<string, unknown>;
  if (isValue(parts.y) && isValue(parts.x)) return pair(parts.y, parts.x, ' at ', say);
  if (isValue(parts.low) && isValue(parts.high)) return pair(parts.low, parts.high, ' .. ', say);
  const inner = Object.values(parts).find(isValue);
  return inner && say(inner);
}

type Say = (value: Value) => string | undefined;

function pair(one: Value, other: Value, between: string, say: Say): string | undefined {
  const [a, b] = [say(one), say(other)];
  return a === undefined && b === undefined
    ? undefined
    : `${a ?? one.written}${between}${b ?? other.written}`;
}

/** `rating medium`, `clutch A`, `mesh`. */
function nameOf(words: string, one: object): string {
  const { duty, name, order } = one as { duty?: unknown; name?: unknown; order?: unknown };
  const own =
    typeof name === 'string'
      ? name
      : typeof duty === 'string'
        ? duty
        : isValue(order)
          ? order.written
          : undefined;
  return own ? `${words} ${own}` : words;
}

/** The words of the property as the text has them, or the field's own where no row fills it. */
function label(key: string, vocabulary: Vocabulary | undefined): string {
  if (key === 'nominalFact') return 'nominal ratio';
  return (rowOf(vocabulary, key) ?? blockOf(vocabulary, key))?.words ?? wordsOfKey(singular(key));
}

function singular(key: string): string {
  if (/(ch|sh)es$/.test(key)) return key.slice(0, -2);
  if (key.endsWith('ies')) return `${key.slice(0, -3)}y`;
  return key.endsWith('s') ? key.slice(0, -1) : key;
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}

function isValue(value: unknown): value is Value {
  return isObject(value) && 'si' in value && 'dimension' in value;
}

function isFact(value: unknown): value is Fact<unknown> {
  return isObject(value) && 'written' in value && 'origin' in value && !('si' in value);
}
