import {
  findUnit,
  formatQuantity,
  formatValue,
  naturalUnit,
  preferredUnit,
  type Unit,
  type Value,
  writtenUnit,
} from '@tailshaft/mechanics';
import type { ShaftLine } from '../model/vessel.js';

/** Says a value in a unit of the tradition that the line's own figures are written in. */
export type Tell = (value: Value, digits?: number) => string;

/** A line whose engine is written in hp is told its torques in lbf·ft, one in kW in N·m. */
export function tellerOf(line: ShaftLine): Tell {
  const power = line.engine?.rating?.power?.value ?? line.motor?.power?.value;
  return tellLike(power?.y);
}

export function tellLike(model: Value | undefined): Tell {
  const unit = writtenUnit(model);
  const customary = unit && ['US', 'imperial'].includes(unit.system) ? unit : undefined;
  return (value, digits = 4) =>
    customary
      ? formatQuantity(value.si, customaryUnit(value, customary), digits)
      : formatValue(value, digits);
}

/** Vessels go in knots everywhere; blade tips in feet a second where the engine has horsepower. */
function customaryUnit(value: Value, like: Unit): Unit {
  if (value.dimension !== 'speed') return preferredUnit(value.dimension, like);
  const natural = naturalUnit(value);
  return natural.symbol === 'm/s' ? findUnit('ft/s')! : natural;
}

/** `2.043:1`. */
export function ratioWords(ratio: number, decimals = 3): string {
  return `${Number(ratio.toFixed(decimals))}:1`;
}
