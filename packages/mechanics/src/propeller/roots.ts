/**
 * Zero of a continuous function between two ends of opposite sign, by Brent's method: it never leaves the bracket,
 * and is never slower than bisection by more than a small factor.
 * Brent, Algorithms for Minimization Without Derivatives, 1973, chapter 4.
 */
export function rootBetween(f: (x: number) => number, low: number, high: number, tolerance = 1e-12): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  let c = a;
  let fc = fa;
  let step = b - a;
  let previous = step;
  for (let turn = 0; turn < 200; turn++) {
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      previous = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const small = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= small || fb === 0) return b;
    const wanted = interpolatedStep(a, b, c, fa, fb, fc, half);
    if (
      Math.abs(previous) >= small &&
      Math.abs(fa) > Math.abs(fb) &&
      wanted !== undefined &&
      2 * Math.abs(wanted) < Math.min(3 * Math.abs(half) - small, Math.abs(previous)) &&
      wanted > 0 === half > 0
    ) {
      previous = step;
      step = wanted;
    } else {
      step = half;
      previous = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > small ? step : Math.sign(half) * small;
    fb = f(b);
  }
  return b;
}

/** First place, going up, where the function changes sign; looks at `pieces` equal pieces before it refines. */
export function firstRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  pieces = 64,
): number | undefined {
  let left = low;
  let atLeft = f(left);
  if (atLeft === 0) return left;
  for (let piece = 1; piece <= pieces; piece++) {
    const right = low + ((high - low) * piece) / pieces;
    const atRight = f(right);
    if (Number.isFinite(atLeft) && Number.isFinite(atRight)) {
      if (atRight === 0) return right;
      if (atLeft > 0 !== atRight > 0) return rootBetween(f, left, right);
    }
    left = right;
    atLeft = atRight;
  }
  return undefined;
}

/** Last place, going up, where the function falls through zero: the stable one of several equilibria. */
export function lastFall(
  f: (x: number) => number,
  low: number,
  high: number,
  pieces = 64,
): number | undefined {
  let right = high;
  let atRight = f(right);
  for (let piece = pieces - 1; piece >= 0; piece--) {
    const left = low + ((high - low) * piece) / pieces;
    const atLeft = f(left);
    if (atLeft >= 0 && atRight < 0) return rootBetween(f, left, right);
    right = left;
    atRight = atLeft;
  }
  return undefined;
}

function interpolatedStep(
  a: number,
  b: number,
  c: number,
  fa: number,
  fb: number,
  fc: number,
  half: number,
): number | undefined {
  const s = fb / fa;
  let p: number;
  let q: number;
  if (a === c) {
    p = 2 * half * s;
    q = 1 - s;
  } else {
    const r = fb / fc;
    const t = fa / fc;
    p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
    q = (t - 1) * (r - 1) * (s - 1);
  }
  const step = q === 0 ? Number.NaN : -p / q;
  return Number.isFinite(step) ? step : undefined;
}
