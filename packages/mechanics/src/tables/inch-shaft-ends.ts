import type { Source } from '../core/source.js';
import { inch } from './printed-units.js';
import { sizeKey } from './size-name.js';

interface Limits {
  readonly nominal: number;
  readonly min?: number;
  readonly max?: number;
}

/** Tapered, keyed and threaded end of an inboard propeller shaft, inch series. Lengths in metres. */
export interface InchShaftEnd {
  readonly size: string;
  /** Shaft diameter, which is the large end of the taper. */
  readonly diameter: number;
  /** Change of diameter per length. */
  readonly taper: number;
  readonly smallEnd: Limits;
  readonly taperLength: number;
  /** Bore of the propeller hub at its small end. */
  readonly hubBoreSmallEnd: number;
  readonly keywayWidth: Limits;
  /** Depth of the keyway at its side. */
  readonly keywaySideDepth?: { readonly min: number; readonly max: number };
  readonly thread: string;
  readonly source: Source;
  readonly threadSource: Source;
}

/** Two independent copies agree; small end = diameter − length/16 on every row. */
const SAE_J755: Source = {
  title: 'SAE J755',
  clause: 'dimensions of shaft ends, two copies',
  confidence: 'published',
};
const ONE_CHART: Source = {
  title: 'SAE J755',
  clause: 'dimensions of shaft ends, one copy',
  confidence: 'published',
};
/** Threads per inch are printed; the thread diameter is not. */
const PITCH_PRINTED: Source = {
  title: 'SAE J755',
  clause: 'thread: pitch printed, diameter not',
  confidence: 'from memory',
};
const THREAD_FROM_MEMORY: Source = { title: 'SAE J755', clause: 'thread', confidence: 'from memory' };

