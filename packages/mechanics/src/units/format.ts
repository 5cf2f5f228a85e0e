import { minusSign } from '../prose/minus.js';
import { fromSI } from './convert.js';
import type { Unit } from './unit.js';

/** Shown where a computation has no finite result. */
export const NO_VALUE = 'no finite value';

/**
 * An SI magnitude in a unit, for a person: `300 kW`, `15 %`, `8°`. Significant digits (4 unless told),
 * whole digits are never rounded away, trailing zeros are dropped.
 */
export function formatQuantity(si: number, unit: Unit, digits = 4): string {
  if (!Number.isFinite(si)) return NO_VALUE;
  const number = formatNumber(fromSI(si, unit), digits);
  if (unit.display === '') return number;
  return unit.display === '°' || unit.display === '′'
    ? `${number}${unit.display}`
    : `${number} ${unit.display}`;
}

/** A number for a person, to so many significant digits, keeping every whole digit: `−3.5`. */
export function formatNumber(number: number, digits = 4): string {
  return minusSign(plainNumber(number, digits));
}

/** The same as a spec or a data file writes it: `-3.5`. */
export function plainNumber(number: number, digits = 4): string {
  if (!Number.isFinite(number)) return NO_VALUE;
  if (number === 0) return '0';
  const size = Math.abs(number);
  if (size < 1e-4 || size >= 1e15) return tidyExponent(number.toExponential(digits - 1));
  const magnitude = Math.floor(Math.log10(Number(size.toPrecision(digits))));
  const text = number.toFixed(Math.max(0, digits - 1 - magnitude));
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

function tidyExponent(text: string): string {
  const [mantissa = '', exponent = ''] = text.split('e');
  const short = mantissa.includes('.') ? mantissa.replace(/\.?0+$/, '') : mantissa;
  return `${short}e${exponent.replace('+', '')}`;
}
