/** One term of an open-water polynomial: C, s, t, u, v of C J^s (P/D)^t (AE/A0)^u Z^v. */
export type Term = readonly [number, number, number, number, number];

/** A term of a Reynolds correction, with the power w of L = log10(Rn) - 0.301 last. */
export type ReynoldsTerm = readonly [number, number, number, number, number, number];

/** Coefficients of 1, J, J² and so on: what a series is once the geometry is fixed. */
export type Polynomial = readonly number[];

/** Every open propeller here is a cubic in J. */
export type Cubic = readonly [number, number, number, number];

/** Gathers a series' terms into a cubic in J for one geometry, so that a point on the curve costs three products. */
export function cubicInAdvance(
  terms: readonly Term[],
  pitchRatio: number,
  areaRatio: number,
  blades: number,
): Cubic {
  const sum: [number, number, number, number] = [0, 0, 0, 0];
  for (const [c, s, t, u, v] of terms)
    sum[s as 0 | 1 | 2 | 3] += c * pitchRatio ** t * areaRatio ** u * blades ** v;
  return sum;
}

/** The same for a series that goes to higher powers of J. */
export function polynomialInAdvance(terms: readonly Term[], pitchRatio: number): Polynomial {
  const sum: number[] = [];
  for (const [c, s, t] of terms) sum[s] = (sum[s] ?? 0) + c * pitchRatio ** t;
  return Array.from(sum, one => one ?? 0);
}

export function polynomialAt(polynomial: Polynomial, advanceRatio: number): number {
  let sum = 0;
  for (let power = polynomial.length - 1; power >= 0; power--) sum = sum * advanceRatio + polynomial[power]!;
  return sum;
}

/** The same for a Reynolds correction at one value of L. */
export function reynoldsCubic(
  terms: readonly ReynoldsTerm[],
  pitchRatio: number,
  areaRatio: number,
  blades: number,
  logReynolds: number,
): Cubic {
  return cubicInAdvance(
    terms.map(([c, s, t, u, v, w]): Term => [c * logReynolds ** w, s, t, u, v]),
    pitchRatio,
    areaRatio,
    blades,
  );
}

export function cubicAt(cubic: Cubic, advanceRatio: number): number {
  const [a, b, c, d] = cubic;
  return a + advanceRatio * (b + advanceRatio * (c + advanceRatio * d));
}

export function addPolynomials(one: Polynomial, other: Polynomial): Polynomial {
  const [long, short] = one.length < other.length ? [other, one] : [one, other];
  return long.map((coefficient, power) => coefficient + (short[power] ?? 0));
}
