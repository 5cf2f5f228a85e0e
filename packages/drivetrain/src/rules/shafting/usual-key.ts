import { inchShaftEndOf, isInInches, type Value } from '@tailshaft/mechanics';
import type { NewQuantity } from '@tailshaft/vocabulary';

/** Shafts up to so many millimetres, and the width of their parallel key: ISO/R 773, from memory. */
const METRIC: readonly (readonly [upTo: number, width: number])[] = [
  [22, 6],
  [30, 8],
  [38, 10],
  [44, 12],
  [50, 14],
  [58, 16],
  [65, 18],
  [75, 20],
  [85, 22],
  [95, 25],
  [110, 28],
  [130, 32],
  [150, 36],
];

/** The width that the key of a shaft end of this diameter usually has, in the unit of the shaft. */
export function usualKeyWidth(diameter: Value<'length'>): NewQuantity | undefined {
  if (isInInches(diameter)) {
    const end = inchShaftEndOf(diameter.si);
    return end && { dimension: 'length', si: end.keywayWidth.nominal, unit: 'in' };
  }
  const width = METRIC.find(([upTo]) => diameter.si <= upTo / 1000 + 1e-9)?.[1];
  return width === undefined ? undefined : { dimension: 'length', si: width / 1000, unit: 'mm' };
}
