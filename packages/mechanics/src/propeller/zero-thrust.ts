import { type Polynomial, polynomialAt } from './polynomial.js';
import { firstRoot } from './roots.js';

/**
 * First advance ratio at which a thrust polynomial reaches zero: the end of what the series tested. Beyond it the
 * cubic may rise above zero again, which means nothing. Undefined where it never falls to zero below 3.
 */
export function zeroThrustOf(thrust: Polynomial): number | undefined {
  return firstRoot(j => polynomialAt(thrust, j), 0, 3, 300);
}

/** Whether an advance ratio lies between a series' lowest and its point of zero thrust. */
export function drives(thrust: Polynomial, advanceRatio: number, lowest = 0): boolean {
  const end = zeroThrustOf(thrust);
  return end !== undefined && advanceRatio >= lowest && advanceRatio <= end + 1e-12;
}
