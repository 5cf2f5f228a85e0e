/**
 * Whether a number lies between two limits. A pitch ratio that was declared as 0.8 may come out of a division a
 * rounding error below it, and must still count as 0.8.
 */
export function within(value: number, low: number, high: number): boolean {
  return value >= low - 1e-9 && value <= high + 1e-9;
}
