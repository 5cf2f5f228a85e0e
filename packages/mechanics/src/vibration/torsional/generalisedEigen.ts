import { EigenvalueDecomposition, LuDecomposition, Matrix } from 'ml-matrix';

export interface EigenPair {
  /** ω², (rad/s)². Not below zero. */
  readonly value: number;
  /** Shape in the coordinates of the matrices, without a fixed scale. */
  readonly shape: readonly number[];
}

/** Below this share of the largest entry the square of an entry is lost, and the decomposition divides by it. */
const SMALLEST_SHARE = 1e-150;

/**
 * Solves K x = ω² M x for a symmetric K (positive semidefinite) and a diagonal M (zero or positive), lowest first.
 * Coordinates without mass follow the others statically and are eliminated first, which is exact;
 * then M^−½ K M^−½ is symmetric and its eigenvalues are real. Nothing where sizes so far apart leave no finite numbers:
 * the decomposition would run off the end of its matrix.
 */
export function generalisedEigen(
  stiffness: readonly (readonly number[])[],
  mass: readonly number[],
): readonly EigenPair[] | undefined {
  const heavy = indices(mass, m => m > 0);
  const light = indices(mass, m => m === 0);
  if (heavy.length === 0) return [];
  const K = new Matrix(stiffness.map(row => [...row]));
  const follow = light.length === 0 ? undefined : massless(K, light, heavy);
  if (follow === 'singular') return undefined;
  const condensed = K.selection(heavy, heavy);
  if (follow) condensed.add(K.selection(heavy, light).mmul(follow));
  const root = heavy.map(i => Math.sqrt(mass[i]!));
  const size = heavy.length;
  const scaled = Matrix.zeros(size, size);
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) {
      const symmetric = (condensed.get(i, j) + condensed.get(j, i)) / 2;
      scaled.set(i, j, symmetric / (root[i]! * root[j]!));
    }
  const sizes = scaled.to1DArray().map(Math.abs);
  const largest = Math.max(...sizes);
  const squaresVanish = sizes.some(one => one > 0 && one / largest < SMALLEST_SHARE);
  if (!Number.isFinite(largest) || squaresVanish) return undefined;
  // By a power of two, which costs no digit: squares of entries near the end of the number range would overflow.
  const unit = largest > 0 ? 2 ** Math.floor(Math.log2(largest)) : 1;
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(scaled.div(unit), {
    assumeSymmetric: true,
  });
  return realEigenvalues
    .map((share, column) => {
      const value = share * unit;
      const shape = mass.map(() => 0);
      const own = root.map((r, row) => eigenvectorMatrix.get(row, column) / r);
      heavy.forEach((at, i) => {
        shape[at] = own[i]!;
      });
      const followed = follow?.mmul(Matrix.columnVector(own)).to1DArray() ?? [];
      light.forEach((at, i) => {
        shape[at] = followed[i]!;
      });
      return { value: Math.max(0, value), shape };
    })
    .sort((a, b) => a.value - b.value);
}

/** Displacements of massless coordinates per displacement of the others: −K_ll⁻¹ K_lh. */
function massless(K: Matrix, light: number[], heavy: number[]): Matrix | 'singular' {
  const own = new LuDecomposition(K.selection(light, light));
  return own.isSingular() ? 'singular' : own.solve(K.selection(light, heavy)).mul(-1);
}

function indices(values: readonly number[], keep: (value: number) => boolean): number[] {
  return values.flatMap((value, i) => (keep(value) ? [i] : []));
}
