type Rows = readonly (readonly number[])[];

export interface Eigen {
  readonly value: number;
  /** Of unit length. */
  readonly vector: readonly number[];
}

/** Sweeps after which a matrix that has not settled never will; ten do for any that can be solved. */
const MOST_SWEEPS = 60;

/**
 * Eigenvalues and vectors of a symmetric matrix, in no order, by cyclic Jacobi rotations: it ends after a fixed number of
 * sweeps whatever the numbers are, and keeps small eigenvalues of a graded matrix that tridiagonal methods lose. Undefined
 * where it has not settled, or what comes out is no number.
 * Golub and Van Loan, Matrix Computations, section 8.5 (from memory).
 */
export function symmetricEigen(matrix: Rows): readonly Eigen[] | undefined {
  const size = matrix.length;
  const a = matrix.map(row => [...row]);
  const v = matrix.map((_, i) => matrix.map((_, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let turned = false;
    for (let p = 0; p < size; p++)
      for (let q = p + 1; q < size; q++) {
        if (isNothing(a[p]![q]!, a[p]![p]!, a[q]![q]!)) continue;
        rotate(a, v, p, q);
        turned = true;
      }
    if (turned) continue;
    const found = v.map((_, i) => ({ value: a[i]![i]!, vector: v.map(row => row[i]!) }));
    return found.every(({ value, vector }) => [value, ...vector].every(Number.isFinite)) ? found : undefined;
  }
  return undefined;
}

/** Too small to change either of its diagonal entries; never where one of them is no number. */
function isNothing(off: number, one: number, other: number): boolean {
  const size = Math.abs(off);
  return size === 0 || size <= 1e-17 * Math.sqrt(Math.abs(one)) * Math.sqrt(Math.abs(other)) || size < 1e-300;
}

/** Turns the plane of p and q until the entry between them is zero. */
function rotate(a: number[][], v: number[][], p: number, q: number): void {
  const off = a[p]![q]!;
  const theta = (a[q]![q]! - a[p]![p]!) / (2 * off);
  const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(theta, 1));
  const c = 1 / Math.hypot(t, 1);
  const s = t * c;
  a[p]![p]! -= t * off;
  a[q]![q]! += t * off;
  a[p]![q] = 0;
  a[q]![p] = 0;
  for (let k = 0; k < a.length; k++) {
    if (k !== p && k !== q) {
      const [x, y] = [a[k]![p]!, a[k]![q]!];
      a[k]![p] = c * x - s * y;
      a[p]![k] = a[k]![p]!;
      a[k]![q] = s * x + c * y;
      a[q]![k] = a[k]![q]!;
    }
    const [x, y] = [v[k]![p]!, v[k]![q]!];
    v[k]![p] = c * x - s * y;
    v[k]![q] = s * x + c * y;
  }
}
