import { inchShaftEndOf, isInInches, type Value } from '@tailshaft/mechanics';

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

/** The width that the key of a shaft end of this diameter usually has, as it would be written. */
export function usualKeyWidth(diameter: Value<'length'>): string | undefined {
  if (isInInches(diameter)) {
    const end = inchShaftEndOf(diameter.si);
    return end && `${Number((end.keywayWidth.nominal / 0.0254).toFixed(4))} in`;
  }
  const width = METRIC.find(([upTo]) => diameter.si <= upTo / 1000 + 1e-9)?.[1];
  return width === undefined ? undefined : `${width} mm`;
}
