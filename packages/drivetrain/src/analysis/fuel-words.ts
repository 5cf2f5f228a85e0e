import { formatValue, type Value } from '@tailshaft/mechanics';

/** Fuel in litres and ranges in miles, as they are asked for, whatever units the engine is written in. */
export function fuelWords(value: Value): string {
  if (value.dimension === 'volume') return `${digits(value.si * 1000)} L`;
  if (value.dimension === 'volume flow') return `${digits(value.si * 3.6e6)} L/h`;
  if (value.dimension === 'length') return `${digits(value.si / 1852)} nmi`;
  return formatValue(value, 3);
}

function digits(number: number): string {
  return Number(number.toPrecision(3)).toLocaleString('en');
}
