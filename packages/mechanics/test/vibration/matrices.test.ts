import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveSquare } from '../../src/vibration/torsional/square-system.js';
import { symmetricEigen } from '../../src/vibration/torsional/symmetric-eigen.js';

const entry = fc.double({ min: -10, max: 10, noNaN: true });
const square = (size: number) =>
  fc.array(fc.array(entry, { minLength: size, maxLength: size }), { minLength: size, maxLength: size });
const squares = fc.integer({ min: 1, max: 9 }).chain(square);

const times = (A: readonly (readonly number[])[], x: readonly number[]) =>
  A.map(row => row.reduce((sum, one, j) => sum + one * x[j]!, 0));
const sizeOf = (A: readonly (readonly number[])[]) => Math.max(1e-300, ...A.flat().map(Math.abs));

describe('eigenvalues of a symmetric matrix, by their definition', () => {
  it('A v = λ v, with vectors of unit length that stand square to each other', () => {
    fc.assert(
      fc.property(squares, raw => {
        const A = raw.map((row, i) => row.map((one, j) => one + raw[j]![i]!));
        const pairs = symmetricEigen(A)!;
        expect(pairs).toHaveLength(A.length);
        for (const { value, vector } of pairs)
          times(A, vector).forEach((one, i) => {
            expect(Math.abs(one - value * vector[i]!)).toBeLessThan(1e-12 * A.length * sizeOf(A));
          });
        for (const [i, one] of pairs.entries())
          for (const [j, other] of pairs.entries()) {
            const dot = one.vector.reduce((sum, x, k) => sum + x * other.vector[k]!, 0);
            expect(Math.abs(dot - (i === j ? 1 : 0))).toBeLessThan(1e-12);
          }
      }),
    );
  });

  it('has the roots that are known: 2 − 2 cos(kπ/(n+1)) of the chain of equal masses', () => {
    // The eigenvalues of the second difference matrix, Strang, Computational Science and Engineering, 1.5 (from memory).
    const n = 7;
    const chain = Array.from({ length: n }, (_, i) =>
      Array.from({ length: n }, (_, j) => (i === j ? 2 : Math.abs(i - j) === 1 ? -1 : 0)),
    );
    const found = symmetricEigen(chain)!.map(one => one.value);
    found
      .sort((a, b) => a - b)
      .forEach((value, k) => {
        expect(value).toBeCloseTo(2 - 2 * Math.cos(((k + 1) * Math.PI) / (n + 1)), 13);
      });
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('ends without an answer on %s', bad => {
    expect(symmetricEigen([[1, bad], [bad, 2]])).toBeUndefined(); // biome-ignore format: a matrix
  });

  it('ends on numbers of any size', () => {
    const wild = fc.constantFrom(0, 1, -1, 1e-308, 1e-150, 1e-20, 1e20, 1e150, 1e308, 5e-324);
    const matrix = fc.array(wild, { minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(matrix, ([a, b, c, d, e, f, g, h, i, j]) => {
        const rows = [[a, b, c, d], [b, e, f, g], [c, f, h, i], [d, g, i, j]]; // biome-ignore format: a matrix
        expect(symmetricEigen(rows as number[][])?.length ?? 4).toBe(4);
      }),
    );
  });
});

describe('linear equations, by their definition', () => {
  it('A X = B', () => {
    fc.assert(
      fc.property(squares, A => {
        // Made dominant on its diagonal, so that it has an inverse that is not far out.
        const dominant = A.map((row, i) => row.map((one, j) => (i === j ? 100 + one : one)));
        const B = A.map(row => [row[0]!, 1]);
        const X = solveSquare(dominant, B)!;
        for (const side of [0, 1])
          times(
            dominant,
            X.map(row => row[side]!),
          ).forEach((one, i) => {
            expect(Math.abs(one - B[i]![side]!)).toBeLessThan(1e-11);
          });
      }),
    );
  });

  it('exchanges rows where the first has nothing to begin with', () => {
    expect(solveSquare([[0, 2], [3, 0]], [[4], [6]])).toEqual([[2], [2]]); // biome-ignore format: a matrix
  });

  it.each([
    ['equal rows', [[1, 2], [1, 2]]], // biome-ignore format: a matrix
    ['no number', [[1, Number.NaN], [1, 2]]], // biome-ignore format: a matrix
    ['nothing', [[0, 0], [0, 0]]], // biome-ignore format: a matrix
  ])('has no answer to %s', (_, A) => {
    expect(solveSquare(A, [[1], [2]])).toBeUndefined();
  });
});
