import {
  centreOfPressure,
  given,
  outsideRange,
  planingAt,
  planingCurve,
  planingEquilibrium,
  planingHull,
  planingState,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const FT = 0.3048;
const LBF = 4.4482216152605;
const DEGREE = Math.PI / 180;
/** Sea water as the recomputation took it: 1.9905 slug/ft³. */
const SEA = 1.9905 * 515.378818;

const EXAMPLE = {
  weight: 60000 * LBF,
  gravityForward: 29 * FT,
  gravityHeight: 2 * FT,
  chineBeam: 14 * FT,
  deadrise: 10,
  shaftAngle: 4,
  thrustArm: 0.5 * FT,
  roughness: 0.0004,
  density: SEA,
  viscosity: 1.2817e-5 * FT * FT,
};
const V = 67.5 * FT;

describe('Savitsky 1964, worked example: columns recomputed apart from this code', () => {
  it.each([
    [2, 3.76622, 0.0820028, 67.148, 0.00180766, 7425.74, 9525.52, -1.90909, -108688],
    [3, 2.51561, 0.0820028, 66.8077, 0.00191154, 5140.85, 8292.37, 5.8721, 353528],
    [4, 1.71992, 0.0820028, 66.3319, 0.00201852, 3625.26, 7829.72, 12.1325, 723754],
  ])('trim %f degrees', (trim, lambda, lift, mean, friction, force, drag, arm, moment) => {
    const state = planingState(EXAMPLE, V, trim)!;
    expect(state.speedCoefficient).toBeCloseTo(3.18044, 4);
    expect(state.liftWithDeadrise).toBeCloseTo(0.067508, 6);
    expect(state.wettedRatio).toBeCloseTo(lambda, 4);
    expect(state.lift).toBeCloseTo(lift, 6);
    expect(state.meanSpeed / FT).toBeCloseTo(mean, 3);
    expect(state.friction - 0.0004).toBeCloseTo(friction, 7);
    expect(Math.abs(state.frictionForce / LBF - force)).toBeLessThan(0.02);
    expect(Math.abs(state.resistance / LBF - drag)).toBeLessThan(0.02);
    expect((EXAMPLE.gravityForward - state.pressureForward) / FT).toBeCloseTo(arm, 3);
    expect(Math.abs(state.moment / LBF / FT - moment)).toBeLessThan(2);
  });
  it('equilibrium', () => {
    const state = planingEquilibrium(EXAMPLE, V)!;
    expect(state.trim).toBeCloseTo(2.21517, 4);
    expect(state.wettedRatio).toBeCloseTo(3.43982, 4);
    expect(Math.abs(state.frictionForce / LBF - 6838.51)).toBeLessThan(0.05);
    expect(Math.abs(state.resistance / LBF - 9164.5)).toBeLessThan(0.05);
    expect((state.resistance * V) / 745.69987).toBeCloseTo(1124.7, 1);
    expect(Math.abs(state.moment / LBF / FT)).toBeLessThan(0.01);
  });
});

describe('Savitsky 1964, worked example: fragments as published', () => {
  // The paper reads λ from a chart, 3.85 where its formula gives 3.77, and its friction coefficients are those of
  // water of 1.0e-5 ft²/s. Both are seen below; they make the whole difference to the printed force.
  const asPrinted = { ...EXAMPLE, viscosity: 1e-5 * FT * FT };
  it.each([
    [2, 0.00174],
    [3, 0.00184],
  ])('CF at %f degrees is %f', (trim, printed) => {
    expect(Math.abs(planingState(asPrinted, V, trim)!.friction - 0.0004 - printed)).toBeLessThanOrEqual(1e-5);
  });
  it('λ at 2 degrees is 3.85, read from the chart', () => {
    expect(Math.abs(planingState(EXAMPLE, V, 2)!.wettedRatio / 3.85 - 1)).toBeLessThan(0.03);
  });
  it('Df at 2 degrees is 7340 lb: within 3 % by formula, within 1 % with the λ of the chart', () => {
    const state = planingState(asPrinted, V, 2)!;
    expect(Math.abs(state.frictionForce / LBF / 7340 - 1)).toBeLessThan(0.03);
    const withChart = (state.frictionForce / LBF) * (3.85 / state.wettedRatio);
    expect(Math.abs(withChart / 7340 - 1)).toBeLessThan(0.01);
  });
});

describe('Savitsky 1964, worked example: friction force at 2 degrees in other water and by another friction line', () => {
  /** The line of the paper's time: 0.242 / √CF = log₁₀(Rn CF). */
  const schoenherr = (Rn: number): number => {
    let CF = 0.002;
    for (let turn = 0; turn < 100; turn++) CF = (0.242 / Math.log10(Rn * CF)) ** 2;
    return CF;
  };
  it.each([
    [1e-5, 7151],
    [1.2817e-5, 7344],
  ])(
    '1.94 slug/ft³ and %f ft²/s: %d lb as recomputed apart from this code, which is by Schoenherr',
    (nu, force) => {
      const fresh = { ...EXAMPLE, density: 1.94 * 515.378818, viscosity: nu * FT * FT };
      const state = planingState(fresh, V, 2)!;
      const by = (CF: number) => ((state.frictionForce / LBF) * (CF + 0.0004)) / state.friction;
      expect(Math.abs(by(schoenherr(state.reynoldsNumber)) - force)).toBeLessThan(2);
      // The line of 1957, which is used here, gives 0.2 % more.
      expect(state.frictionForce / LBF / force - 1).toBeGreaterThan(0.001);
      expect(state.frictionForce / LBF / force - 1).toBeLessThan(0.002);
    },
  );
});

describe('second check: inputs said to be of Larsson and Eliasson p. 204, results of an independent code', () => {
  const hull = {
    weight: 9750 * 9.80665,
    gravityForward: 3.55,
    gravityHeight: 1.145,
    chineBeam: 2.74,
    deadrise: 17.9,
    shaftAngle: 3,
    thrustArm: 0.49,
    roughness: 0,
    density: 1025,
    viscosity: 1.19e-6,
  };
  const state = planingEquilibrium(hull, 20.6)!;
  it.each([
    ['trim', state.trim, 4.1687, 5e-5],
    ['λ', state.wettedRatio, 1.8124, 5e-5],
    ['CL0', state.lift, 0.085086, 5e-7],
    ['CLβ', state.liftWithDeadrise, 0.058559, 5e-7],
    ['Cv', state.speedCoefficient, 3.974, 5e-4],
    // Printed 3.5435; the last digit moves with the viscosity, which that code takes differently for the force.
    ['centre of pressure', state.pressureForward, 3.5435, 1e-4],
  ] as const)('%s', (_, ours, theirs, within) => {
    expect(Math.abs(ours - theirs), `computed ${ours}`).toBeLessThanOrEqual(within);
  });
  it('trim 4.170 degrees and resistance 13 434 N by another code, with g 9.81', () => {
    const other = planingEquilibrium({ ...hull, weight: 9750 * 9.81 }, 20.6)!;
    expect(Math.abs(other.trim - 4.17)).toBeLessThanOrEqual(5e-4);
    expect(Math.abs(other.resistance - 13434)).toBeLessThan(1);
  });
  // The independent code's own 13 325 N is 0.8 % under ours, and its water is not known: 1.004e-6 m²/s gives 13 272 N.
  it('resistance within 1 % of the 13 325 N of the independent code', () => {
    expect(Math.abs(state.resistance / 13325 - 1)).toBeLessThan(0.01);
  });
});

describe('third check: centre of pressure by a public implementation', () => {
  it('Cv 1.543154, λ 3.199428, b 7.315 m: 11.05546 m', () => {
    expect(Math.abs(centreOfPressure(3.199428, 7.315, 1.543154) - 11.05546)).toBeLessThanOrEqual(5e-6);
  });
});

const craft = (mass: number, forward: number, beam: number, deadrise: number) =>
  planingHull({
    displacement: given('displacement', 'Δ', 'mass', mass),
    gravityForward: given('LCG', 'LCG', 'length', forward),
    gravityHeight: given('VCG', 'VCG', 'length', 0.8),
    chineBeam: given('chine beam', 'b', 'length', beam),
    deadrise: given('deadrise', 'β', 'angle', deadrise * DEGREE),
  });
const speed = (si: number) => given('V', 'V', 'speed', si);

describe('the planing curve', () => {
  const hull = craft(11800, 4.1, 3.0, 14);
  const curve = planingCurve(hull, speed(18));
  it('starts where the hull planes and agrees with the method between its points', () => {
    if (!curve.applies) throw new Error(curve.reason);
    expect(curve.lowest).toBeGreaterThan(2);
    expect(curve.numberAt(curve.lowest - 0.01)).toBeUndefined();
    expect(curve.valueAt(speed(curve.lowest - 0.01))).toBeUndefined();
    for (let share = 0.013; share < 1; share += 0.097) {
      const V = curve.lowest + share * (curve.highest - curve.lowest);
      const exact = curve.valueAt(speed(V))!;
      expect(outsideRange(exact)).toEqual([]);
      expect(Math.abs(curve.numberAt(V)! / exact.si - 1)).toBeLessThan(0.002);
    }
  });
  it('does not apply to a hull too slow for it, with the reason', () => {
    const slow = planingCurve(hull, speed(1.5));
    expect(slow.applies).toBe(false);
  });
  it('flags a trim outside 2 to 15 degrees', () => {
    const flat = planingAt(craft(3000, 3.4, 2.6, 4), speed(22));
    if (!flat.applies) throw new Error(flat.reason);
    expect(flat.state.trim).toBeLessThan(2);
    expect(outsideRange(flat.resistance).join()).toContain('trim 2 to 15 degrees');
  });
  it('is finite or says why not, and flags exactly what is outside', () => {
    const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        within(500, 60000),
        within(0.5, 12),
        within(1, 6),
        within(0, 35),
        within(0.1, 30),
        (mass, forward, beam, deadrise, V) => {
          const result = planingAt(craft(mass, forward, beam, deadrise), speed(V));
          if (!result.applies) {
            expect(result.reason.length).toBeGreaterThan(30);
            return;
          }
          const { trim, wettedRatio, speedCoefficient: cv } = result.state;
          expect(Number.isFinite(result.resistance.si)).toBe(true);
          const inside = trim >= 2 && trim <= 15 && wettedRatio <= 4 && cv >= 0.6 && cv <= 13;
          expect(outsideRange(result.resistance).length === 0).toBe(inside);
        },
      ),
      { numRuns: 200 },
    );
  });
  it.each([Number.NaN, 0, -3])('refuses a speed of %f', V => {
    expect(planingAt(hull, speed(V)).applies).toBe(false);
  });
});
