import { formTerms1982, type HullNumbers, holtropComponents, holtropHull } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { HOLTROP_GRAVITY } from '../../src/hull/holtrop-terms.js';
import { COEFFICIENTS, HULLS, PARTS, RECOMPUTED } from './holtrop-recomputed.js';

const close = (ours: number, theirs: number, what: string) =>
  expect(Math.abs(ours - theirs), `${what}: computed ${ours}, recomputed ${theirs}`).toBeLessThanOrEqual(
    1e-7 * Math.abs(theirs),
  );

describe('every piece of the method, recomputed', () => {
  it.each(RECOMPUTED.map(one => [one.name, one.edition, one] as const))(
    '%s, %s',
    (name, edition, { coefficients, parts }) => {
      const ours = holtropHull(HULLS[name], edition);
      for (const [at, coefficient] of COEFFICIENTS.entries())
        close(ours[coefficient], coefficients[at]!, coefficient);
      for (const [Fn, ...values] of parts) {
        const V = Fn! * Math.sqrt(HOLTROP_GRAVITY * HULLS[name].waterlineLength);
        const found = holtropComponents(HULLS[name], V, edition);
        for (const [at, part] of PARTS.entries()) close(found[part], values[at]!, `${part} at ${Fn}`);
      }
    },
  );

  it('takes a wetted area and an angle of entrance that are stated instead of its own', () => {
    const stated = { ...HULLS.broad, wettedArea: 123, entranceAngle: 0.25 };
    const hull = holtropHull(stated, '1982');
    expect(hull.S).toBe(123);
    expect(hull.iE).toBeCloseTo((0.25 * 180) / Math.PI, 12);
    const least = { ...HULLS.broad, wettedArea: 0.5, entranceAngle: 0.01 };
    expect(holtropHull(least, '1982')).toMatchObject({ S: 0.5, iE: expect.closeTo(0.572_957_8, 6) });
  });

  it('has no resistance at rest, and none of what is not there', () => {
    for (const edition of ['1982', '1984'] as const) {
      const parts = holtropComponents(HULLS.broad, 0, edition);
      expect(Object.values(parts)).toEqual(Object.keys(parts).map(() => 0));
      expect(holtropComponents(HULLS.broad, 3, edition).bulb).toBe(0);
      expect(holtropComponents(HULLS.full, 3, edition)).toMatchObject({ transom: 0, appendages: 0 });
    }
  });
});

/* Where two pieces of the papers meet they give one figure, to the digits that their coefficients have. */
describe('the pieces meet', () => {
  const scaled = (more: Partial<HullNumbers>): HullNumbers => ({ ...HULLS.between, ...more });
  const L = HULLS.between.waterlineLength;
  const box = L * 9 * 2.4 * HULLS.between.midshipCoefficient;
  const sides = (at: number): readonly number[] => [at * (1 - 1e-9), at * (1 + 1e-9)];
  type Coefficient = 'c7' | 'c15' | 'c16' | 'lambda' | 'c4';
  it.each<[string, Coefficient, number, (at: number) => HullNumbers]>([
    ['beam over length', 'c7', 0.11, at => scaled({ beam: at * L })],
    ['beam over length', 'c7', 0.25, at => scaled({ beam: at * L })],
    ['slenderness', 'c15', 512, at => scaled({ displacedVolume: L ** 3 / at })],
    ['slenderness', 'c15', 1726.91, at => scaled({ displacedVolume: L ** 3 / at })],
    ['prismatic coefficient', 'c16', 0.8, at => scaled({ displacedVolume: at * box })],
    ['length over beam', 'lambda', 12, at => scaled({ beam: L / at, displacedVolume: 400 })],
    ['draught over length', 'c4', 0.04, at => scaled({ draughtForward: at * L })],
  ])('%s: %s at %d', (_, coefficient, at, hull) => {
    const [below, above] = sides(at).map(one => holtropHull(hull(one), '1982')[coefficient]);
    expect(Math.abs(below! - above!)).toBeLessThan(3e-4);
  });

  it.each([0.02, 0.05])('draught over length: c12 at %d', at => {
    const [below, above] = sides(at).map(one => formTerms1982(HULLS.between, one * L).c12);
    expect(Math.abs(below! - above!)).toBeLessThan(3e-4);
  });

  it.each([0.4, 0.55])('the wave resistance of 1984 at a Froude number of %d', at => {
    const [below, above] = sides(at).map(
      one => holtropComponents(HULLS.between, one * Math.sqrt(HOLTROP_GRAVITY * L), '1984').wave,
    );
    expect(Math.abs(below! / above! - 1)).toBeLessThan(1e-6);
  });

  it('the transom is dry from a Froude number of 5 on', () => {
    const hull = HULLS.between;
    const dry =
      5 *
      Math.sqrt((2 * HOLTROP_GRAVITY * hull.transomArea) / (hull.beam * (1 + hull.waterplaneCoefficient)));
    expect(holtropComponents(hull, dry * 0.999, '1982').transom).toBeGreaterThan(0);
    for (const V of [dry, dry * 1.01, dry * 2])
      expect(holtropComponents(hull, V, '1982').transom).toBeCloseTo(0, 6);
  });
});
