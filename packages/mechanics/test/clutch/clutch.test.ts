import {
  clutchFaces,
  clutchServiceFactor,
  clutchTorqueUniformPressure,
  clutchTorqueUniformWear,
  given,
  hydraulicClamp,
  outsideRange,
  torqueFromPower,
  WET_FRICTION,
  WET_FRICTION_BOUND,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { bestInnerRadius, clampFromPressureUniformWear } from '../held/clamp-force.js';
import { clutchFacesNeeded } from '../held/holding-torque.js';
import { published } from '../published.js';

const MPA = 1e6;
const ring = (outer: number, inner: number) => ({ outerRadius: outer / 2000, innerRadius: inner / 2000 });
const rpm = (n: number) => (n * 2 * Math.PI) / 60;
const BHANDARI = 'Bhandari, Design of Machine Elements, Ex 11.8';
const JINDAL = 'Jindal, Machine Design, Ex 22-5';

published(clutchFaces, 'Bhandari Ex 11.8; Khurmi Ex 10.29; Jindal Ex 22-5', [
  { case: '5 steel and 4 bronze', inputs: { driving: 5, driven: 4 }, gives: 8, within: 0 },
  { case: '3 and 2 discs', inputs: { driving: 3, driven: 2 }, gives: 4, within: 0 },
  { case: '4 and 3 plates', inputs: { driving: 4, driven: 3 }, gives: 6, within: 0 },
]);

published(clampFromPressureUniformWear, 'Bhandari Ex 11.8 and 11.7', [
  {
    case: '150/75 mm, 0.3 MPa',
    inputs: { pressure: 0.3 * MPA, ...ring(150, 75) },
    gives: 2650.72,
    within: 0.005,
  },
  {
    case: 'cork, 95/65 mm, 0.1 MPa',
    inputs: { pressure: 0.1 * MPA, ...ring(95, 65) },
    gives: 306.31,
    within: 0.005,
  },
]);

published(clutchTorqueUniformWear, BHANDARI, [
  {
    case: '8 faces, mu 0.1',
    inputs: { faces: 8, friction: 0.1, clamp: 2650.72, ...ring(150, 75) },
    gives: 119_282,
    unit: 1e-3,
    within: 0.5,
  },
]);

published(
  clutchFacesNeeded,
  'Bhandari Ex 11.7; Juvinall (from memory); Jindal Ex 22-6, which takes 4 for 4.05',
  [
    {
      case: 'cork, 10 N·m',
      inputs: { torque: 10, friction: 0.2, clamp: 306.31, ...ring(95, 65) },
      gives: 4.08,
      within: 0.005,
    },
    {
      case: '85 N·m, 1.4 MPa on 100/58 mm',
      inputs: {
        torque: 85,
        friction: 0.06,
        clamp: 2 * Math.PI * 1.4 * MPA * 0.029 * 0.021,
        ...ring(100, 58),
      },
      gives: 6.69,
      within: 0.005,
    },
    {
      case: '5 kW at 1000 rpm, 125/75 mm, mu 0.1',
      inputs: {
        torque: 5000 / rpm(1000),
        friction: 0.1,
        clamp: 0.3 * MPA * Math.PI * (0.0625 ** 2 - 0.0375 ** 2),
        ...ring(125, 75),
      },
      gives: 4.05,
      within: 0.005,
    },
  ],
);

published(torqueFromPower, `${JINDAL}; Khurmi Ex 10.29`, [
  { case: '15 kW at 1400 rpm', inputs: { power: 15e3, speed: rpm(1400) }, gives: 102.31, within: 0.005 },
  { case: '25 kW at 1575 rpm', inputs: { power: 25e3, speed: rpm(1575) }, gives: 151.58, within: 0.005 },
]);
published(clutchTorqueUniformPressure, JINDAL, [
  {
    case: 'the printed 1031.1 N, half a digit of which is 0.005 N·m',
    inputs: { faces: 6, friction: 0.25, clamp: 1031.1, ...ring(160, 100) },
    gives: 102.31,
    within: 0.01,
  },
  {
    case: '1031.07 N, before rounding',
    inputs: { faces: 6, friction: 0.25, clamp: 1031.07, ...ring(160, 100) },
    gives: 102.31,
    within: 0.005,
  },
]);
published(hydraulicClamp, 'area of a ring by hand: 2 MPa on 0.006 m² less 2 kN', [
  {
    case: 'outside 100 mm, inside chosen so that the area is 60 cm²',
    inputs: {
      oilPressure: 2 * MPA,
      outsideDiameter: 0.1,
      insideDiameter: Math.sqrt(0.01 - 0.024 / Math.PI),
      springForce: 2000,
    },
    gives: 10_000,
    within: 1e-6,
  },
]);
published(bestInnerRadius, 'r_i = 0.577 r_o, textbooks', [
  { case: '100 mm', inputs: { outerRadius: 0.1 }, gives: 57.7, unit: 1e-3, within: 0.05 },
]);
published(clutchServiceFactor, 'definition', [
  { case: '1500 over 1000', inputs: { holdingTorque: 1500, engineTorque: 1000 }, gives: 1.5, within: 1e-12 },
]);
describe('clutch', () => {
  const clutch = (outer: number, inner: number, faces = 2, friction = 0.3, clamp = 3141.6) => ({
    faces: given('faces', 'N', 'number', faces),
    friction: given('friction', 'μ', 'ratio', friction),
    clamp: given('clamp', 'F', 'force', clamp),
    outerRadius: given('outer', 'r', 'length', outer),
    innerRadius: given('inner', 'r', 'length', inner),
  });

  it('Khurmi Ex 10.23: single plate, both sides, 300/200 mm, 0.1 N/mm², 2500 rpm: 61.685 kW', () => {
    const { outerRadius, innerRadius } = clutch(0.15, 0.1);
    const clamp = clampFromPressureUniformWear({
      pressure: given('p', 'p', 'pressure', 0.1 * MPA),
      outerRadius,
      innerRadius,
    });
    const torque = clutchTorqueUniformWear({ ...clutch(0.15, 0.1), clamp });
    expect((torque.si * rpm(2500)) / 1000).toBeCloseTo(61.685, 3);
  });

  it('Bhandari Ex 11.7: 4.08 faces, with 5 % of the face cut away for slots 4.30, so 5 are taken', () => {
    const needed = clutchFacesNeeded({
      torque: given('T', 'T', 'torque', 10),
      friction: given('μ', 'μ', 'ratio', 0.2),
      clamp: given('F', 'F', 'force', 0.95 * 306.31),
      outerRadius: given('outer', 'r_o', 'length', 0.0475),
      innerRadius: given('inner', 'r_i', 'length', 0.0325),
    }).si;
    expect(needed).toBeCloseTo(4.08 / 0.95, 2);
    expect(Math.ceil(needed)).toBe(5);
  });

  it('Jindal Ex 22-6: radii 37.5 and 62.5 mm for a mean of 50 and an inner radius of 0.6 of the outer', () => {
    const outer = (2 * 50) / 1.6;
    expect([0.6 * outer, outer]).toEqual([37.5, 62.5]);
  });

  it('Bhandari Ex 11.8: 9.368 kW at 750 rpm', () => {
    const torque = clutchTorqueUniformWear(clutch(0.075, 0.0375, 8, 0.1, 2650.72));
    expect((torque.si * rpm(750)) / 1000).toBeCloseTo(9.368, 3);
  });

  it('uniform pressure exceeds uniform wear by less than 3 % above a radius ratio of 0.6, and never falls below it', () => {
    for (let share = 0.6; share < 1; share += 0.02) {
      const plates = clutch(0.1, 0.1 * share);
      const excess = clutchTorqueUniformPressure(plates).si / clutchTorqueUniformWear(plates).si - 1;
      expect(excess).toBeGreaterThanOrEqual(0);
      expect(excess).toBeLessThan(0.03);
    }
  });

  it('carries most at the best inner radius', () => {
    const torqueAt = (inner: number) => {
      const { outerRadius, innerRadius } = clutch(0.1, inner);
      const clamp = clampFromPressureUniformWear({
        pressure: given('p', 'p', 'pressure', MPA),
        outerRadius,
        innerRadius,
      });
      return clutchTorqueUniformWear({ ...clutch(0.1, inner), clamp }).si;
    };
    const best = bestInnerRadius({ outerRadius: given('outer', 'r_o', 'length', 0.1) }).si;
    for (const off of [-0.02, -0.002, 0.002, 0.02])
      expect(torqueAt(best)).toBeGreaterThan(torqueAt(best + off));
  });

  it('flags what it does not hold for', () => {
    expect(outsideRange(clutchTorqueUniformWear(clutch(0.05, 0.1)))).toHaveLength(1);
    expect(outsideRange(clutchTorqueUniformWear(clutch(0.1, 0.05, 2.5)))).toHaveLength(1);
    const released = hydraulicClamp({
      oilPressure: given('p', 'p', 'pressure', 1e5),
      outsideDiameter: given('D', 'D', 'length', 0.1),
      insideDiameter: given('D', 'D', 'length', 0.06),
      springForce: given('F', 'F', 'force', 2000),
    });
    expect(outsideRange(released)).toEqual([
      'clamp force of a hydraulic piston: the oil overcomes the return springs',
    ]);
  });

  it('has friction data that runs low to high, sourced; linings on steel reach past the bound only from memory', () => {
    for (const row of WET_FRICTION) {
      expect(row.friction.from).toBeLessThanOrEqual(row.friction.to);
      expect(row.source.title).not.toBe('');
      if (row.friction.to > WET_FRICTION_BOUND.value) expect(row.source.confidence).toBe('from memory');
    }
  });
});
