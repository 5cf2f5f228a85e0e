import { findUnit, formatQuantity, formatValue, preferredUnit, type Value } from '@tailshaft/mechanics';
import type { ShaftLine } from '../model/vessel.js';

/** Says a value in a unit of the tradition that the line's own figures are written in. */
export type Tell = (value: Value, digits?: number) => string;

/** A line whose engine is written in hp is told its torques in lbf·ft, one in kW in N·m. */
export function tellerOf(line: ShaftLine): Tell {
  const power = line.engine?.rating?.power?.value ?? line.motor?.power?.value;
  return tellLike(power?.y);
}

export function tellLike(model: Value | undefined): Tell {
  const unit = findUnit(/[^\d\s.,/-].*$/.exec(model?.written ?? '')?.[0] ?? '');
  const customary = unit?.system === 'US' || unit?.system === 'imperial';
  return (value, digits = 4) =>
    customary
      ? formatQuantity(value.si, preferredUnit(value.dimension, unit), digits)
      : formatValue(value, digits);
}

/** `12 %`, `0.4 %`: shares are read to a tenth only while they are small. */
export function percent(share: number): string {
  const size = Math.abs(share * 100);
  return `${(share * 100).toFixed(size < 9.95 ? 1 : 0).replace(/\.0$/, '')} %`;
}

/** `2.043:1`. */
export function ratioWords(ratio: number, decimals = 3): string {
  return `${Number(ratio.toFixed(decimals))}:1`;
}
