/** How the two ends of a span are held. A cantilever is fixed at one end and free at the other. */
export type SpanEnds = 'pinned-pinned' | 'fixed-pinned' | 'fixed-fixed' | 'cantilever';

/**
 * The number β of a uniform Euler–Bernoulli span, ω = (β/L)² √(EI/μ), for mode 1, 2, …
 * It is the root of the characteristic equation of the end conditions, found to machine precision:
 * sin β = 0, tan β = tanh β, cos β cosh β = 1, cos β cosh β = −1.
 */
export function spanFrequencyNumber(ends: SpanEnds, mode = 1): number {
  if (!Number.isInteger(mode) || mode < 1) return Number.NaN;
  const near = { 'fixed-pinned': 0.25, 'fixed-fixed': 0.5, cantilever: -0.5 };
  if (ends === 'pinned-pinned') return mode * Math.PI;
  return root(CHARACTERISTIC[ends], (mode + near[ends]) * Math.PI);
}

/** Divided through by cosh β, so that high modes do not overflow. */
const CHARACTERISTIC = {
  'fixed-pinned': (b: number) => Math.sin(b) - Math.cos(b) * Math.tanh(b),
  'fixed-fixed': (b: number) => Math.cos(b) - 1 / Math.cosh(b),
  cantilever: (b: number) => Math.cos(b) + 1 / Math.cosh(b),
};

/** Bisection within a third of a half-turn of the asymptotic root, where there is exactly one sign change. */
function root(f: (b: number) => number, near: number): number {
  let low = near - 1;
  let high = near + 1;
  const rising = f(high) > 0;
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (f(middle) > 0 === rising) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
