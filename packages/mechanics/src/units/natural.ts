import type { Dimension } from '../core/dimension.js';
import type { Value } from '../core/value.js';
import { findUnit } from './find.js';
import { formatQuantity } from './format.js';
import { preferredUnit } from './preferred.js';
import type { Unit } from './unit.js';

/** A value in the unit its trade would say it in: rpm for a shaft speed, kW for power, mm for a diameter. */
export function formatValue(value: Value, digits = 4): string {
  return formatQuantity(value.si, naturalUnit(value), digits);
}

/** The unit the trade would say this value in, chosen by kind and size. */
export function naturalUnit(value: Pick<Value, 'dimension' | 'si' | 'label'>): Unit {
  const size = Math.abs(value.si);
  const bySize = BY_SIZE[value.dimension];
  if (value.dimension === 'speed')
    return unit(/tip|rub|flow|advance|peripheral/.test(value.label) ? 'm/s' : 'kn');
  if (!bySize) return preferredUnit(value.dimension);
  const [symbol] = bySize.find(([, below]) => !(size >= below)) ?? bySize[bySize.length - 1]!;
  return unit(symbol);
}

/** Unit and the SI size below which it is used, smallest first. */
const BY_SIZE: Partial<Record<Dimension, readonly (readonly [symbol: string, below: number])[]>> = {
  length: [
    ['mm', 5],
    ['m', Number.POSITIVE_INFINITY],
  ],
  area: [
    ['mm2', 1e-2],
    ['m2', Number.POSITIVE_INFINITY],
  ],
  volume: [
    ['L', 1],
    ['m3', Number.POSITIVE_INFINITY],
  ],
  mass: [
    ['kg', 1e4],
    ['t', Number.POSITIVE_INFINITY],
  ],
  force: [
    ['N', 1e3],
    ['kN', 1e6],
    ['MN', Number.POSITIVE_INFINITY],
  ],
  torque: [
    ['N.m', 1e4],
    ['kN.m', Number.POSITIVE_INFINITY],
  ],
  power: [
    ['W', 100],
    ['kW', 1e7],
    ['MW', Number.POSITIVE_INFINITY],
  ],
  pressure: [
    ['kPa', 5e5],
    ['MPa', 5e9],
    ['GPa', Number.POSITIVE_INFINITY],
  ],
  energy: [
    ['J', 1e3],
    ['kJ', 1e6],
    ['MJ', Number.POSITIVE_INFINITY],
  ],
  'torsional stiffness': [
    ['N.m/rad', 1e4],
    ['kN.m/rad', 1e7],
    ['MN.m/rad', Number.POSITIVE_INFINITY],
  ],
  'section modulus': [['mm3', Number.POSITIVE_INFINITY]],
  'second moment of area': [['mm4', Number.POSITIVE_INFINITY]],
  time: [
    ['s', 120],
    ['min', 7200],
    ['h', Number.POSITIVE_INFINITY],
  ],
};

function unit(symbol: string): Unit {
  const found = findUnit(symbol);
  if (!found) throw new Error(`no unit is written ${symbol}`);
  return found;
}
