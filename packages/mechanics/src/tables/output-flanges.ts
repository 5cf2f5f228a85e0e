import type { Source } from '../core/source.js';
import { inch } from './printed-units.js';
import { sizeKey } from './size-name.js';

/** Output flange of an inboard reduction gear, US inch series, named by its outside diameter. Lengths in metres. */
export interface OutputFlange {
  readonly size: string;
  readonly outsideDiameter: number;
  readonly boltCircle?: number;
  readonly bolts?: number;
  /** As written: `7/16`. */
  readonly bolt?: string;
  readonly boltHole?: number;
  readonly pilot?: number;
  readonly source: Source;
  readonly note?: string;
}

const memory: Source = { title: 'SAE J756', clause: 'output flanges', confidence: 'from memory' };

export const outputFlanges: readonly OutputFlange[] = [
  {
    size: '4',
    outsideDiameter: inch(4),
    boltCircle: inch(3.25),
    bolts: 4,
    bolt: '3/8',
    pilot: inch(2.5),
    source: memory,
  },
  {
    size: '5',
    outsideDiameter: inch(5),
    boltCircle: inch(4.25),
    bolts: 4,
    bolt: '7/16',
    boltHole: 11.5e-3,
    pilot: inch(2.5),
    source: memory,
    note: 'bolt circle (108 mm) and hole printed on one coupling page, the rest from memory',
  },
  {
    size: '7.25',
    outsideDiameter: inch(7.25),
    source: memory,
    note: 'only the size name is known: take every dimension from the drawing',
  },
];

/** The flange of a size name: `5 in`, `7 1/4`. */
export function outputFlange(name: string): OutputFlange | undefined {
  const key = sizeKey(name);
  return key === undefined ? undefined : outputFlanges.find(row => sizeKey(row.size) === key);
}