export const inchShaftEnds: readonly InchShaftEnd[] = [
  {
    size: '3/4',
    diameter: inch(0.75),
    taper: 1 / 16,
    smallEnd: { nominal: inch(0.625), min: inch(0.624), max: inch(0.626) },
    taperLength: inch(2),
    hubBoreSmallEnd: inch(0.609),
    keywayWidth: { nominal: inch(0.1875), min: inch(0.1865), max: inch(0.1875) },
    keywaySideDepth: { min: inch(0.095), max: inch(0.097) },
    thread: '1/2-13',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '7/8',
    diameter: inch(0.875),
    taper: 1 / 16,
    smallEnd: { nominal: inch(0.727), min: inch(0.726), max: inch(0.728) },
    taperLength: inch(2.375),
    hubBoreSmallEnd: inch(0.711),
    keywayWidth: { nominal: inch(0.25), min: inch(0.249), max: inch(0.25) },
    keywaySideDepth: { min: inch(0.125), max: inch(0.127) },
    thread: '5/8-11',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '1',
    diameter: inch(1),
    taper: 1 / 16,
    smallEnd: { nominal: inch(0.828), min: inch(0.827), max: inch(0.829) },
    taperLength: inch(2.75),
    hubBoreSmallEnd: inch(0.813),
    keywayWidth: { nominal: inch(0.25), min: inch(0.249), max: inch(0.25) },
    keywaySideDepth: { min: inch(0.125), max: inch(0.127) },
    thread: '3/4-10',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '1 1/8',
    diameter: inch(1.125),
    taper: 1 / 16,
    smallEnd: { nominal: inch(0.93), min: inch(0.929), max: inch(0.931) },
    taperLength: inch(3.125),
    hubBoreSmallEnd: inch(0.914),
    keywayWidth: { nominal: inch(0.25), min: inch(0.249), max: inch(0.25) },
    keywaySideDepth: { min: inch(0.125), max: inch(0.127) },
    thread: '3/4-10',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '1 1/4',
    diameter: inch(1.25),
    taper: 1 / 16,
    smallEnd: { nominal: inch(1.031), min: inch(1.03), max: inch(1.032) },
    taperLength: inch(3.5),
    hubBoreSmallEnd: inch(1.016),
    keywayWidth: { nominal: inch(0.3125), min: inch(0.3115), max: inch(0.3125) },
    keywaySideDepth: { min: inch(0.157), max: inch(0.16) },
    thread: '7/8-9',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '1 3/8',
    diameter: inch(1.375),
    taper: 1 / 16,
    smallEnd: { nominal: inch(1.133), min: inch(1.132), max: inch(1.134) },
    taperLength: inch(3.875),
    hubBoreSmallEnd: inch(1.117),
    keywayWidth: { nominal: inch(0.3125), min: inch(0.3115), max: inch(0.3125) },
    keywaySideDepth: { min: inch(0.157), max: inch(0.16) },
    thread: '1-8',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '1 1/2',
    diameter: inch(1.5),
    taper: 1 / 16,
    smallEnd: { nominal: inch(1.234), min: inch(1.233), max: inch(1.235) },
    taperLength: inch(4.25),
    hubBoreSmallEnd: inch(1.219),
    keywayWidth: { nominal: inch(0.375), min: inch(0.374), max: inch(0.375) },
    keywaySideDepth: { min: inch(0.189), max: inch(0.192) },
    thread: '1 1/8-7',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '1 3/4',
    diameter: inch(1.75),
    taper: 1 / 16,
    smallEnd: { nominal: inch(1.438), min: inch(1.437), max: inch(1.439) },
    taperLength: inch(5),
    hubBoreSmallEnd: inch(1.422),
    keywayWidth: { nominal: inch(0.4375), min: inch(0.4365), max: inch(0.4375) },
    keywaySideDepth: { min: inch(0.219), max: inch(0.222) },
    thread: '1 1/4-7',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '2',
    diameter: inch(2),
    taper: 1 / 16,
    smallEnd: { nominal: inch(1.641), min: inch(1.64), max: inch(1.642) },
    taperLength: inch(5.75),
    hubBoreSmallEnd: inch(1.625),
    keywayWidth: { nominal: inch(0.5), min: inch(0.499), max: inch(0.5) },
    keywaySideDepth: { min: inch(0.251), max: inch(0.254) },
    thread: '1 1/2-6',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '2 1/4',
    diameter: inch(2.25),
    taper: 1 / 16,
    smallEnd: { nominal: inch(1.844), min: inch(1.843), max: inch(1.845) },
    taperLength: inch(6.5),
    hubBoreSmallEnd: inch(1.828),
    keywayWidth: { nominal: inch(0.5625), min: inch(0.561), max: inch(0.5625) },
    keywaySideDepth: { min: inch(0.281), max: inch(0.284) },
    thread: '1 3/4-5',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '2 1/2',
    diameter: inch(2.5),
    taper: 1 / 16,
    smallEnd: { nominal: inch(2.047), min: inch(2.046), max: inch(2.048) },
    taperLength: inch(7.25),
    hubBoreSmallEnd: inch(2.031),
    keywayWidth: { nominal: inch(0.625), min: inch(0.6235), max: inch(0.625) },
    keywaySideDepth: { min: inch(0.312), max: inch(0.315) },
    thread: '1 3/4-5',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '2 3/4',
    diameter: inch(2.75),
    taper: 1 / 16,
    smallEnd: { nominal: inch(2.258), min: inch(2.257), max: inch(2.259) },
    taperLength: inch(7.875),
    hubBoreSmallEnd: inch(2.234),
    keywayWidth: { nominal: inch(0.625), min: inch(0.6235), max: inch(0.625) },
    keywaySideDepth: { min: inch(0.313), max: inch(0.316) },
    thread: '2-4.5',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '3',
    diameter: inch(3),
    taper: 1 / 16,
    smallEnd: { nominal: inch(2.461), min: inch(2.46), max: inch(2.462) },
    taperLength: inch(8.625),
    hubBoreSmallEnd: inch(2.438),
    keywayWidth: { nominal: inch(0.75), min: inch(0.7485), max: inch(0.75) },
    keywaySideDepth: { min: inch(0.311), max: inch(0.314) },
    thread: '2 1/4-4.5',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '3 1/4',
    diameter: inch(3.25),
    taper: 1 / 16,
    smallEnd: { nominal: inch(2.664), min: inch(2.663), max: inch(2.665) },
    taperLength: inch(9.375),
    hubBoreSmallEnd: inch(2.641),
    keywayWidth: { nominal: inch(0.75), min: inch(0.7485), max: inch(0.75) },
    keywaySideDepth: { min: inch(0.311), max: inch(0.314) },
    thread: '2 1/2-4',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '3 1/2',
    diameter: inch(3.5),
    taper: 1 / 16,
    smallEnd: { nominal: inch(2.867), min: inch(2.866), max: inch(2.868) },
    taperLength: inch(10.125),
    hubBoreSmallEnd: inch(2.844),
    keywayWidth: { nominal: inch(0.875), min: inch(0.8735), max: inch(0.875) },
    keywaySideDepth: { min: inch(0.31), max: inch(0.313) },
    thread: '2 1/2-4',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '3 3/4',
    diameter: inch(3.75),
    taper: 1 / 16,
    smallEnd: { nominal: inch(3.07), min: inch(3.069), max: inch(3.071) },
    taperLength: inch(10.875),
    hubBoreSmallEnd: inch(3.047),
    keywayWidth: { nominal: inch(0.875), min: inch(0.8735), max: inch(0.875) },
    thread: '2 3/4-4',
    source: SAE_J755,
    threadSource: PITCH_PRINTED,
  },
  {
    size: '4',
    diameter: inch(4),
    taper: 1 / 16,
    smallEnd: { nominal: inch(3.273) },
    taperLength: inch(11.625),
    hubBoreSmallEnd: inch(3.25),
    keywayWidth: { nominal: inch(1) },
    thread: '3-4',
    source: ONE_CHART,
    threadSource: THREAD_FROM_MEMORY,
  },
  {
    size: '4 1/2',
    diameter: inch(4.5),
    taper: 1 / 16,
    smallEnd: { nominal: inch(3.828) },
    taperLength: inch(10.75),
    hubBoreSmallEnd: inch(3.797),
    keywayWidth: { nominal: inch(1.125) },
    thread: '3 1/4-4',
    source: ONE_CHART,
    threadSource: THREAD_FROM_MEMORY,
  },
  {
    size: '5',
    diameter: inch(5),
    taper: 1 / 16,
    smallEnd: { nominal: inch(4.25) },
    taperLength: inch(12),
    hubBoreSmallEnd: inch(4.219),
    keywayWidth: { nominal: inch(1.25) },
    thread: '3 3/4-4',
    source: ONE_CHART,
    threadSource: THREAD_FROM_MEMORY,
  },
  {
    size: '5 1/2',
    diameter: inch(5.5),
    taper: 1 / 16,
    smallEnd: { nominal: inch(4.672) },
    taperLength: inch(13.25),
    hubBoreSmallEnd: inch(4.641),
    keywayWidth: { nominal: inch(1.25) },
    thread: '4-4',
    source: ONE_CHART,
    threadSource: THREAD_FROM_MEMORY,
  },
];

/** Shafts of 6 to 8 in: of their rows only the taper was found. */
export const largeInchTaper = { from: inch(6), to: inch(8), taper: 1 / 12, source: SAE_J755 } as const;

/** Tolerance of the hub's taper by shaft size, plus nothing, as printed; the copy does not say over what length. */
export const hubTaperTolerances = [
  { from: inch(0.75), to: inch(1.25), minus: inch(0.002) },
  { from: inch(1.375), to: inch(2), minus: inch(0.0019) },
  { from: inch(2.25), to: inch(3), minus: inch(0.0015) },
  { from: inch(3.25), to: inch(8), minus: inch(0.0013) },
] as const;

/** The end of a size name: `1 1/2`, `1.5 in`, `1-1/2`. */
export function inchShaftEnd(name: string): InchShaftEnd | undefined {
  const key = sizeKey(name);
  return key === undefined ? undefined : inchShaftEnds.find(row => sizeKey(row.size) === key);
}

/** The end of a shaft diameter in metres, measured to within 0.1 mm of a standard size. */
export function inchShaftEndOf(diameter: number): InchShaftEnd | undefined {
  return inchShaftEnds.find(row => Math.abs(row.diameter - diameter) <= 0.1e-3);
}
