type XY = readonly [x: number, y: number];

/**
 * The path of a smooth curve through points from left to right that turns only where they do, so that it shows no
 * summit that was not worked out. Cubic pieces with the slopes of Steffen, A Simple Method for Monotonic Interpolation
 * in One Dimension, Astronomy and Astrophysics 239, 1990.
 */
export function curveThrough(points: readonly XY[]): string | undefined {
  const [first, ...rest] = points;
  if (!first) return undefined;
  if (rest.length < 2)
    return `M${text(first)}${rest.map(point => `L${text(point)}`).join('')}${rest.length ? '' : 'Z'}`;
  const slopes = slopesAt(points);
  const pieces = rest.map((point, index) => {
    const [x0, y0] = points[index]!;
    const [x1, y1] = point;
    const third = (x1 - x0) / 3;
    return `C${text([x0 + third, y0 + third * slopes[index]!])},${text([x1 - third, y1 - third * slopes[index + 1]!])},${text(point)}`;
  });
  return `M${text(first)}${pieces.join('')}`;
}

function slopesAt(points: readonly XY[]): number[] {
  const last = points.length - 1;
  const inner = points.map((_, at) => (at > 0 && at < last ? slopeBetween(points, at) : 0));
  inner[0] = slopeAtEnd(points[0]!, points[1]!, inner[1]!);
  inner[last] = slopeAtEnd(points[last]!, points[last - 1]!, inner[last - 1]!);
  return inner;
}

function slopeBetween(points: readonly XY[], at: number): number {
  const [a, b, c] = [points[at - 1]!, points[at]!, points[at + 1]!];
  const [h0, h1] = [b[0] - a[0], c[0] - b[0]];
  const [s0, s1] = [(b[1] - a[1]) / h0, (c[1] - b[1]) / h1];
  const p = (s0 * h1 + s1 * h0) / (h0 + h1);
  return (Math.sign(s0) + Math.sign(s1)) * Math.min(Math.abs(s0), Math.abs(s1), 0.5 * Math.abs(p)) || 0;
}

function slopeAtEnd(end: XY, next: XY, slope: number): number {
  const width = next[0] - end[0];
  return width ? ((3 * (next[1] - end[1])) / width - slope) / 2 : slope;
}

const text = ([x, y]: XY): string => `${tenths(x)},${tenths(y)}`;
const tenths = (number: number): number => Math.round(number * 10) / 10;
