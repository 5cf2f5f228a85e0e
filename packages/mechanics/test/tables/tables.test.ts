import {
  flywheelHousing,
  flywheelHousings,
  flywheelSize,
  flywheelSizes,
  housingThreads,
  hubTaperTolerances,
  inchShaftEnd,
  inchShaftEndOf,
  inchShaftEnds,
  largeInchTaper,
  metricShaftEndOf,
  outputFlange,
  shaftMaterial,
  shaftMaterials,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { IN, PSI } from './factors.js';

const mm = (metres: number) => Math.round(metres * 1e6) / 1e3;

describe('SAE J617 housings, printed inches converted by hand', () => {
  it.each([
    ['00', 787.4, 850.9, 16],
    ['0', 647.7, 679.45, 16],
    ['1/2', 584.2, 619.125, 12],
    ['1', 511.175, 530.225, 12],
    ['2', 447.675, 466.725, 12],
    ['3', 409.575, 428.625, 12],
    ['4', 361.95, 381, 12],
    ['5', 314.325, 333.375, 8],
    ['6', 266.7, 285.75, 8],
  ])('No. %s: pilot %d, bolt circle %d mm, %d holes', (size, pilot, circle, holes) => {
    const row = flywheelHousing(size)!;
    expect([mm(row.pilotBore.min), mm(row.boltCircle), row.holes]).toEqual([pilot, circle, holes]);
  });

  it.each(['SAE 3', 'SAE-3', 'sae no. 3', '3M', 'SAE 3M', '#3'])('reads %s', name => {
    expect(flywheelHousing(name)?.size).toBe('3');
  });

  it('keeps 0, 00 and 1/2 apart, and knows no 7', () => {
    expect([
      flywheelHousing('SAE 0')?.size,
      flywheelHousing('SAE 00')?.size,
      flywheelHousing('1/2')?.size,
    ]).toEqual(['0', '00', '1/2']);
    expect(flywheelHousing('SAE 7')).toBeUndefined();
    expect(flywheelHousing('three')).toBeUndefined();
    expect(flywheelHousing('1/0')).toBeUndefined();
  });

  it('says threads only where the name says them', () => {
    expect([housingThreads('SAE 3M'), housingThreads('SAE 3')]).toEqual(['metric', 'not stated']);
  });

  it('gets smaller from row to row, bolts outside the pilot and inside the flange', () => {
    flywheelHousings.forEach((row, i) => {
      if (i > 0) expect(row.pilotBore.min).toBeLessThan(flywheelHousings[i - 1]!.pilotBore.min);
      expect(row.pilotBore.max).toBeLessThan(row.boltCircle);
      expect(row.boltCircle).toBeLessThan(row.outsideDiameter);
      expect(row.pilotBore.max).toBeGreaterThan(row.pilotBore.min);
    });
  });
});

describe('SAE J620 flywheels, printed inches converted by hand', () => {
  it.each([
    ['6.5', 215.9, 200.025, 6],
    ['7 1/2', 241.3, 222.25, 8],
    ['8', 263.525, 244.475, 6],
    ['10', 314.325, 295.275, 8],
    ['11 1/2 in', 352.425, 333.375, 8],
    ['14"', 466.725, 438.15, 8],
    ['16', 517.525, 488.95, 8],
    ['18', 571.5, 542.925, 6],
    ['21', 673.1, 641.35, 12],
    ['24', 733.425, 692.15, 12],
  ])('%s: pilot %d, bolt circle %d mm, %d holes', (size, pilot, circle, holes) => {
    const row = flywheelSize(size)!;
    expect([mm(row.pilot), mm(row.boltCircle), row.holes]).toEqual([pilot, circle, holes]);
  });

  it('knows the metric designation, and marks the holes that nobody printed', () => {
    expect(flywheelSize('290')?.size).toBe('11.5');
    expect(
      flywheelSizes.filter(row => row.holesSource.confidence === 'from memory').map(row => row.size),
    ).toEqual(['21', '24']);
  });
});

describe('SAE J755 shaft ends', () => {
  it('has twenty sizes, each looked up by name and by diameter', () => {
    expect(inchShaftEnds).toHaveLength(20);
    for (const row of inchShaftEnds) {
      expect(inchShaftEnd(row.size)).toBe(row);
      expect(inchShaftEnd(String(Number((row.diameter / IN).toFixed(6))))).toBe(row);
      expect(inchShaftEndOf(row.diameter + 0.05e-3)).toBe(row);
    }
    expect(inchShaftEnd('1-1/2')?.size).toBe('1 1/2');
    expect(inchShaftEndOf(0.04)).toBeUndefined();
  });

  it('has its nominal sizes inside its printed limits', () => {
    for (const row of inchShaftEnds) {
      for (const { nominal, min, max } of [row.smallEnd, row.keywayWidth]) {
        if (min !== undefined) expect(nominal).toBeGreaterThanOrEqual(min - 1e-12);
        if (max !== undefined) expect(nominal).toBeLessThanOrEqual(max + 1e-12);
      }
      expect(row.hubBoreSmallEnd).toBeLessThan(row.smallEnd.nominal);
      expect(row.threadSource.confidence).toBe('from memory');
    }
  });

  it('knows only the taper from 6 to 8 in, and a hub tolerance over the whole range', () => {
    expect(largeInchTaper.taper).toBeCloseTo(1 / 12, 12);
    for (const row of inchShaftEnds)
      expect(
        hubTaperTolerances.filter(one => one.from <= row.diameter && row.diameter <= one.to),
      ).toHaveLength(1);
  });

  it('has the two metric ends of the order sheet, marked as not from the standard', () => {
    expect(metricShaftEndOf(0.025)).toMatchObject({ thread: 'M16x1.5', taper: 0.1 });
    expect(metricShaftEndOf(0.03)?.source.confidence).toBe('from memory');
    expect(metricShaftEndOf(0.035)).toBeUndefined();
  });
});

describe('output flanges', () => {
  it('are looked up by size; of the largest nothing but the name is known', () => {
    expect(mm(outputFlange('5 in')!.boltCircle!)).toBe(107.95);
    expect(mm(outputFlange('4')!.boltCircle!)).toBe(82.55);
    expect(outputFlange('7 1/4')).toMatchObject({ size: '7.25' });
    expect(outputFlange('7 1/4')!.boltCircle).toBeUndefined();
  });
});

describe('shaft materials', () => {
  it('are looked up by grade or unified number, never by a bare family', () => {
    expect(shaftMaterial('UNS S20910')?.torsionalYield).toBeCloseTo(70_000 * PSI, 3);
    expect(shaftMaterial('Naval Brass')?.uns).toBe('C46400');
    expect(shaftMaterial('stainless')).toBeUndefined();
    expect(shaftMaterial('')).toBeUndefined();
  });

  it('span 3:1 and more in torsional yield between stainless grades', () => {
    const yields = shaftMaterials
      .filter(row => row.family === 'steel')
      .flatMap(row => row.torsionalYield ?? []);
    expect(Math.max(...yields) / Math.min(...yields)).toBeGreaterThan(3);
  });

  it('all give a torsional or a tensile yield, with a source', () => {
    for (const row of shaftMaterials) {
      expect(row.torsionalYield ?? row.tensileYield, row.name).toBeGreaterThan(0);
      expect(row.strengthSource.title).not.toBe('');
    }
  });
});
