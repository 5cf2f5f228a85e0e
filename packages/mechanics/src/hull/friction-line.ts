/** The same on a bare number, for the loops. */
export function frictionCoefficient(reynoldsNumber: number): number {
  return 0.075 / (Math.log10(reynoldsNumber) - 2) ** 2;
}
