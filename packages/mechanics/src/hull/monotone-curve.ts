/**
 * Cubic through points that keeps their rise and fall: between two rows it never passes above the higher or below
 * the lower. Undefined outside the first and last point.
 * Fritsch and Carlson, Monotone piecewise cubic interpolation, SIAM Journal on Numerical Analysis 17, 1980; slopes by
 * the weighted harmonic mean of Fritsch and Butland.
 */
export function monotoneCurve(
  points: readonly (readonly [number, number])[],
): (x: number) => number | undefined {
  const last = points.length - 1;
  const widths = points.slice(1).map(([x], index) => x - points[index]![0]);
  const slopes = points.slice(1).map(([, y], index) => (y - points[index]![1]) / widths[index]!);
  const tangents = points.map((_, index) => {
    if (index === 0) return endSlope(widths[0]!, widths[1], slopes[0]!, slopes[1]);
    if (index === last)
      return endSlope(widths[last - 1]!, widths[last - 2], slopes[last - 1]!, slopes[last - 2]);
    const left = slopes[index - 1]!;
    const right = slopes[index]!;
    if (left * right <= 0) return 0;
    const w1 = 2 * widths[index]! + widths[index - 1]!;
    const w2 = widths[index]! + 2 * widths[index - 1]!;
    return (w1 + w2) / (w1 / left + w2 / right);
  });
  return x => {
    if (!(x >= points[0]![0] && x <= points[last]![0])) return undefined;
    let piece = 0;
    while (piece < last - 1 && points[piece + 1]![0] < x) piece++;
    const [x0, y0] = points[piece]!;
    const [, y1] = points[piece + 1]!;
    const h = widths[piece]!;
    const t = (x - x0) / h;
    return (
      y0 * (1 + 2 * t) * (1 - t) ** 2 +
      y1 * t * t * (3 - 2 * t) +
      h * t * (1 - t) * (tangents[piece]! * (1 - t) - tangents[piece + 1]! * t)
    );
  };
}

function endSlope(h: number, next: number | undefined, slope: number, after: number | undefined): number {
  if (next === undefined || after === undefined) return slope;
  const tangent = ((2 * h + next) * slope - h * after) / (h + next);
  if (tangent * slope <= 0) return 0;
  return slope * after <= 0 && Math.abs(tangent) > 3 * Math.abs(slope)
    ? 3 * slope
    : clampTo(tangent, 3 * slope);
}

function clampTo(tangent: number, bound: number): number {
  return Math.abs(tangent) > Math.abs(bound) ? bound : tangent;
}
