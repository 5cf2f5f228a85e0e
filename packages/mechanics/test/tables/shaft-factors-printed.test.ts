import {
  classPlantFactors,
  classShaftExclusions,
  classShaftFactors,
  classStrengthCaps,
  propellerToShaftDiameter,
  shaftMaterials,
  shaftServiceFactors,
  smallCraftClassFactors,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { LB_IN3, MPA, PSI } from './factors.js';

describe('IACS UR M68 factors', () => {
  /** Shaft, feature, k and how it is known, c_K and how it is known: in print only where another text uses the figure. */
  const ROWS = [
    ['intermediate', 'integral coupling flange or straight section', 1, 'from memory', 1, 'published'],
    ['intermediate', 'shrink-fit coupling', 1, 'from memory', 1, 'published'],
    ['intermediate', 'keyway, tapered connection', 1.1, 'from memory', 0.6, 'published'],
    ['intermediate', 'keyway, cylindrical connection', 1.1, 'from memory', 0.45, 'from memory'],
    ['intermediate', 'radial hole, at most 0.3 d', 1.1, 'from memory', 0.5, 'from memory'],
    ['intermediate', 'longitudinal slot', 1.2, 'from memory', 0.3, 'from memory'],
    ['thrust', 'both sides of the thrust collar', 1.1, 'from memory', 0.85, 'from memory'],
    ['thrust', 'in way of an axial roller bearing', 1.1, 'from memory', 0.85, 'from memory'],
    ['propeller', 'flange-mounted or keyless taper propeller', 1.22, 'published', 0.55, 'published'],
    ['propeller', 'keyed propeller', 1.26, 'published', 0.55, 'published'],
    [
      'propeller',
      'forward of the aft bearing, to the forward stern-tube seal',
      1.15,
      'from memory',
      0.8,
      'from memory',
    ],
  ];
  it('are these, each with how it is known', () => {
    expect(
      classShaftFactors.map(one => [
        one.shaft,
        one.feature,
        one.k,
        one.kSource.confidence,
        one.cK,
        one.cKSource.confidence,
      ]),
    ).toEqual(ROWS);
  });

  it('plant factors 95 and 100, and the caps of tensile strength in class rules of 2008', () => {
    expect(classPlantFactors.map(one => one.F)).toEqual([95, 100]);
    expect(Object.values(classStrengthCaps).map(cap => cap / MPA)).toEqual([600, 760, 800]);
  });

  it('names all that the requirement is not for', () => {
    expect(classShaftExclusions).toHaveLength(5);
    expect(classShaftExclusions.join()).toMatch(/ice.*gear.*rotor.*crank.*unprotected/);
  });
});

describe('safety factors of the small-craft formula, both published sets', () => {
  it('Gerr, Boat Mechanical Systems Handbook', () => {
    expect(
      shaftServiceFactors.filter(one => one.source.author).map(one => [one.use, one.low, one.high]),
    ).toEqual([
      ['light petrol pleasure', 2, 2],
      ['average yacht', 3, 3],
      ['long-range motor cruiser', 3.5, 4],
      ['high-performance racing', 4, 5],
      ['pilot or patrol', 5, 6],
      ['inspected passenger', 7.5, 7.5],
    ]);
  });
  it('a school of yacht design, an older handbook, Canadian practice', () => {
    expect(
      shaftServiceFactors.filter(one => !one.source.author).map(one => [one.use, one.low, one.high]),
    ).toEqual([
      ['light petrol pleasure', 2, 2],
      ['average yacht', 3, 3],
      ['racing or commercial', 5, 8],
      ['inspected passenger', 7.5, 7.5],
      ['heavy commercial or towing', 8, 8],
      ['passenger, Canadian practice', 10, 10],
    ]);
  });
  it('Gerr, Table 1-1: propeller over shaft diameter for 2, 3 and 4 blades', () => {
    const of = (material: string) =>
      propellerToShaftDiameter.filter(one => one.material === material).map(one => [one.blades, one.ratio]);
    expect(of('bronze or nickel-copper')).toEqual([
      [2, 14.5],
      [3, 14],
      [4, 13.1],
    ]);
    expect(of('high-strength stainless')).toEqual([
      [2, 18.1],
      [3, 17.5],
      [4, 16.3],
    ]);
  });
  it('Korean-form class guidance, Table 5.3.1: k_s by material for application 1, 2 and stern tube', () => {
    const of = (material: string) =>
      smallCraftClassFactors.filter(one => one.material.includes(material)).map(one => one.ks);
    expect([of('carbon steel'), of('316'), of('431')]).toEqual([
      [126, 114, 114],
      [91, 81, 81],
      [88, 80, 80],
    ]);
  });
});

describe('bar for propeller shafts', () => {
  /** Handbook table of two small-craft pages: torsional yield psi, Young's modulus psi, density lb/in³, copies. */
  it.each([
    ['S30400', 20_000, 28e6, 0.286, 'two copies'],
    ['S20910', 70_000, 28e6, 0.285, 'two copies'],
    ['S24100', 60_000, 28.8e6, 0.281, 'two copies'],
    ['S17400', 70_000, 28.5e6, 0.284, 'two copies'],
    ['N04400', 40_000, 26e6, 0.319, 'one copy'],
    ['N05500', 67_000, 26e6, 0.306, 'one copy'],
    ['C46400', 20_000, 16e6, 0.304, 'one copy'],
  ])('UNS %s: %d psi, %d psi, %f lb/in³', (uns, torsionalYield, modulus, density, copies) => {
    const row = shaftMaterials.find(one => one.uns === uns)!;
    expect(row.torsionalYield! / PSI).toBeCloseTo(torsionalYield, 6);
    expect(row.youngsModulus / PSI).toBeCloseTo(modulus, 3);
    expect(row.density / LB_IN3).toBeCloseTo(density, 9);
    expect(row.strengthSource.clause).toBe(copies);
    expect(row.tensileYield).toBeUndefined();
  });

  /** Korean-form class guidance: tensile yield and strength, MPa. Its elastic constants are from memory. */
  it.each([
    ['austenitic stainless 316', 175, 470],
    ['martensitic stainless 431', 675, 850],
    ['carbon steel', 200, 400],
  ])('%s: yield %d, strength %d MPa', (name, tensileYield, strength) => {
    const row = shaftMaterials.find(one => one.name === name)!;
    expect([row.tensileYield! / MPA, row.tensileStrength! / MPA]).toEqual([tensileYield, strength]);
    expect(row.torsionalYield).toBeUndefined();
    expect([row.strengthSource.confidence, row.elasticSource.confidence]).toEqual([
      'published',
      'from memory',
    ]);
  });

  it('has these ten and no other', () => {
    expect(shaftMaterials).toHaveLength(10);
  });
});
