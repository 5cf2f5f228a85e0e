import { inv, multiply } from 'mathjs';

/**
 * A beam of Euler–Bernoulli finite elements, written for these tests only and solved with mathjs: an independent way
 * to the numbers that the closed formulas give. Two coordinates a node: deflection and slope.
 */
export interface BeamModel {
  /** Node positions, m. */
  readonly at: readonly number[];
  readonly EI: number;
  readonly mu: number;
  /** Coordinates that cannot move: [node, 'deflection' | 'slope']. */
  readonly held: readonly (readonly [number, 'deflection' | 'slope'])[];
  /** Point mass and diametral inertia at a node. */
  readonly points?: readonly { readonly node: number; readonly m: number; readonly I: number }[];
}

/** Flexibility matrix K⁻¹ and the product K⁻¹ M, whose eigenvalues are 1/ω² and whose trace is their sum. */
export function beam(model: BeamModel) {
  const size = model.at.length * 2;
  const K = square(size);
  const M = square(size);
  for (let e = 0; e + 1 < model.at.length; e++) {
    const l = model.at[e + 1]! - model.at[e]!;
    const k = model.EI / l ** 3;
    const m = (model.mu * l) / 420;
    add(K, 2 * e, [
      [12 * k, 6 * l * k, -12 * k, 6 * l * k],
      [6 * l * k, 4 * l * l * k, -6 * l * k, 2 * l * l * k],
      [-12 * k, -6 * l * k, 12 * k, -6 * l * k],
      [6 * l * k, 2 * l * l * k, -6 * l * k, 4 * l * l * k],
    ]);
    add(M, 2 * e, [
      [156 * m, 22 * l * m, 54 * m, -13 * l * m],
      [22 * l * m, 4 * l * l * m, 13 * l * m, -3 * l * l * m],
      [54 * m, 13 * l * m, 156 * m, -22 * l * m],
      [-13 * l * m, -3 * l * l * m, -22 * l * m, 4 * l * l * m],
    ]);
  }
  for (const { node, m, I } of model.points ?? []) {
    M[2 * node]![2 * node]! += m;
    M[2 * node + 1]![2 * node + 1]! += I;
  }
  const fixed = new Set(model.held.map(([node, what]) => 2 * node + (what === 'slope' ? 1 : 0)));
  const free = Array.from({ length: size }, (_, i) => i).filter(i => !fixed.has(i));
  const pick = (A: number[][]) => free.map(i => free.map(j => A[i]![j]!));
  const flexibility = inv(pick(K)) as number[][];
  const product = multiply(flexibility, pick(M)) as number[][];
  const index = (node: number, what: 'deflection' | 'slope') =>
    free.indexOf(2 * node + (what === 'slope' ? 1 : 0));
  return {
    flexibility: (a: [number, 'deflection' | 'slope'], b: [number, 'deflection' | 'slope']) =>
      flexibility[index(...a)]![index(...b)]!,
    /**
     * Σ 1/ω² over all modes of the beam itself. The elements bend right at their nodes and leave out what each does
     * between them: a piece fixed at both ends, whose own sum is ∫ μ s³(1−s)³ l³/(3 EI) ds = μ l⁴/(420 EI).
     */
    sumOfInverseSquares: model.at
      .slice(1)
      .map((at, e) => (model.mu * (at - model.at[e]!) ** 4) / (420 * model.EI))
      .concat(product.map((row, i) => row[i]!))
      .reduce((sum, one) => sum + one, 0),
    lowestFrequency: 1 / (2 * Math.PI * Math.sqrt(largestEigenvalue(product))),
  };
}

/** Evenly spaced nodes from one place to another, the first left out. */
export function nodes(from: number, to: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => from + ((to - from) * (i + 1)) / count);
}

function largestEigenvalue(A: number[][]): number {
  let x = A.map((_, i) => Math.sin(i + 1));
  let value = 0;
  for (let i = 0; i < 300; i++) {
    const y = multiply(A, x) as number[];
    value = Math.hypot(...y) / Math.hypot(...x);
    const scale = Math.hypot(...y);
    x = y.map(one => one / scale);
  }
  return value;
}

function square(size: number): number[][] {
  return Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
}

function add(A: number[][], at: number, part: number[][]): void {
  part.forEach((row, i) => {
    row.forEach((value, j) => {
      A[at + i]![at + j]! += value;
    });
  });
}
