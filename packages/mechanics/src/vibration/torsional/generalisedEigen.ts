import { EigenvalueDecomposition, Matrix, solve } from 'ml-matrix';

export interface EigenPair {
  /** ω², (rad/s)². Not below zero. */
  readonly value: number;
  /** Shape in the coordinates of the matrices, without a fixed scale. */
  readonly shape: readonly number[];
}

/**
 * Solves K x = ω² M x for a symmetric K (positive semidefinite) and a diagonal M (zero or positive), lowest first.
 * Coordinates without mass follow the others statically and are eliminated first, which is exact;
 * then M^−½ K M^−½ is symmetric and its eigenvalues are real.
 */
export function generalisedEigen(
  stiffness: readonly (readonly number[])[],
  mass: readonly number[],
): readonly EigenPair[] {
  const heavy = indices(mass, m => m > 0);
  const light = indices(mass, m => m === 0);
  if (heavy.length === 0) return [];
  const K = new Matrix(stiffness.map(row => [...row]));
  const follow = light.length === 0 ? undefined : massless(K, light, heavy);
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
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(scaled, {
    assumeSymmetric: true,
  });
  return realEigenvalues
    .map((value, column) => {
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
function massless(K: Matrix, light: number[], heavy: number[]): Matrix {
  return solve(K.selection(light, light), K.selection(light, heavy)).mul(-1);
}

function indices(values: readonly number[], keep: (value: number) => boolean): number[] {
  return values.flatMap((value, i) => (keep(value) ? [i] : []));
}
