import {
  asmeAllowedShear,
  bendingAndThrustStress,
  equivalentStress,
  fatigueSafetyFactor,
  given,
  overhungPropellerMoment,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { asmeShaftDiameter, fatigueShaftDiameter } from '../held/combined-load.js';
import { published } from '../published.js';
import { MM, MPA } from '../tables/factors.js';

published(asmeAllowedShear, 'Sadhu Singh, Design of machine elements, example 6.1', [
  {
    case: 'Sut 650, Syt 380, keyway',
    inputs: { tensileYield: 380 * MPA, tensileStrength: 650 * MPA, keywayFactor: 0.75 },
    gives: 85.5,
    within: 0.05,
    unit: MPA,
  },
]);
published(asmeShaftDiameter, 'Sadhu Singh, Design of machine elements, example 6.1', [
  {
    case: 'M 892,329 and T 150,000 N·mm',
    inputs: {
      bendingMoment: 892.329,
      torque: 150,
      bendingFactor: 1.5,
      torsionFactor: 1,
      allowedShear: 85.5 * MPA,
    },
    gives: 43.13,
    within: 0.005,
    unit: MM,
  },
]);
published(asmeShaftDiameter, 'Jindal, Machine Design, example 15-6 (τ_a = 0.577 · 360 / 3 MPa)', [
  {
    case: 'M 162, T 400 N·m, factors 2 and 1.5',
    inputs: {
      bendingMoment: 162,
      torque: 400,
      bendingFactor: 2,
      torsionFactor: 1.5,
      allowedShear: (0.577 * 360e6) / 3,
    },
    gives: 36.88,
    within: 0.005,
    unit: MM,
  },
]);

const example62 = {
  meanBending: 375,
  alternatingBending: 125,
  meanTorque: 270,
  alternatingTorque: 130,
  tensileYield: 400 * MPA,
  enduranceLimit: (0.4 * 540e6) / 1.25,
};
published(
  fatigueShaftDiameter,
  'Sadhu Singh, Design of machine elements, example 6.2: T 140..400, M 250..500 N·m',
  [
    {
      case: 'Soderberg, factor 2',
      inputs: { ...example62, factor: 2 },
      gives: 34.81,
      within: 0.005,
      unit: MM,
    },
  ],
);
published(fatigueSafetyFactor, 'the same example turned round', [
  {
    case: '34.81 mm',
    inputs: { ...example62, outsideDiameter: 34.81 * MM, bore: 0 },
    gives: 2,
    within: 0.001,
  },
]);

const recomputed = 'recomputed in full precision: d 50.8 mm, T 1000 N·m, thrust 10 kN, 25 kg at 0.10 m';
published(overhungPropellerMoment, recomputed, [
  { case: '25 kg at 0.10 m', inputs: { propellerMass: 25, overhang: 0.1 }, gives: 24.517, within: 0.0005 },
]);
published(bendingAndThrustStress, recomputed, [
  {
    case: 'bending and thrust',
    inputs: { bendingMoment: 25 * 9.80665 * 0.1, thrust: 10e3, outsideDiameter: 0.0508, bore: 0 },
    gives: 6.839,
    within: 0.0005,
    unit: MPA,
  },
]);
published(equivalentStress, recomputed, [
  {
    case: 'σ 6.839, τ 38.849',
    inputs: { normalStress: 6.839e6, shearStress: 38.849e6 },
    gives: 67.635,
    within: 0.0005,
    unit: MPA,
  },
]);

it('more bending or torque, mean or alternating, always asks for more shaft', () => {
  const load = fc.double({ min: 1, max: 1e5, noNaN: true });
  fc.assert(
    fc.property(load, load, load, load, fc.nat(3), (Mm, Ma, Tm, Ta, which) => {
      const loads = [Mm, Ma, Tm, Ta];
      const diameter = (l: readonly number[]) =>
        fatigueShaftDiameter({
          meanBending: given('mean bending', 'M_m', 'torque', l[0]!),
          alternatingBending: given('alternating bending', 'M_a', 'torque', l[1]!),
          meanTorque: given('mean torque', 'T_m', 'torque', l[2]!),
          alternatingTorque: given('alternating torque', 'T_a', 'torque', l[3]!),
          tensileYield: given('yield', 'S_y', 'pressure', 400e6),
          enduranceLimit: given('endurance limit', 'S_e', 'pressure', 150e6),
          factor: given('factor', 'n', 'number', 2),
        }).si;
      const more = loads.map((one, i) => (i === which ? one + 1000 : one));
      expect(diameter(more)).toBeGreaterThan(diameter(loads));
    }),
  );
});
