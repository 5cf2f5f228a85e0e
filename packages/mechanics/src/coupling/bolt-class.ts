import type { Source } from '../core/source.js';

/** What the class stamped on a bolt says of its steel, Pa. */
export interface BoltStrength {
  readonly tensileStrength: number;
  readonly tensileYield: number;
  readonly source: Source;
}

const STEEL: Source = {
  title: 'ISO 898-1',
  clause:
    'property classes: the figures are a hundredth of the strength in MPa, and ten times yield over strength',
  year: 2013,
  confidence: 'published',
};
const STAINLESS: Source = {
  title: 'ISO 3506-1',
  clause: 'property classes 50, 70 and 80 of austenitic steel',
  year: 2020,
  confidence: 'from memory',
};

/** 0.2 % yield of the stainless classes, MPa. */
const STAINLESS_YIELD: Readonly<Record<string, number>> = { '50': 210, '70': 450, '80': 600 };

/** Steel classes that bolts are kept in, weakest first. */
export const STEEL_BOLT_CLASSES = ['4.6', '5.6', '8.8', '10.9', '12.9'] as const;

/** Strength of a class, `8.8` or `A4-70`; undefined where the words are none. */
export function boltStrengthOf(name: string): BoltStrength | undefined {
  if ((STEEL_BOLT_CLASSES as readonly string[]).includes(name)) {
    const [hundreds, tenths] = name.split('.').map(Number) as [number, number];
    const tensileStrength = hundreds * 100e6;
    return { tensileStrength, tensileYield: (tensileStrength * tenths) / 10, source: STEEL };
  }
  const figure = /^A[24]-(50|70|80)$/.exec(name)?.[1];
  if (!figure) return undefined;
  return {
    tensileStrength: Number(figure) * 10e6,
    tensileYield: STAINLESS_YIELD[figure]! * 1e6,
    source: STAINLESS,
  };
}
