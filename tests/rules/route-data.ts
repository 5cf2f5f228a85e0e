import type { Fact, ModelEdit, Route } from '@tailshaft/drivetrain';
import type { TextEdit } from '@tailshaft/language';
import { findUnit, type Value } from '@tailshaft/mechanics';
import { type NewQuantity, type NewValue, spell, UNKNOWN } from '@tailshaft/vocabulary';
import type { Checked } from '../support/check.js';

/** Everything that the edits of a way out write, and what of it is a fragment of text rather than data. */
export function dataOf(edits: readonly ModelEdit[]): { values: NewValue[]; fragments: string[] } {
  const values: NewValue[] = [];
  const fragments: string[] = [];
  const visit = (one: unknown, key: string): void => {
    if (typeof one === 'string' && isFragment(one, key)) fragments.push(`${key} ${one}`);
    if (typeof one !== 'object' || one === null || PLACES.has(key)) return;
    if ('is' in one) values.push(one as NewValue);
    for (const [name, value] of Object.entries(one)) visit(value, name);
  };
  visit(edits, '');
  return { values, fragments };
}

/** Places and facts of the text: nothing that an edit brings along. */
const PLACES = new Set(['at', 'host', 'before', 'entry of', 'like', 'one', 'other', 'fact']);

function isFragment(text: string, key: string): boolean {
  if (key === 'text') return true;
  if (key === 'title' || key === 'note') return false;
  if (key === 'unit') return findUnit(text) === undefined;
  if (key === 'figure') return !/^[\d\s./eE−-]+$/.test(text);
  // Names and words hold no statement, no value with its unit and no brace.
  return /[{}"[\]\n]|\d \p{L}/u.test(text);
}

/** What a way out writes and the text after it does not say: another magnitude, another unit, or nothing at that place. */
export function misread(route: Route, edits: readonly TextEdit[], after: Checked): string[] {
  const stated = factsOf(after);
  const written = placesAfter(edits);
  return dataOf(route.edits).values.flatMap(value => {
    const words = spell(value);
    const facts = stated.filter(
      ({ origin }) =>
        after.text.slice(origin.start, origin.end) === words &&
        written.some(one => one.start <= origin.start && origin.end <= one.end),
    );
    if (facts.some(({ fact }) => saysSame(value, fact))) return [];
    if (facts.length > 0) return [`${words} reads as something else`];
    // One number of a value that has several: the power of a rating, the factor of a formula.
    const around = stated.filter(({ origin }) =>
      written.some(one => origin.start <= one.start && one.end <= origin.end),
    );
    const parts = around.flatMap(({ fact }) => valuesIn(fact.value));
    if (parts.some(part => saysSame(value, { ...around[0]!.fact, value: part }))) return [];
    return NAMES.has(value.is) ? [] : [`${words} is no value of the text`];
  });
}

function valuesIn(compound: unknown): Value[] {
  if (typeof compound !== 'object' || compound === null) return [];
  return Object.values(compound).filter((one): one is Value => typeof one === 'object' && 'si' in one);
}

/** What may be the name of a part or the head of a block, which is no fact. */
const NAMES = new Set<NewValue['is']>(['name', 'as stated', 'open', 'word']);

function saysSame(value: NewValue, { value: read, written }: Fact<unknown>): boolean {
  switch (value.is) {
    case 'quantity':
      return sameQuantity(value.quantity, read as Value);
    case 'in unit':
      return (read as Value).unit === value.unit && (read as Value).figure?.text === value.figure;
    case 'open':
      return read === undefined && written === UNKNOWN;
    case 'word':
      return read === value.word || (read as { readonly word?: string }).word === value.word;
    case 'name':
      return read === value.name;
    case 'title':
      return (read as { readonly title: string }).title === value.title;
    case 'as stated':
      return written === value.fact.written;
    case 'rotation':
      return sameFields(value.rotation, read as object);
    case 'output':
      return sameFields(value.output, read as object);
    case 'bolts': {
      const { count, size } = read as { readonly count: number; readonly size: Value };
      return count === value.count && sameQuantity(value.size, size);
    }
    case 'span': {
      const { low, high } = read as { readonly low: Value; readonly high: Value };
      return sameQuantity(value.low, low) && sameQuantity(value.high, high);
    }
    case 'pilot': {
      const { diameter, kind } = read as { readonly diameter: Value; readonly kind: string };
      return kind === value.kind && sameQuantity(value.diameter, diameter);
    }
  }
}

function sameQuantity({ si, unit, to }: NewQuantity, read: Value): boolean {
  const near = Math.abs(read.si - si) <= 1e-8 * Math.abs(si);
  return near && (unit === undefined || read.unit === unit) && (to === undefined || read.figure?.to === to);
}

function sameFields(wanted: object, read: object): boolean {
  return Object.entries(wanted).every(([key, one]) => (read as Record<string, unknown>)[key] === one);
}

/** Where the edits stand in the text after them. */
function placesAfter(edits: readonly TextEdit[]): { readonly start: number; readonly end: number }[] {
  let moved = 0;
  return [...edits]
    .sort((one, other) => one.start - other.start || one.end - other.end)
    .map(({ start, end, text }) => {
      const at = start + moved;
      moved += text.length - (end - start);
      return { start: at, end: at + text.length };
    });
}

interface Stated {
  readonly fact: Fact<unknown>;
  readonly origin: { readonly start: number; readonly end: number };
}

/** Every fact of the vessels and entries of a text. */
function factsOf({ check }: Checked): Stated[] {
  const found: Stated[] = [];
  const seen = new Set<object>();
  const visit = (one: unknown): void => {
    if (typeof one !== 'object' || one === null || seen.has(one)) return;
    seen.add(one);
    if ('written' in one && 'origin' in one && !('si' in one))
      found.push({ fact: one as Fact<unknown>, origin: one.origin as Stated['origin'] });
    if (one instanceof Map) for (const value of one.values()) visit(value);
    else for (const [key, value] of Object.entries(one)) if (key !== 'origin') visit(value);
  };
  visit(check.vessels.map(one => one.vessel));
  visit(check.entries.map(one => one.reading));
  return found;
}
