import type { Value } from '../core/value.js';
import { findUnit } from '../units/find.js';
import { formatNumber, formatQuantity } from '../units/format.js';
import { formatValue } from '../units/natural.js';

/**
 * The right-hand side of a value's formula with the inputs' numbers and units in it: `300 kW / 2300 rpm`.
 * A letter belongs to the input that the formula gives it to, or else to the input that carries it as its symbol;
 * what matches neither stays as it is.
 * Undefined for a value that was not computed, or whose formula has no symbol to fill or is written in other terms than
 * its inputs.
 */
export function filledFormula(value: Value): string | undefined {
  const working = value.working;
  if (!working || (working.inputs.length > 0 && working.keys?.length === 0)) return undefined;
  const bySymbol = new Map<string, Value>();
  const unitOf = new Map<Value, string | undefined>();
  for (const input of working.inputs) bySymbol.set(input.symbol, input);
  working.inputs.forEach((input, index) => {
    const key = working.keys?.[index];
    if (key) bySymbol.set(key, input);
    unitOf.set(input, working.units?.[index]);
  });
  const letters = [...bySymbol.keys(), ...Object.keys(working.tabulated ?? {})];
  let filled = 0;
  const fill = (word: string, at: number, all: string): string => {
    const input = bySymbol.get(word);
    const constant = working.tabulated?.[word];
    if (!input && constant === undefined) return word;
    filled++;
    const number = input ? inUnit(input, unitOf.get(input)) : formatNumber(constant!, 6);
    const before = all.slice(0, at);
    const after = all.slice(at + word.length);
    const whole =
      number.startsWith('−') || (number.includes(' ') && (RAISED.test(after) || before.endsWith('√')));
    // Letters side by side are a product; numbers side by side are nothing.
    const times = FACTOR.test(before) && !FUNCTION.test(before) ? (/\s$/.test(before) ? '× ' : ' × ') : '';
    const on = FACTOR_AFTER.exec(after);
    const nextIsFilled = letters.some(symbol => after.trimStart().startsWith(symbol));
    const next = on && !nextIsFilled && !UNITS.test(after) ? ' ×' : '';
    const gap = next && !/^\s/.test(after) ? ' ' : '';
    return `${times}${whole ? `(${number})` : number}${RAISED.test(after) ? '' : next + gap}`;
  };
  const { result, remark } = rightSide(working.text);
  const text = result.replace(lettersOr(letters), fill);
  // The numbers carry the units that such a remark asks for, and those of the table that it gives.
  const said = working.units || working.unit || working.tabulated ? '' : remark;
  return filled > 0 ? text + said : undefined;
}

/** What the filled formula gives, in the unit that its numbers give it in. */
export function filledResult(value: Value): string {
  return inUnit(value, value.working?.unit);
}

/** In the unit that a formula is evaluated in; a temperature always from absolute zero, or a ratio of two would be wrong. */
function inUnit(value: Value, symbol: string | undefined): string {
  const unit = findUnit(symbol ?? (value.dimension === 'temperature' ? 'K' : ''));
  return unit ? formatQuantity(value.si, unit) : formatValue(value);
}

/** What a formula's text says that its result is, and the remark behind it: `, mm, kW`, `; m from the table`. */
export function rightSide(text: string): { readonly result: string; readonly remark: string } {
  const equals = text.indexOf('=');
  const right = (equals < 0 ? text : text.slice(equals + 1)).trim();
  let depth = 0;
  for (const [at, sign] of right.split('').entries()) {
    if (sign === '(') depth++;
    else if (sign === ')') depth--;
    else if (depth === 0 && (sign === ';' || (sign === ',' && right[at + 1] === ' ')))
      return withoutNote(right.slice(0, at), right.slice(at));
  }
  return withoutNote(right, '');
}

/** A bracket at the end that asks for units, or says what one is, is a remark too. */
function withoutNote(text: string, remark: string): { readonly result: string; readonly remark: string } {
  const note = NOTE.exec(text)?.[0] ?? '';
  return { result: text.slice(0, text.length - note.length), remark: note + remark };
}

/** Finds these symbols, whatever signs they hold (`AE/A0`, `σ0.7R`), longest first, and else any single letter or word. */
export function lettersOr(symbols: readonly string[]): RegExp {
  const own = symbols
    .filter(symbol => !PLAIN.test(symbol))
    .sort((one, other) => other.length - one.length)
    .map(symbol => `(?<![\\p{L}_])${symbol.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')}(?![${PART}])`);
  return new RegExp([...own, WORD].join('|'), 'gu');
}

/** Letters of any script, digits, subscripts, primes; superscripts are powers and belong to no name. */
const PART = "\\p{L}\\p{Nd}_′'₀-₉";
const WORD = `\\p{L}[${PART}]*`;
const PLAIN = new RegExp(`^${WORD}$`, 'u');
const RAISED = /^\s?[²³⁴⁵^]/;
/** A factor that ends here: `16 `, `2π `, `(1 - w) `, `D² `. */
const FACTOR = /[\p{L}\p{N})]\s*$/u;
const FUNCTION = /(?:cos|sin|tan|arctan|arccos|ln|log10|min|max)[²³]?\s*$/;
/** A factor that starts here; its letters, where it is one. */
const FACTOR_AFTER = new RegExp(`^\\s*(?:(${WORD})|(?<=[\\s])[\\d½]|[(√])`, 'u');
const NOTE = /\s*\((?:(?:kn|hp|lb|lbf|ft|m|t|rpm|psi|in|kN|kW|mm)(?:, )?)+\)$|\s*\([^()]* = [^()]*\)$/;
/** Units in brackets that the numbers of a handbook formula are to be in. */
const UNITS = /^\s*\((?:kn|hp|lb|lbf|ft|m|t|rpm|psi|in|kN|1 kW)\b/;
