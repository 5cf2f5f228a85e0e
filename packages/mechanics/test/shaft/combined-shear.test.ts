import {
  asmeCombinedShear,
  columnFactorLong,
  columnFactorShort,
  given,
  shaftSlenderness,
  yieldFactor,
} from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { asmeShaftDiameter } from '../held/combined-load.js';
import { published } from '../published.js';
import { KW, MM, MPA, RPM } from '../tables/factors.js';

/*
 * Khurmi and Gupta, A Textbook of Machine Design, chapter 14, the hollow propeller shaft of a vessel: 0.5 and 0.3 m, 5600 kW at
 * 150 rpm, thrust 500 kN, bearings 6 m apart, shaft 70 kN. The figures of the problem are copied in several places; results
 * are recomputed here in full precision, the book rounds them to 18 MPa and a column factor of 1.22 (from memory).
 */
const propellerShaft = 'Khurmi and Gupta, hollow propeller shaft, recomputed in full precision';
const torque = (5600 * KW) / (150 * RPM);
published(shaftSlenderness, propellerShaft, [
  { case: '6 m span', inputs: { span: 6, outsideDiameter: 0.5, bore: 0.3 }, gives: 41.16, within: 0.005 },
]);
published(columnFactorShort, propellerShaft, [
  { case: 'slenderness 41.16', inputs: { slenderness: 41.16 }, gives: 1.221, within: 0.0005 },
]);
published(asmeCombinedShear, propellerShaft, [
  {
    case: 'M = W L/8, C_m 1.5, C_t 1',
    inputs: {
      bendingMoment: (70e3 * 6) / 8,
      torque,
      thrust: 500e3,
      outsideDiameter: 0.5,
      bore: 0.3,
      bendingFactor: 1.5,
      torsionFactor: 1,
      columnFactor: 1.221,
    },
    gives: 17.77,
    within: 0.005,
    unit: MPA,
  },
]);
published(
  asmeCombinedShear,
  'Khurmi and Gupta, hollow shaft of 80 mm, bore half, recomputed in full precision',
  [
    {
      case: 'T 1.5, M 3 kN·m, axial 10 kN, C_m 1.5, C_t 1',
      inputs: {
        bendingMoment: 3000,
        torque: 1500,
        thrust: 10e3,
        outsideDiameter: 80 * MM,
        bore: 40 * MM,
        bendingFactor: 1.5,
        torsionFactor: 1,
        columnFactor: 1,
      },
      gives: 51.59,
      within: 0.005,
      unit: MPA,
    },
  ],
);
published(asmeCombinedShear, 'Sadhu Singh, Design of machine elements, example 6.1 turned round', [
  {
    case: 'solid 43.13 mm, no thrust',
    inputs: {
      bendingMoment: 892.329,
      torque: 150,
      thrust: 0,
      outsideDiameter: 43.13 * MM,
      bore: 0,
      bendingFactor: 1.5,
      torsionFactor: 1,
      columnFactor: 1,
    },
    gives: 85.5,
    within: 0.05,
    unit: MPA,
  },
]);
// 300 MPa · 150² / (π² · 200 GPa) = 3.4196
published(columnFactorLong, 'Euler’s column, worked by hand', [
  {
    case: 'slenderness 150',
    inputs: { slenderness: 150, compressiveYield: 300 * MPA, youngsModulus: 200e9 },
    gives: 3.4196,
    within: 0.00005,
  },
]);
published(yieldFactor, 'definition', [
  {
    case: '400 over 67.635',
    inputs: { tensileYield: 400 * MPA, equivalentStress: 67.635 * MPA },
    gives: 5.914,
    within: 0.0005,
  },
]);

it('a solid shaft of the diameter of the ASME form is stressed to just what is allowed', () => {
  const load = {
    bendingMoment: given('bending', 'M', 'torque', 700),
    torque: given('torque', 'T', 'torque', 2400),
    bendingFactor: given('bending factor', 'C_m', 'number', 1.5),
    torsionFactor: given('torsion factor', 'C_t', 'number', 1),
  };
  const allowedShear = given('allowed shear', 'τ_a', 'pressure', 60e6);
  const stress = asmeCombinedShear({
    ...load,
    thrust: given('thrust', 'F', 'force', 0),
    outsideDiameter: asmeShaftDiameter({ ...load, allowedShear }),
    bore: given('bore', 'd_i', 'length', 0),
    columnFactor: given('column factor', 'α', 'number', 1),
  });
  expect(stress.si / 60e6).toBeCloseTo(1, 10);
});
