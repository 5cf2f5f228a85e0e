import { flywheelHousings, flywheelSizes } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { IN, MM } from './factors.js';

const inches = (metres: number | undefined) =>
  metres === undefined ? undefined : Number((metres / IN).toFixed(6));
const millimetres = (metres: number | undefined) =>
  metres === undefined ? undefined : Number((metres / MM).toFixed(6));

/**
 * SAE J617: size, pilot bore least and most, flange outside, bolt circle, holes, inch thread, depth E (in), bore run-out
 * (mm, total reading). Inches as printed in a clutch manual, checked there against three other copies.
 */
const HOUSINGS = [
  ['00', 31, 31.01, 34.75, 33.5, 16, '1/2-13', 3.94, 0.3],
  ['0', 25.5, 25.51, 28, 26.75, 16, '1/2-13', 3.94, 0.25],
  ['1/2', 23, 23.008, 25.5, 24.375, 12, '1/2-13', 3.94, 0.25],
  ['1', 20.125, 20.13, 21.75, 20.875, 12, '7/16-14', 3.94, 0.2],
  ['2', 17.625, 17.63, 19.25, 18.375, 12, '3/8-16', 3.94, 0.2],
  ['3', 16.125, 16.13, 17.75, 16.875, 12, '3/8-16', 3.94, 0.2],
  ['4', 14.25, 14.255, 15.875, 15, 12, '3/8-16', 3.94, undefined],
  ['5', 12.375, 12.38, 14, 13.125, 8, '3/8-16', 2.81, undefined],
  ['6', 10.5, 10.505, 12.125, 11.25, 8, '3/8-16', 2.81, undefined],
] as const;

describe('SAE J617, every column of every row as printed', () => {
  it.each(HOUSINGS)('No. %s', (...printed) => {
    const row = flywheelHousings.find(one => one.size === printed[0])!;
    expect([
      row.size,
      inches(row.pilotBore.min),
      inches(row.pilotBore.max),
      inches(row.outsideDiameter),
      inches(row.boltCircle),
      row.holes,
      row.inchThread,
      inches(row.depth),
      millimetres(row.boreRunOut),
    ]).toEqual(printed);
    expect(row.source.confidence).toBe('published');
  });

  it('has these rows and no other; metric holes only where a summary of the 2020 edition names them', () => {
    expect(flywheelHousings.map(row => row.size)).toEqual(HOUSINGS.map(([size]) => size));
    expect(
      Object.fromEntries(
        flywheelHousings.flatMap(row => (row.metricThread ? [[row.size, row.metricThread]] : [])),
      ),
    ).toEqual({ '00': 'M12', '0': 'M12', '1': 'M10', '2': 'M10', '4': 'M10', '6': 'M10' });
  });

  it('does not repeat the two misprints that circulate: 678 mm for No. 0, 283 mm for No. 6', () => {
    const row = (size: string) => flywheelHousings.find(one => one.size === size)!;
    expect(millimetres(row('0').pilotBore.min)).toBe(647.7);
    expect(millimetres(row('6').boltCircle)).toBe(285.75);
  });
});

/**
 * SAE J620: size, metric size, A, pilot B, bolt circle C, depth E, reach G (in), pilot bearing L (mm), holes, thread, and
 * how far holes and thread can be relied on. Inches as printed in two or three copies; 21 and 24 in one.
 */
const FLYWHEELS = [
  ['6.5', 165, 7.25, 8.5, 7.875, 2.81, 1.19, 52, 6, '5/16-18', 'published'],
  ['7.5', 190, 8.12, 9.5, 8.75, 2.81, 1.19, 52, 8, '5/16-18', 'published'],
  ['8', 200, 8.88, 10.375, 9.625, 3.94, 2.44, 62, 6, '3/8-16', 'published'],
  ['10', 255, 10.88, 12.375, 11.625, 3.94, 2.12, 72, 8, '3/8-16', 'published'],
  ['11.5', 290, 12.38, 13.875, 13.125, 3.94, 1.56, 72, 8, '3/8-16', 'published'],
  ['14', 355, 16.12, 18.375, 17.25, 3.94, 1, 80, 8, '1/2-13', 'published'],
  ['16', 405, 18.12, 20.375, 19.25, 3.94, 0.62, 100, 8, '1/2-13', 'published'],
  ['18', 460, 19.62, 22.5, 21.375, 3.94, 0.62, 100, 6, '5/8-11', 'published'],
  ['21', 530, 23, 26.5, 25.25, 3.94, undefined, undefined, 12, '5/8-11', 'from memory'],
  ['24', 610, 25.38, 28.875, 27.25, 3.94, undefined, undefined, 12, '3/4-10', 'from memory'],
] as const;

describe('SAE J620, every column of every row as printed', () => {
  it.each(FLYWHEELS)('%s in', (...printed) => {
    const row = flywheelSizes.find(one => one.size === printed[0])!;
    expect([
      row.size,
      row.metricSize,
      inches(row.innerClearance),
      inches(row.pilot),
      inches(row.boltCircle),
      inches(row.housingDepth),
      inches(row.couplingReach),
      millimetres(row.pilotBearingBore),
      row.holes,
      row.thread,
      row.holesSource.confidence,
    ]).toEqual(printed);
  });

  it('has these rows and no other, and says which come from one copy', () => {
    expect(flywheelSizes.map(row => row.size)).toEqual(FLYWHEELS.map(([size]) => size));
    expect(flywheelSizes.filter(row => row.source.clause?.includes('one copy')).map(row => row.size)).toEqual(
      ['21', '24'],
    );
  });
});
