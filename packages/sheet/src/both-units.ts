import {
  type Dimension,
  findUnit,
  formatQuantity,
  formatValue,
  NO_VALUE,
  type Value,
  writtenUnit,
} from '@tailshaft/mechanics';
import { quiet, separated, type Text } from './document/text.js';

/**
 * The same quantity in the other tradition: US customary beside SI, SI beside US customary. Undefined where both say it
 * alike, as they do revolutions, degrees and knots.
 */
export function otherUnits(value: Value): string | undefined {
  const system = writtenUnit(value)?.system;
  const text = system === 'US' || system === 'imperial' ? siText(value) : customaryText(value);
  return text === value.written ? undefined : text;
}

/** The other tradition beside words of a quantity: a figure that is worked out is told in the units of whoever wrote the spec. */
export function besideWords(value: Value, words: string): string | undefined {
  const usual = otherUnits(value);
  if (usual === undefined || unitIn(usual) !== unitIn(words)) return usual;
  return [siText(value), customaryText(value)].find(one => one && unitIn(one) !== unitIn(words));
}

const unitIn = (words: string) => words.slice(words.indexOf(' ') + 1);

/** A figure as the trade says it, with what it is in US customary units: in whichever of them it was declared. */
export function inBoth(value: Value): Text {
  const other = customaryText(value);
  return separated(' ', formatValue(value), other && quiet(`(${other})`));
}

/** In SI with the prefixes of the trade; undefined for plain numbers. */
export function siText(value: Value): string | undefined {
  return said(PLAIN.has(value.dimension) ? NO_VALUE : formatValue(value));
}

/** In US customary units; undefined where those are no others. */
export function customaryText(value: Value): string | undefined {
  const sizes = CUSTOMARY[value.dimension];
  if (!sizes || (value.dimension === 'speed' && !/m\/s|ft\/s|km\/h/.test(formatValue(value))))
    return undefined;
  const size = Math.abs(value.si);
  const [symbol] = sizes.find(([, below]) => size < below) ?? sizes[sizes.length - 1]!;
  const unit = findUnit(symbol);
  return unit && said(formatQuantity(value.si, unit));
}

const said = (text: string) => (text === NO_VALUE ? undefined : text);

const PLAIN = new Set<Dimension>(['number', 'ratio']);
const ANY = Number.POSITIVE_INFINITY;

/** Unit and the SI size below which the trade uses it, smallest first. */
const CUSTOMARY: Partial<Record<Dimension, readonly (readonly [symbol: string, below: number])[]>> = {
  length: [
    ['in', 3],
    ['ft', ANY],
  ],
  area: [
    ['in2', 0.1],
    ['ft2', ANY],
  ],
  volume: [
    ['US-gal', 10],
    ['ft3', ANY],
  ],
  'section modulus': [['in3', ANY]],
  'second moment of area': [['in4', ANY]],
  mass: [['lb', ANY]],
  'mass per length': [['lb/ft', ANY]],
  'moment of mass': [['lbm.ft', ANY]],
  'moment of inertia': [['lb.ft2', ANY]],
  density: [
    ['lb/ft3', 2000],
    ['lb/in3', ANY],
  ],
  force: [['lbf', ANY]],
  pressure: [
    ['psi', 5e9],
    ['Mpsi', ANY],
  ],
  torque: [['lbf.ft', ANY]],
  'torsional stiffness': [['lbf.ft/rad', ANY]],
  'torsional damping': [['lbf.ft.s/rad', ANY]],
  'linear stiffness': [['lbf/in', ANY]],
  power: [['hp', ANY]],
  'power per speed': [['hp/100rpm', ANY]],
  'volume flow': [['US-gal/h', ANY]],
  'fuel rate': [['lb/hp.h', ANY]],
  speed: [['ft/s', ANY]],
  acceleration: [['ft/s2', ANY]],
  temperature: [['degF', ANY]],
};
