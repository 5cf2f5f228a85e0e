import { findUnit, fromSI, plainNumber } from '@tailshaft/mechanics';
import type { NewQuantity, NewValue } from './new-value.js';
import { UNKNOWN } from './words.js';

/** A value as the language spells it. */
export function spell(value: NewValue): string {
  switch (value.is) {
    case 'open':
      return UNKNOWN;
    case 'word':
      return value.word;
    case 'name':
      return PLAIN.test(value.name) ? value.name : quoted(value.name);
    case 'title':
      return quoted(value.title);
    case 'quantity':
      return spellQuantity(value.quantity);
    case 'in unit':
      return `${value.figure} ${value.unit}`;
    case 'as stated':
      return value.fact.written;
    case 'rotation': {
      const { word, viewedFrom } = value.rotation;
      return viewedFrom ? `${word} viewed from ${viewedFrom}` : word;
    }
    case 'output': {
      const { word, seen } = value.output;
      return seen === undefined ? word : `${word} ${seen === 'from aft' ? `seen ${seen}` : seen}`;
    }
    case 'bolts':
      return `${value.count} x ${spellQuantity(value.size)}`;
    case 'span':
      return spellSpan(value.low, value.high);
    case 'pilot':
      return `${spellQuantity(value.diameter)} ${value.kind}`;
  }
}

/** A name that needs no quotes: a word, a number, several of them joined by hyphens. */
const PLAIN = /^[\p{L}\p{N}_][\p{L}\p{N}_.-]*$/u;

function quoted(words: string): string {
  return `"${words.replace(/"/g, "'")}"`;
}

/** In its unit: inches in sixteenths where they are so many, everything else in decimals. */
export function spellQuantity({ si, unit: symbol, to, decimals }: NewQuantity): string {
  const unit = symbol === undefined ? undefined : findUnit(symbol);
  const number = unit ? fromSI(si, unit) : si;
  if (!unit) {
    const plain = decimals === undefined ? plainNumber(si, FINE) : si.toFixed(decimals);
    return to === undefined ? plain : `${plain}:${to}`;
  }
  if (unit.symbol === 'in') {
    const fraction = sixteenths(number);
    if (fraction !== undefined) return `${fraction} in`;
  }
  return `${plainNumber(number, FINE)} ${unit.symbol}`;
}

/** Digits that no size, rating or ratio is finer than. */
const FINE = 9;

function sixteenths(number: number): string | undefined {
  const count = Math.round(number * 16);
  if (number <= 0 || Math.abs(number * 16 - count) > 1e-6) return undefined;
  const whole = Math.floor(count / 16);
  const rest = count % 16;
  if (rest === 0) return `${whole}`;
  const divisor = [8, 4, 2, 1].find(one => rest % one === 0)!;
  const fraction = `${rest / divisor}/${16 / divisor}`;
  return whole > 0 ? `${whole} ${fraction}` : fraction;
}

/** The unit stands behind the second number alone where both have it. */
function spellSpan(low: NewQuantity, high: NewQuantity): string {
  const [first, last] = [low, high].map(spellQuantity) as [string, string];
  const tail = low.unit !== undefined && low.unit === high.unit ? ` ${low.unit}` : undefined;
  return `${tail && first.endsWith(tail) ? first.slice(0, -tail.length) : first} .. ${last}`;
}
