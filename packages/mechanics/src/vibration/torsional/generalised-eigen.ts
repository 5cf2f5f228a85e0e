import { solveSquare } from './square-system.js';
import { symmetricEigen } from './symmetric-eigen.js';

export interface EigenPair {
  /** ω², (rad/s)². Not below zero. */
  readonly value: number;
  /** Shape in the coordinates of the matrices, without a fixed scale. */
  readonly shape: readonly number[];
}

/** Below this share of the largest entry nothing that an entry does can be seen beside it. */
const SMALLEST_SHARE = 1e-150;

/**
 * Solves K x = ω² M x for a symmetric K (positive semidefinite) and a diagonal M (zero or positive), lowest first.
 * Coordinates without mass follow the others statically and are eliminated first, which is exact;
 * then M^−½ K M^−½ is symmetric and its eigenvalues are real. Nothing where sizes are so far apart that the numbers would
 * say nothing.
 */
export function generalisedEigen(
  stiffness: readonly (readonly number[])[],
  mass: readonly number[],
): readonly EigenPair[] | undefined {
  const heavy = indices(mass, m => m > 0);
  const light = indices(mass, m => m === 0);
  if (heavy.length === 0) return [];
  const follow = light.length === 0 ? [] : massless(stiffness, light, heavy);
  if (!follow) return undefined;
  const condensed = heavy.map(i =>
    heavy.map((j, column) =>
      light.reduce((sum, l, row) => sum + stiffness[i]![l]! * follow[row]![column]!, stiffness[i]![j]!),
    ),
  );
  const root = heavy.map(i => Math.sqrt(mass[i]!));
  const scaled = condensed.map((row, i) =>
    row.map((entry, j) => (entry + condensed[j]![i]!) / 2 / (root[i]! * root[j]!)),
  );
  const sizes = scaled.flat().map(Math.abs);
  const largest = Math.max(...sizes);
  const lost = sizes.some(one => one > 0 && one / largest < SMALLEST_SHARE);
  if (!Number.isFinite(largest) || lost) return undefined;
  // By a power of two, which costs no digit: squares of entries near the end of the number range would overflow.
  const unit = largest > 0 ? 2 ** Math.floor(Math.log2(largest)) : 1;
  const found = symmetricEigen(scaled.map(row => row.map(entry => entry / unit)));
  return found
    ?.map(({ value, vector }) => {
      const shape = mass.map(() => 0);
      const own = root.map((r, i) => vector[i]! / r);
      heavy.forEach((at, i) => {
        shape[at] = own[i]!;
      });
      light.forEach((at, i) => {
        shape[at] = follow[i]!.reduce((sum, share, j) => sum + share * own[j]!, 0);
      });
      return { value: Math.max(0, value * unit), shape };
    })
    .sort((a, b) => a.value - b.value);
}

/** Displacements of massless coordinates per displacement of the others: −K_ll⁻¹ K_lh. */
function massless(
  K: readonly (readonly number[])[],
  light: number[],
  heavy: number[],
): number[][] | undefined {
  const part = (columns: number[]) => light.map(i => columns.map(j => K[i]![j]!));
  return solveSquare(part(light), part(heavy))?.map(row => row.map(one => -one));
}

function indices(values: readonly number[], keep: (value: number) => boolean): number[] {
  return values.flatMap((value, i) => (keep(value) ? [i] : []));
}
