import type { Unit } from './unit.js';

/** Number in this unit to the coherent SI unit of its dimension. */
export function toSI(number: number, unit: Unit): number {
  return (number + unit.offset) * unit.factor;
}

/** SI magnitude to a number in this unit. */
export function fromSI(si: number, unit: Unit): number {
  return si / unit.factor - unit.offset;
}
