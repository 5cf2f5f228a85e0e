import {
  given,
  massPerLength,
  shearModulus,
  torqueAtShearStress,
  torsionalShearStress,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diameterForTorsion } from '../held/torsion.js';
import { published } from '../published.js';
import { HP, IN, KW, LB_IN3, MM, MPA, PSI, RPM } from '../tables/factors.js';

const torque = (power: number, rpm: number) => power / (rpm * RPM);

published(diameterForTorsion, 'Gere and Timoshenko, Mechanics of Materials, example 3.7', [
  {
    case: '40 hp at 500 rpm, 6000 psi',
    inputs: { torque: torque(40 * HP, 500), stress: 6000 * PSI, boreRatio: 0 },
    gives: 1.62,
    within: 0.005,
    unit: IN,
  },
  {
    case: '40 hp at 3000 rpm, 6000 psi',
    inputs: { torque: torque(40 * HP, 3000), stress: 6000 * PSI, boreRatio: 0 },
    gives: 0.89,
    within: 0.005,
    unit: IN,
  },
]);

// Prints whole millimetres: 122.2, 128.0 and 69.7 unrounded.
published(diameterForTorsion, 'Bansal, Strength of Materials, examples 16.9 and 16.10', [
  {
    case: '300 kW at 100 rpm, 80 MPa, solid',
    inputs: { torque: torque(300 * KW, 100), stress: 80 * MPA, boreRatio: 0 },
    gives: 122,
    within: 0.5,
    unit: MM,
  },
  {
    case: 'the same, hollow with ratio 0.6',
    inputs: { torque: torque(300 * KW, 100), stress: 80 * MPA, boreRatio: 0.6 },
    gives: 128,
    within: 0.5,
    unit: MM,
  },
  {
    case: '75 kW at 200 rpm, peak 1.3, 70 MPa',
    inputs: { torque: 1.3 * torque(75 * KW, 200), stress: 70 * MPA, boreRatio: 0 },
    gives: 70,
    within: 0.5,
    unit: MM,
  },
]);

published(
  diameterForTorsion,
  'Sadhu Singh, Design of machine elements, example 7.1: 20 kW at 240 rpm, peak 1.25, 45 MPa',
  [
    {
      case: '48.29 mm needed',
      inputs: { torque: 1.25 * torque(20 * KW, 240), stress: 45 * MPA, boreRatio: 0 },
      gives: 48.29,
      within: 0.005,
      unit: MM,
    },
  ],
);

published(torsionalShearStress, 'von Mises example of the combined load, recomputed in full precision', [
  {
    case: '1000 N·m on 50.8 mm',
    inputs: { torque: 1000, outsideDiameter: 0.0508, bore: 0 },
    gives: 38.849,
    within: 0.0005,
    unit: MPA,
  },
]);

published(
  torqueAtShearStress,
  'Sadhu Singh, Design of machine elements, example 7.1: 20 kW at 240 rpm, peak 1.25',
  [
    {
      case: '48.29 mm at 45 MPa',
      inputs: { stress: 45 * MPA, outsideDiameter: 48.29 * MM, bore: 0 },
      // Half a digit of 48.29 mm is 0.31 N·m.
      gives: 1.25 * torque(20 * KW, 240),
      within: 0.31,
    },
  ],
);

// 29.55 % printed for the whole diameters 122 and 128 mm.
it('Bansal example 16.9: hollow 128/76.8 mm is 29.55 % lighter than solid 122 mm', () => {
  const mass = (outside: number, bore: number) =>
    massPerLength({
      density: given('density', 'ρ', 'density', 7850),
      outsideDiameter: given('outside diameter', 'd_o', 'length', outside),
      bore: given('bore', 'd_i', 'length', bore),
    }).si;
  expect(100 * (1 - mass(0.128, 0.0768) / mass(0.122, 0))).toBeCloseTo(29.55, 2);
});

published(massPerLength, 'boat shaft bar table: density 0.304 lb/in³ over one square inch of section', [
  {
    case: 'a bar of 1 in² section weighs 0.304 lb/in',
    inputs: { density: 0.304 * LB_IN3, outsideDiameter: Math.sqrt(4 / Math.PI) * IN, bore: 0 },
    gives: 0.304,
    within: 1e-9,
    unit: 0.45359237 / IN,
  },
]);

published(shearModulus, 'worked by hand: 200 over 2.6', [
  {
    case: '200 GPa, 0.3',
    inputs: { youngsModulus: 200e9, poissonRatio: 0.3 },
    gives: 76.923,
    within: 5e-4,
    unit: 1e9,
  },
]);
published(shearModulus, 'textbook constants (from memory)', [
  { case: 'steel', inputs: { youngsModulus: 200e9, poissonRatio: 0.3 }, gives: 77, within: 0.5, unit: 1e9 },
  {
    case: 'nickel-copper',
    inputs: { youngsModulus: 26e6 * PSI, poissonRatio: 0.32 },
    gives: 68,
    within: 0.5,
    unit: 1e9,
  },
  {
    case: 'brass',
    inputs: { youngsModulus: 16e6 * PSI, poissonRatio: 0.34 },
    gives: 41,
    within: 0.5,
    unit: 1e9,
  },
]);

describe('torsion, for any shaft', () => {
  const shaft = fc.record({
    d: fc.double({ min: 0.01, max: 1, noNaN: true }),
    ratio: fc.double({ min: 0, max: 0.95, noNaN: true }),
    T: fc.double({ min: 1, max: 1e6, noNaN: true }),
  });
  const values = ({ d, ratio }: { d: number; ratio: number }) => ({
    outsideDiameter: given('outside diameter', 'd_o', 'length', d),
    bore: given('bore', 'd_i', 'length', d * ratio),
  });

  it('stress and torque turn each other round', () => {
    fc.assert(
      fc.property(shaft, one => {
        const stress = torsionalShearStress({
          torque: given('torque', 'T', 'torque', one.T),
          ...values(one),
        });
        expect(torqueAtShearStress({ stress, ...values(one) }).si / one.T).toBeCloseTo(1, 9);
      }),
    );
  });

  it('a thicker shaft is stressed less, a larger bore more', () => {
    fc.assert(
      fc.property(shaft, one => {
        const T = given('torque', 'T', 'torque', one.T);
        const stress = torsionalShearStress({ torque: T, ...values(one) }).si;
        const thicker = {
          ...values(one),
          outsideDiameter: given('outside diameter', 'd_o', 'length', one.d * 1.1),
        };
        expect(torsionalShearStress({ torque: T, ...thicker }).si).toBeLessThan(stress);
        const bored = values({ d: one.d, ratio: one.ratio + 0.04 });
        expect(torsionalShearStress({ torque: T, ...bored }).si).toBeGreaterThan(stress);
      }),
    );
  });

  it('a bore as large as the shaft gives no number, and says why', () => {
    const result = torsionalShearStress({
      torque: given('torque', 'T', 'torque', 100),
      ...values({ d: 0.05, ratio: 1 }),
    });
    expect(result.si).toBeNaN();
    expect(result.working!.range.filter(one => !one.met).map(one => one.condition)).toContain(
      'the bore is smaller than the outside diameter',
    );
  });
});
