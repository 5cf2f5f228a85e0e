import type { Source } from '../core/source.js';
import { inch } from './printed-units.js';
import { sizeKey } from './size-name.js';

/** One size of engine flywheel housing with its gear flange. Lengths in metres. */
export interface FlywheelHousing {
  /** `00` largest, `6` smallest. */
  readonly size: string;
  /** Bore of the housing that takes the male pilot of the gear. */
  readonly pilotBore: { readonly min: number; readonly max: number };
  readonly outsideDiameter: number;
  readonly boltCircle: number;
  readonly holes: number;
  readonly inchThread: string;
  /** Metric tapped holes of the 2020 edition, where a summary of it was at hand. */
  readonly metricThread?: string;
  /** Housing face to the crankshaft-flange reference (letter E of the standard). */
  readonly depth: number;
  /** Total indicator reading; the 2020 edition allows 0.18 mm (No. 6) to 0.48 mm (No. 00) instead. */
  readonly boreRunOut?: number;
  readonly source: Source;
}

/** Four independent copies of the table agree, apart from two misprints (678 for 647.7 mm, 283 for 285.75 mm). */
const SAE_J617: Source = {
  title: 'SAE J617',
  clause: 'table of housing sizes, four copies',
  confidence: 'published',
};

export const flywheelHousings: readonly FlywheelHousing[] = [
  {
    size: '00',
    pilotBore: { min: inch(31), max: inch(31.01) },
    outsideDiameter: inch(34.75),
    boltCircle: inch(33.5),
    holes: 16,
    inchThread: '1/2-13',
    metricThread: 'M12',
    depth: inch(3.94),
    boreRunOut: 0.3e-3,
    source: SAE_J617,
  },
  {
    size: '0',
    pilotBore: { min: inch(25.5), max: inch(25.51) },
    outsideDiameter: inch(28),
    boltCircle: inch(26.75),
    holes: 16,
    inchThread: '1/2-13',
    metricThread: 'M12',
    depth: inch(3.94),
    boreRunOut: 0.25e-3,
    source: SAE_J617,
  },
  {
    size: '1/2',
    pilotBore: { min: inch(23), max: inch(23.008) },
    outsideDiameter: inch(25.5),
    boltCircle: inch(24.375),
    holes: 12,
    inchThread: '1/2-13',
    depth: inch(3.94),
    boreRunOut: 0.25e-3,
    source: SAE_J617,
  },
  {
    size: '1',
    pilotBore: { min: inch(20.125), max: inch(20.13) },
    outsideDiameter: inch(21.75),
    boltCircle: inch(20.875),
    holes: 12,
    inchThread: '7/16-14',
    metricThread: 'M10',
    depth: inch(3.94),
    boreRunOut: 0.2e-3,
    source: SAE_J617,
  },
  {
    size: '2',
    pilotBore: { min: inch(17.625), max: inch(17.63) },
    outsideDiameter: inch(19.25),
    boltCircle: inch(18.375),
    holes: 12,
    inchThread: '3/8-16',
    metricThread: 'M10',
    depth: inch(3.94),
    boreRunOut: 0.2e-3,
    source: SAE_J617,
  },
  {
    size: '3',
    pilotBore: { min: inch(16.125), max: inch(16.13) },
    outsideDiameter: inch(17.75),
    boltCircle: inch(16.875),
    holes: 12,
    inchThread: '3/8-16',
    depth: inch(3.94),
    boreRunOut: 0.2e-3,
    source: SAE_J617,
  },
  {
    size: '4',
    pilotBore: { min: inch(14.25), max: inch(14.255) },
    outsideDiameter: inch(15.875),
    boltCircle: inch(15),
    holes: 12,
    inchThread: '3/8-16',
    metricThread: 'M10',
    depth: inch(3.94),
    source: SAE_J617,
  },
  {
    size: '5',
    pilotBore: { min: inch(12.375), max: inch(12.38) },
    outsideDiameter: inch(14),
    boltCircle: inch(13.125),
    holes: 8,
    inchThread: '3/8-16',
    depth: inch(2.81),
    source: SAE_J617,
  },
  {
    size: '6',
    pilotBore: { min: inch(10.5), max: inch(10.505) },
    outsideDiameter: inch(12.125),
    boltCircle: inch(11.25),
    holes: 8,
    inchThread: '3/8-16',
    metricThread: 'M10',
    depth: inch(2.81),
    source: SAE_J617,
  },
];

/** The housing of a size name: `SAE 3`, `3M`, `No. 1/2`. */
export function flywheelHousing(name: string): FlywheelHousing | undefined {
  const key = sizeKey(name);
  return key === undefined ? undefined : flywheelHousings.find(row => sizeKey(row.size) === key);
}

/** A suffix M means metric tapped holes; without it the name does not say, and both are found in the field. */
export function housingThreads(name: string): 'metric' | 'not stated' {
  return /\dm$/i.test(name.trim()) ? 'metric' : 'not stated';
}
