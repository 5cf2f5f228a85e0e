import {
  hubTaperTolerances,
  inchShaftEnds,
  largeInchTaper,
  metricShaftEnds,
  outputFlanges,
  taperFitTolerances,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { IN, MM } from './factors.js';

type Inches = number | undefined;
/** Diameter, small end and limits, taper length, hub bore, keyway width and limits, side depth and limits, thread. */
type Row = readonly [
  diameter: number,
  smallEnd: number,
  smallEndMin: Inches,
  smallEndMax: Inches,
  taperLength: number,
  hubBore: number,
  keyway: number,
  keywayMin: Inches,
  keywayMax: Inches,
  sideDepthMin: Inches,
  sideDepthMax: Inches,
  thread: string,
];

/** SAE J755, inches as printed in a propeller maker's chart and a one-page scan; thread diameters from memory. */
const PRINTED: readonly Row[] = [
  [0.75, 0.625, 0.624, 0.626, 2, 0.609, 0.1875, 0.1865, 0.1875, 0.095, 0.097, '1/2-13'],
  [0.875, 0.727, 0.726, 0.728, 2.375, 0.711, 0.25, 0.249, 0.25, 0.125, 0.127, '5/8-11'],
  [1, 0.828, 0.827, 0.829, 2.75, 0.813, 0.25, 0.249, 0.25, 0.125, 0.127, '3/4-10'],
  [1.125, 0.93, 0.929, 0.931, 3.125, 0.914, 0.25, 0.249, 0.25, 0.125, 0.127, '3/4-10'],
  [1.25, 1.031, 1.03, 1.032, 3.5, 1.016, 0.3125, 0.3115, 0.3125, 0.157, 0.16, '7/8-9'],
  [1.375, 1.133, 1.132, 1.134, 3.875, 1.117, 0.3125, 0.3115, 0.3125, 0.157, 0.16, '1-8'],
  [1.5, 1.234, 1.233, 1.235, 4.25, 1.219, 0.375, 0.374, 0.375, 0.189, 0.192, '1 1/8-7'],
  [1.75, 1.438, 1.437, 1.439, 5, 1.422, 0.4375, 0.4365, 0.4375, 0.219, 0.222, '1 1/4-7'],
  [2, 1.641, 1.64, 1.642, 5.75, 1.625, 0.5, 0.499, 0.5, 0.251, 0.254, '1 1/2-6'],
  [2.25, 1.844, 1.843, 1.845, 6.5, 1.828, 0.5625, 0.561, 0.5625, 0.281, 0.284, '1 3/4-5'],
  [2.5, 2.047, 2.046, 2.048, 7.25, 2.031, 0.625, 0.6235, 0.625, 0.312, 0.315, '1 3/4-5'],
  [2.75, 2.258, 2.257, 2.259, 7.875, 2.234, 0.625, 0.6235, 0.625, 0.313, 0.316, '2-4.5'],
  [3, 2.461, 2.46, 2.462, 8.625, 2.438, 0.75, 0.7485, 0.75, 0.311, 0.314, '2 1/4-4.5'],
  [3.25, 2.664, 2.663, 2.665, 9.375, 2.641, 0.75, 0.7485, 0.75, 0.311, 0.314, '2 1/2-4'],
  [3.5, 2.867, 2.866, 2.868, 10.125, 2.844, 0.875, 0.8735, 0.875, 0.31, 0.313, '2 1/2-4'],
  [3.75, 3.07, 3.069, 3.071, 10.875, 3.047, 0.875, 0.8735, 0.875, undefined, undefined, '2 3/4-4'],
  [4, 3.273, undefined, undefined, 11.625, 3.25, 1, undefined, undefined, undefined, undefined, '3-4'],
  [
    4.5,
    3.828,
    undefined,
    undefined,
    10.75,
    3.797,
    1.125,
    undefined,
    undefined,
    undefined,
    undefined,
    '3 1/4-4',
  ],
  [5, 4.25, undefined, undefined, 12, 4.219, 1.25, undefined, undefined, undefined, undefined, '3 3/4-4'],
  [5.5, 4.672, undefined, undefined, 13.25, 4.641, 1.25, undefined, undefined, undefined, undefined, '4-4'],
];

const inches = (metres: number | undefined): Inches =>
  metres === undefined ? undefined : Number((metres / IN).toFixed(6));

describe('SAE J755, every column of every row as printed', () => {
  it('has these rows and no other', () => {
    expect(inchShaftEnds.map(row => inches(row.diameter))).toEqual(PRINTED.map(([diameter]) => diameter));
  });

  it.each(PRINTED)('%d in', (...printed) => {
    const row = inchShaftEnds.find(one => inches(one.diameter) === printed[0])!;
    expect([
      inches(row.diameter),
      inches(row.smallEnd.nominal),
      inches(row.smallEnd.min),
      inches(row.smallEnd.max),
      inches(row.taperLength),
      inches(row.hubBoreSmallEnd),
      inches(row.keywayWidth.nominal),
      inches(row.keywayWidth.min),
      inches(row.keywayWidth.max),
      inches(row.keywaySideDepth?.min),
      inches(row.keywaySideDepth?.max),
      row.thread,
    ]).toEqual(printed);
    expect(row.taper).toBe(1 / 16);
  });

  it('counts rows of two copies and rows of one copy apart, and no thread as read', () => {
    const copies = (size: number) => inchShaftEnds.find(row => inches(row.diameter) === size)!.source.clause;
    expect(copies(3.75)).toContain('two copies');
    expect(copies(4)).toContain('one copy');
    expect(new Set(inchShaftEnds.map(row => row.threadSource.confidence))).toEqual(new Set(['from memory']));
  });

  it('has the printed tolerances of the hub taper', () => {
    expect(hubTaperTolerances.map(one => [one.from, one.to, one.minus].map(inches))).toEqual([
      [0.75, 1.25, 0.002],
      [1.375, 2, 0.0019],
      [2.25, 3, 0.0015],
      [3.25, 8, 0.0013],
    ]);
    expect([inches(largeInchTaper.from), inches(largeInchTaper.to), largeInchTaper.taper]).toEqual([
      6,
      8,
      1 / 12,
    ]);
  });

  it('takes a keyway for the same within the spread of its printed limits', () => {
    const spread = Math.max(...PRINTED.map(row => (row[8] ?? 0) - (row[7] ?? 0)));
    expect(taperFitTolerances.keywayWidth).toBeGreaterThanOrEqual(spread * IN - 1e-9);
  });
});

describe('ends and flanges that are mostly from memory', () => {
  it("metric small-craft ends, 1:10, of one vendor's order sheet", () => {
    const mm = (metres: number) => Number((metres / MM).toFixed(6));
    expect(
      metricShaftEnds.map(row => [
        mm(row.diameter),
        row.taper,
        mm(row.taperLength.min),
        mm(row.taperLength.max),
        row.thread,
        mm(row.key.width),
        mm(row.key.height),
        row.source.confidence,
      ]),
    ).toEqual([
      [25, 0.1, 53, 55, 'M16x1.5', 6, 6, 'from memory'],
      [30, 0.1, 70, 75, 'M20x1.5', 8, 7, 'from memory'],
    ]);
  });

  it('SAE J756 output flanges: the 5 in circle is 108 mm in print, the rest is from memory and says so', () => {
    expect(
      outputFlanges.map(row => [
        row.size,
        inches(row.boltCircle),
        inches(row.pilot),
        row.bolts,
        row.bolt,
        row.boltHole,
        row.source.confidence,
      ]),
    ).toEqual([
      ['4', 3.25, 2.5, 4, '3/8', undefined, 'from memory'],
      ['5', 4.25, 2.5, 4, '7/16', 11.5e-3, 'from memory'],
      ['7.25', undefined, undefined, undefined, undefined, undefined, 'from memory'],
    ]);
    expect(outputFlanges[1]!.boltCircle! / MM).toBeCloseTo(108, 0);
    expect(outputFlanges[1]!.note).toContain('the rest from memory');
    expect(outputFlanges[2]!.note).toContain('take every dimension from the drawing');
  });
});
