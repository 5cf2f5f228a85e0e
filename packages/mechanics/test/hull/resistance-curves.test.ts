import {
  type Dimension,
  given,
  type HullForm,
  type HullNumbers,
  holtropComponents,
  holtropCurve,
  holtropResistance1984,
  outsideRange,
  planingState,
  type Value,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { HOLTROP_GRAVITY } from '../../src/hull/holtrop-terms.js';
import { HULL_FORM } from '../../src/hull/hull-form.js';
import { HULLS } from './holtrop-recomputed.js';

const form = (hull: HullNumbers): HullForm =>
  Object.fromEntries(
    Object.entries(hull).map(([key, si]) => [
      key,
      given(key, key, (HULL_FORM as Record<string, Dimension>)[key]!, si),
    ]),
  ) as unknown as HullForm;
const speed = (si: number): Value<'speed'> => given('vessel speed', 'V', 'speed', si);

/* What every curve of resistance promises: the formula within its speeds, nothing beyond them, number and value the same. */
describe.each(['1982', '1984'] as const)('the curve of the displacement method of %s', edition => {
  const top = (hull: HullNumbers) =>
    (edition === '1982' ? 0.45 : 0.82) * Math.sqrt(HOLTROP_GRAVITY * hull.waterlineLength);

  it.each(Object.entries(HULLS))('%s', (_, hull) => {
    const curve = holtropCurve(form(hull), edition);
    if (!curve.applies) throw new Error(curve.reason);
    expect(curve.method).toContain(edition);
    expect(curve.lowest).toBe(0);
    expect(curve.highest).toBeCloseTo(top(hull), 9);
    for (const share of [0, 0.02, 0.3, 0.6, 0.99, 1]) {
      const V = share * curve.highest;
      const { total } = holtropComponents(hull, V, edition);
      expect(curve.numberAt(V)).toBe(total);
      const value = curve.valueAt(speed(V))!;
      expect(value.si).toBe(total);
      expect(value.working!.name).toContain(edition);
      expect(outsideRange(value).filter(one => one.includes('Froude'))).toEqual([]);
    }
    for (const V of [-0.01, -1e-6, curve.highest * 1.000_01, curve.highest * 2, Number.NaN]) {
      expect(curve.numberAt(V), String(V)).toBeUndefined();
      expect(curve.valueAt(speed(V)), String(V)).toBeUndefined();
    }
  });

  it.each([
    [
      { displacedVolume: 1e6 },
      /prismatic coefficient \d+\.\d{3}, block coefficient \d+\.\d{3}, length over beam 6\.67/,
    ],
    [{ beam: 0 }, /its length, beam or draught is zero|prismatic/],
    [{ waterlineLength: 0 }, /length, beam or draught is zero|length over beam 0\.00/],
  ])('says of a hull that it has no result for what it is: %j', (more, words) => {
    const curve = holtropCurve(form({ ...HULLS.between, ...more }), edition);
    expect(curve.applies).toBe(false);
    expect(curve.applies ? '' : curve.reason).toMatch(words);
    expect(curve.applies ? '' : curve.reason).toContain(edition);
  });
});

// Limits of the method: a prismatic coefficient from 0.55 to 0.85, from memory as they are printed.
it.each([
  [0.549, true],
  [0.551, false],
  [0.7, false],
  [0.849, false],
  [0.851, true],
])('a prismatic coefficient of %d is told as outside: %s', (CP, told) => {
  const { waterlineLength: L, beam: B, midshipCoefficient: CM } = HULLS.between;
  const hull = { ...HULLS.between, displacedVolume: CP * L * B * 2.4 * CM };
  const found = outsideRange(holtropResistance1984({ ...form(hull), vesselSpeed: speed(3) }));
  expect(found.some(one => one.includes('prismatic'))).toBe(told);
});

describe('a planing hull', () => {
  const FT = 0.3048;
  const hull = {
    weight: 60_000 * 4.4482216152605,
    gravityForward: 29 * FT,
    gravityHeight: 2 * FT,
    chineBeam: 14 * FT,
    deadrise: 10,
    shaftAngle: 4,
    thrustArm: 0.5 * FT,
    roughness: 0.0004,
    density: 1.9905 * 515.378818,
    viscosity: 1.2817e-5 * FT * FT,
  };
  it.each([
    // Savitsky 1964: L_K = λ b + b tan β / (2π tan τ), by hand: 52.727 + 11.251 ft and 24.079 + 5.619 ft.
    [2, 63.978],
    [4, 29.697],
  ])('is wetted at its keel as the paper has it, at %d degrees of trim', (trim, feet) => {
    expect(planingState(hull, 67.5 * FT, trim)!.keelWettedLength / FT).toBeCloseTo(feet, 2);
  });

  it.each([0, -1, Number.NaN])('has no state at a trim of %d', trim => {
    expect(planingState(hull, 67.5 * FT, trim)).toBeUndefined();
  });

  it('has none without weight or speed, or so heavy that nothing carries it', () => {
    expect(planingState({ ...hull, weight: 0 }, 67.5 * FT, 3)).toBeUndefined();
    expect(planingState(hull, 0, 3)).toBeUndefined();
    expect(planingState({ ...hull, weight: 1e12 }, 67.5 * FT, 3)).toBeUndefined();
    // Thousands of times more viscous than water: no Reynolds number that the friction line is for.
    expect(planingState({ ...hull, viscosity: 10 }, 67.5 * FT, 3)).toBeUndefined();
  });
});
