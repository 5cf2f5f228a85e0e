import {
  bulbTerms,
  formTerms1982,
  holtropComponents,
  holtropHull,
  transomFroude,
  viscousCoefficient,
  wakeTerms,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_1982 } from './holtrop-examples.js';

const V = (25 * 1852) / 3600;
const hull = holtropHull(EXAMPLE_1982, '1982');
const parts = holtropComponents(EXAMPLE_1982, V, '1982');

describe('Holtrop and Mennen 1982, section 5: what the paper prints besides, to half a unit of its last digit', () => {
  const { PB, Fni } = bulbTerms(EXAMPLE_1982, V);
  const { c12, c13 } = formTerms1982(EXAMPLE_1982, hull.T);
  it.each([
    ['c4', hull.c4, 0.04, 5e-5],
    ['c12', c12, 0.5102, 5e-5],
    ['c13', c13, 1.03, 5e-4],
    ['PB', PB, 0.6261, 5e-5],
    // 1.50835: the paper rounds it up to 1.5084.
    ['FnI', Fni, 1.5084, 6e-5],
    ['CF', parts.frictionCoefficient, 0.00139, 5e-6],
    [
      'CP1, from memory',
      wakeTerms({ ...EXAMPLE_1982, diameter: 8, vesselSpeed: V }, '1982').CP1,
      0.5477,
      5e-5,
    ],
    ['CV, from memory', viscousCoefficient(EXAMPLE_1982, V, '1982'), 0.001963, 5e-7],
  ] as const)('%s', (_, ours, printed, within) => {
    expect(Math.abs(ours - printed), `computed ${ours}, printed ${printed}`).toBeLessThanOrEqual(within);
  });

  // Its own numbers give 5.432 for the Froude number of the transom, whichever way they are rounded: 12.861 m/s over
  // √(2 · 9.81 · 16 / 56) = 2.3676 m/s. The paper prints 5.433. From 5 on the transom has no resistance, so nothing follows.
  it('FnT is 5.432, printed as 5.433', () => {
    expect(transomFroude(EXAMPLE_1982, V)).toBeCloseTo(12.861 / 2.3676, 3);
    expect(Math.abs(transomFroude(EXAMPLE_1982, V) - 5.433)).toBeLessThan(1e-3);
    expect(parts.transom).toBe(0);
  });

  it('as recomputed apart from this code', () => {
    expect(hull.CB).toBeCloseTo(0.5716463, 7);
    expect(c12).toBeCloseTo(0.5102208, 7);
    expect(hull.c2).toBeCloseTo(0.7594733, 7);
    expect(hull.c3).toBeCloseTo(0.02119105, 8);
    expect(hull.c5).toBeCloseTo(0.9591837, 7);
    expect(hull.c7).toBeCloseTo(0.1560976, 7);
    expect(PB).toBeCloseTo(0.626099, 6);
    expect(Fni).toBeCloseTo(1.508347, 6);
    expect(transomFroude(EXAMPLE_1982, V)).toBeCloseTo(5.432041, 6);
    expect(hull.CA).toBeCloseTo(0.0003524993, 10);
    expect(parts.friction / 1000).toBeCloseTo(869.6405, 4);
    expect(parts.appendages / 1000).toBeCloseTo(8.836075, 6);
    expect(parts.bulb / 1000).toBeCloseTo(0.0491956, 7);
    expect(parts.correlation / 1000).toBeCloseTo(222.07, 2);
  });
});

/** Least and greatest of a result when each factor is anything that rounds to what was printed. */
function reach(
  factors: readonly (readonly [printed: number, half: number])[],
  result: (of: number[]) => number,
) {
  const corners = factors.reduce<number[][]>(
    (all, [printed, half]) =>
      all.flatMap(one => [
        [...one, printed - half],
        [...one, printed + half],
      ]),
    [[]],
  );
  const results = corners.map(result);
  return { least: Math.min(...results), most: Math.max(...results) };
}

describe('Holtrop and Mennen 1982, section 5: the parts of resistance lie where the printed coefficients put them', () => {
  const dynamic = (speed: number) => 0.5 * 1.025 * speed ** 2;
  it('RF 869.63 kN: 25 kn taken as 12.861 m/s, with all digits of CF', () => {
    expect(dynamic(12.861) * 7381.45 * parts.frictionCoefficient).toBeCloseTo(869.63, 1);
    expect(Math.abs(parts.friction / 1000 - 869.63)).toBeLessThan(0.011);
  });
  it.each([
    // CF 0.00139, (1 + k2) S = 75 m².
    ['RAPP', 8.83, parts.appendages, reach([[0.00139, 5e-6]], ([CF]) => dynamic(V) * 75 * CF!)],
    // CA 0.000352 on 7431.45 m², hull and appendages.
    ['RA', 221.98, parts.correlation, reach([[0.000352, 5e-7]], ([CA]) => dynamic(V) * 7431.45 * CA!)],
    [
      'RW',
      557.11,
      parts.wave,
      reach(
        [
          [1.398, 5e-4],
          [0.7595, 5e-5],
          [0.9592, 5e-5],
          [-2.1274, 5e-5],
          [-0.17087, 5e-6],
          [0.6513, 5e-5],
          [0.2868, 5e-5],
        ],
        ([c1, c2, c5, m1, m2, lambda, Fn]) =>
          c1! *
          c2! *
          c5! *
          37500 *
          1.025 *
          9.81 *
          Math.exp(m1! * Fn! ** -0.9 + m2! * Math.cos(lambda! * Fn! ** -2)),
      ),
    ],
  ] as const)(
    '%s %f kN, and so does what is computed with all digits',
    (_, printed, ours, { least, most }) => {
      expect(printed).toBeGreaterThan(least);
      expect(printed).toBeLessThan(most);
      expect(ours / 1000).toBeGreaterThan(least);
      expect(ours / 1000).toBeLessThan(most);
      // The span is narrow enough to tell: 0.8 % at most.
      expect(most / least - 1).toBeLessThan(0.008);
    },
  );
  it('RB 0.049 kN', () => {
    expect(Math.abs(parts.bulb / 1000 - 0.049)).toBeLessThanOrEqual(5e-4);
  });
});
