import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveEquations } from '../../src/train/linear-equations.js';

/*
 * Held to the definition in whole numbers, without a rounding: equations have an answer where their rank is that of the
 * coefficients alone (Rouché and Capelli), and one unknown is settled where the rank falls when its column is taken out.
 */

type Rows = readonly (readonly number[])[];

/** Rank by elimination without fractions (Bareiss), exact. */
function rank(rows: Rows): number {
  const left = rows.map(row => row.map(BigInt));
  let found = 0;
  for (let column = 0; column < (rows[0]?.length ?? 0); column++) {
    const at = left.findIndex((row, index) => index >= found && row[column] !== 0n);
    if (at < 0) continue;
    const [pivot] = left.splice(at, 1);
    left.splice(found, 0, pivot!);
    for (const row of left.slice(found + 1)) {
      const [lead, factor] = [pivot![column]!, row[column]!];
      for (let j = 0; j < row.length; j++) row[j] = row[j]! * lead - pivot![j]! * factor;
    }
    found++;
  }
  return found;
}

const without = (rows: Rows, column: number): Rows => rows.map(row => row.filter((_, at) => at !== column));
const coefficients = (rows: Rows): Rows => rows.map(row => row.slice(0, -1));

/** Of few small numbers, so that rows often depend on each other. */
const entry = fc.integer({ min: -3, max: 3 });
const equations = fc
  .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 5 }))
  .chain(([many, unknowns]) =>
    fc.array(fc.array(entry, { minLength: unknowns + 1, maxLength: unknowns + 1 }), {
      minLength: many,
      maxLength: many,
    }),
  );

/** Rows of any size say the same: those of one equation times a number. */
const sized = (rows: Rows, sizes: readonly number[]): Rows =>
  rows.map((row, at) => row.map(one => one * 10 ** sizes[at % sizes.length]!));
const sizes = fc.array(fc.integer({ min: -12, max: 12 }), { minLength: 1, maxLength: 5 });

describe('equations that may be too few, too many or contradictory', () => {
  it('have the answer that their ranks say, whatever the size of each', () => {
    const seen = { contradictory: 0, open: 0, settled: 0 };
    fc.assert(
      fc.property(equations, sizes, (rows, powers) => {
        const unknowns = rows[0]!.length - 1;
        const own = rank(coefficients(rows));
        // A row of noughts has no size that it could be measured by.
        const plain = rows.every(row => row.slice(0, -1).some(one => one !== 0));
        const { values, contradictory } = solveEquations(plain ? sized(rows, powers) : rows, unknowns);
        expect(values).toHaveLength(unknowns);
        expect(contradictory).toBe(rank(rows) !== own);
        if (contradictory) {
          seen.contradictory++;
          return;
        }
        for (const [column, value] of values.entries()) {
          const settled = rank(without(coefficients(rows), column)) === own - 1;
          expect(value !== undefined, `unknown ${column}`).toBe(settled);
          seen[settled ? 'settled' : 'open']++;
        }
        for (const row of rows) {
          const terms = row.slice(0, -1);
          if (terms.some((one, at) => one !== 0 && values[at] === undefined)) continue;
          const sum = terms.reduce((total, one, at) => total + (one === 0 ? 0 : one * values[at]!), 0);
          expect(sum).toBeCloseTo(row.at(-1)!, 9);
        }
      }),
      { numRuns: 1000 },
    );
    for (const many of Object.values(seen)) expect(many).toBeGreaterThan(100);
  });

  // By hand: x = 1 / (1 - e) and y = (1 - 2 e) / (1 - e) of e x + y = 1, x + y = 2. Golub and Van Loan, Matrix
  // Computations, 3.4 (from memory) has the like as the case for exchanging rows.
  it.each([1e-3, 1e-6, 1e-9])('keep their figures where the first coefficient is %d', e => {
    for (const rows of [
      [
        [e, 1, 1],
        [1, 1, 2],
      ],
      [
        [1, 1, 2],
        [e, 1, 1],
      ],
    ]) {
      // biome-ignore format: equations
      const { values } = solveEquations(rows, 2);
      expect(Math.abs(values[0]! - 1 / (1 - e))).toBeLessThan(1e-14);
      expect(Math.abs(values[1]! - (1 - 2 * e) / (1 - e))).toBeLessThan(1e-14);
    }
  });

  it('keep their figures over nine orders of size within a row', () => {
    const { values, contradictory } = solveEquations([[1e9, 1, 1e9 + 2], [1, 1, 3]], 2); // biome-ignore format: equations
    expect(contradictory).toBe(false);
    expect(values[0]).toBeCloseTo(1, 9);
    expect(values[1]).toBeCloseTo(2, 9);
  });

  it.each([
    ['no equation', [], 2, [undefined, undefined], false],
    ['no unknown, nought is nought', [[0]], 0, [], false],
    ['no unknown, nought is one', [[1]], 0, [], true],
    ['a row of noughts', [[0, 0, 0], [0, 2, 6]], 2, [undefined, 3], false], // biome-ignore format: equations
    ['a row that says nought is one', [[0, 0, 1], [0, 2, 6]], 2, [undefined, 3], true], // biome-ignore format: equations
    ['less than rounding apart', [[1, 1], [1, 1 + 1e-12]], 1, [1], false], // biome-ignore format: equations
    ['more than rounding apart', [[1, 1], [1, 1 + 1e-8]], 1, [1], true], // biome-ignore format: equations
    ['a coefficient of less than rounding', [[1, 1e-12, 1]], 2, [1, undefined], false],
    ['a coefficient of more than rounding', [[1, 1e-8, 1]], 2, [undefined, undefined], false],
  ] as const)('%s', (_, rows, unknowns, values, contradictory) => {
    const solved = solveEquations(rows, unknowns);
    expect(solved.contradictory).toBe(contradictory);
    expect(solved.values).toEqual(values);
  });

  it('leave what they were given as it was', () => {
    const rows = [[2, 1, 3], [4, 5, 6]]; // biome-ignore format: equations
    solveEquations(rows, 2);
    expect(rows).toEqual([[2, 1, 3], [4, 5, 6]]); // biome-ignore format: equations
  });
});
