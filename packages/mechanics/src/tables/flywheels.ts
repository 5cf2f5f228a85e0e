import type { Source } from '../core/source.js';
import { inch } from './printed-units.js';
import { sizeKey } from './size-name.js';

/** One size of engine flywheel for a clutch or a flexible coupling. Lengths in metres. */
export interface FlywheelSize {
  /** Clutch size in inches: `11.5`. */
  readonly size: string;
  /** Metric designation, about the same size in millimetres. */
  readonly metricSize: number;
  /** Diameter free of the recess, letter A: what a damper's rivet ring must stay inside. */
  readonly innerClearance: number;
  /** Diameter that locates the coupling plate, letter B, which is the plate's outside diameter. */
  readonly pilot: number;
  /** Letter C. */
  readonly boltCircle: number;
  /** Letter E. */
  readonly housingDepth: number;
  /** Flywheel face to housing face, letter G. */
  readonly couplingReach?: number;
  /** Letter L. */
  readonly pilotBearingBore?: number;
  readonly holes: number;
  readonly thread: string;
  readonly source: Source;
  readonly holesSource: Source;
}

const SAE_J620: Source = {
  title: 'SAE J620',
  clause: 'table of flywheel sizes, two or three copies',
  confidence: 'published',
};
const ONE_COPY: Source = {
  title: 'SAE J620',
  clause: 'table of flywheel sizes, one copy',
  confidence: 'published',
};
const HOLES_FROM_MEMORY: Source = {
  title: 'SAE J620',
  clause: 'holes and threads',
  confidence: 'from memory',
};

export const flywheelSizes: readonly FlywheelSize[] = [
  {
    size: '6.5',
    metricSize: 165,
    innerClearance: inch(7.25),
    pilot: inch(8.5),
    boltCircle: inch(7.875),
    housingDepth: inch(2.81),
    couplingReach: inch(1.19),
    pilotBearingBore: 52e-3,
    holes: 6,
    thread: '5/16-18',
    source: SAE_J620,
    holesSource: SAE_J620,
  },
  {
    size: '7.5',
    metricSize: 190,
    innerClearance: inch(8.12),
    pilot: inch(9.5),
    boltCircle: inch(8.75),
    housingDepth: inch(2.81),
    couplingReach: inch(1.19),
    pilotBearingBore: 52e-3,
    holes: 8,
    thread: '5/16-18',
    source: SAE_J620,
    holesSource: SAE_J620,
  },
  {
    size: '8',
    metricSize: 200,
    innerClearance: inch(8.88),
    pilot: inch(10.375),
    boltCircle: inch(9.625),
    housingDepth: inch(3.94),
    couplingReach: inch(2.44),
    pilotBearingBore: 62e-3,
    holes: 6,
    thread: '3/8-16',
    source: SAE_J620,
    holesSource: SAE_J620,
  },
  {
    size: '10',
    metricSize: 255,
    innerClearance: inch(10.88),
    pilot: inch(12.375),
    boltCircle: inch(11.625),
    housingDepth: inch(3.94),
    couplingReach: inch(2.12),
    pilotBearingBore: 72e-3,
    holes: 8,
    thread: '3/8-16',
    source: SAE_J620,
    holesSource: SAE_J620,
  },
  {
    size: '11.5',
    metricSize: 290,
    innerClearance: inch(12.38),
    pilot: inch(13.875),
    boltCircle: inch(13.125),
    housingDepth: inch(3.94),
    couplingReach: inch(1.56),
    pilotBearingBore: 72e-3,
    holes: 8,
    thread: '3/8-16',
    source: SAE_J620,
    holesSource: SAE_J620,
  },
  {
    size: '14',
    metricSize: 355,
    innerClearance: inch(16.12),
    pilot: inch(18.375),
    boltCircle: inch(17.25),
    housingDepth: inch(3.94),
    couplingReach: inch(1),
    pilotBearingBore: 80e-3,
    holes: 8,
    thread: '1/2-13',
    source: SAE_J620,
    holesSource: SAE_J620,
  },
  {
    size: '16',
    metricSize: 405,
    innerClearance: inch(18.12),
    pilot: inch(20.375),
    boltCircle: inch(19.25),
    housingDepth: inch(3.94),
    couplingReach: inch(0.62),
    pilotBearingBore: 100e-3,
    holes: 8,
    thread: '1/2-13',
    source: SAE_J620,
    holesSource: SAE_J620,
  },
  {
    size: '18',
    metricSize: 460,
    innerClearance: inch(19.62),
    pilot: inch(22.5),
    boltCircle: inch(21.375),
    housingDepth: inch(3.94),
    couplingReach: inch(0.62),
    pilotBearingBore: 100e-3,
    holes: 6,
    thread: '5/8-11',
    source: SAE_J620,
    holesSource: SAE_J620,
  },
  {
    size: '21',
    metricSize: 530,
    innerClearance: inch(23),
    pilot: inch(26.5),
    boltCircle: inch(25.25),
    housingDepth: inch(3.94),
    holes: 12,
    thread: '5/8-11',
    source: ONE_COPY,
    holesSource: HOLES_FROM_MEMORY,
  },
  {
    size: '24',
    metricSize: 610,
    innerClearance: inch(25.38),
    pilot: inch(28.875),
    boltCircle: inch(27.25),
    housingDepth: inch(3.94),
    holes: 12,
    thread: '3/4-10',
    source: ONE_COPY,
    holesSource: HOLES_FROM_MEMORY,
  },
];

/** The flywheel of a size name: `11 1/2`, `11.5 in`, `14`, or the metric designation `290`. */
export function flywheelSize(name: string): FlywheelSize | undefined {
  const key = sizeKey(name);
  if (key === undefined) return undefined;
  return flywheelSizes.find(row => sizeKey(row.size) === key || String(row.metricSize) === key);
}
