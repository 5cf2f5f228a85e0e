import type { Value } from '../core/value.js';
import { formatValue } from '../units/natural.js';

/**
 * The right-hand side of a value's formula with the inputs' numbers and units in it: `300 kW / 2300 rpm`.
 * A letter belongs to the input that the formula gives it to, or else to the input that carries it as its symbol;
 * what matches neither stays as it is.
 * Undefined for a value that was not computed or whose formula has no symbol to fill.
 */
export function filledFormula(value: Value): string | undefined {
  const working = value.working;
  if (!working) return undefined;
  const bySymbol = new Map<string, Value>();
  for (const input of working.inputs) bySymbol.set(input.symbol, input);
  working.inputs.forEach((input, index) => {
    const key = working.keys?.[index];
    if (key) bySymbol.set(key, input);
  });
  const equals = working.text.indexOf('=');
  const right = equals < 0 ? working.text : working.text.slice(equals + 1);
  let filled = 0;
  const text = right.trim().replace(SYMBOL, word => {
    const input = bySymbol.get(word);
    if (!input) return word;
    filled++;
    const number = formatValue(input);
    return number.startsWith('-') ? `(${number})` : number;
  });
  return filled > 0 ? text : undefined;
}

/** A letter of any script, then letters, digits, subscripts, primes. */
const SYMBOL = /\p{L}[\p{L}\p{N}_′'₀-₉]*/gu;
