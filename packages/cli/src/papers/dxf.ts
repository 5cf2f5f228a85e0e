import type { Markup } from '@tailshaft/sheet';
import { PRINT, type Shape, shapesOf, TEXT_SIZE } from '@tailshaft/sheet';
import svgpath from 'svgpath';

/**
 * Drawings as one DXF of release 12, which every drawing program reads: lines, polylines, circles and text on layers
 * named by what they are. One unit of the drawing is one of the picture: it is a schematic, not to scale.
 * Group codes as in the DXF Reference of release 12.
 */
export function dxfOf(drawings: readonly Markup[], notes: readonly string[]): string {
  const out: string[] = [];
  const put = (...pairs: readonly (readonly [code: number, value: string | number])[]) => {
    for (const [code, value] of pairs)
      out.push(String(code), typeof value === 'number' ? number(value) : value);
  };
  put([0, 'SECTION'], [2, 'HEADER'], [9, '$ACADVER'], [1, 'AC1009'], [0, 'ENDSEC']);
  put([0, 'SECTION'], [2, 'TABLES'], [0, 'TABLE'], [2, 'LAYER'], [70, LAYERS.length]);
  for (const layer of LAYERS) put([0, 'LAYER'], [2, layer], [70, 0], [62, 7], [6, 'CONTINUOUS']);
  put([0, 'ENDTAB'], [0, 'ENDSEC'], [0, 'SECTION'], [2, 'ENTITIES']);
  let top = 0;
  for (const drawing of drawings) {
    const { shapes, height } = shapesOf(drawing, PRINT);
    for (const shape of shapes) entity(shape, top, put);
    top -= height + GAP;
  }
  for (const note of notes) {
    text(note, 0, top, 'start', 'TEXT', put);
    top -= TEXT_SIZE * 1.5;
  }
  put([0, 'ENDSEC'], [0, 'EOF']);
  return `${out.join('\r\n')}\r\n`;
}

type Put = (...pairs: readonly (readonly [code: number, value: string | number])[]) => void;
type Point = readonly [x: number, y: number];

const GAP = 24;
const LAYERS = ['LINES', 'TEXT'];

function entity(shape: Shape, top: number, put: Put): void {
  const { x, y, turn } = shape.placing;
  const angle = (turn * Math.PI) / 180;
  const at = ([px, py]: Point): Point => [
    x + px * Math.cos(angle) - py * Math.sin(angle),
    top - (y + px * Math.sin(angle) + py * Math.cos(angle)),
  ];
  switch (shape.shape) {
    case 'line':
      line(at([shape.x1, shape.y1]), at([shape.x2, shape.y2]), put);
      return;
    case 'box': {
      const [right, below] = [shape.x + shape.width, shape.y + shape.height];
      const corners: Point[] = [
        [shape.x, shape.y],
        [right, shape.y],
        [right, below],
        [shape.x, below],
      ];
      polyline(corners.map(at), true, put);
      return;
    }
    case 'ellipse': {
      const [cx, cy] = at([shape.cx, shape.cy]);
      if (shape.rx === shape.ry) {
        put([0, 'CIRCLE'], [8, 'LINES'], [10, cx], [20, cy], [30, 0], [40, shape.rx]);
        return;
      }
      const round = Array.from({ length: 48 }, (_, index): Point => {
        const part = (index / 48) * 2 * Math.PI;
        return [shape.cx + shape.rx * Math.cos(part), shape.cy + shape.ry * Math.sin(part)];
      });
      polyline(round.map(at), true, put);
      return;
    }
    case 'text': {
      const [tx, ty] = at([shape.x, shape.y]);
      text(shape.text, tx, ty, shape.anchor, 'TEXT', put);
      return;
    }
    case 'path':
      for (const { points, closed } of strokesOf(shape.d)) polyline(points.map(at), closed, put);
  }
}

function line([x1, y1]: Point, [x2, y2]: Point, put: Put): void {
  put([0, 'LINE'], [8, 'LINES'], [10, x1], [20, y1], [30, 0], [11, x2], [21, y2], [31, 0]);
}

function polyline(points: readonly Point[], closed: boolean, put: Put): void {
  if (points.length < 2) return;
  put([0, 'POLYLINE'], [8, 'LINES'], [66, 1], [10, 0], [20, 0], [30, 0], [70, closed ? 1 : 0]);
  for (const [x, y] of points) put([0, 'VERTEX'], [8, 'LINES'], [10, x], [20, y], [30, 0]);
  put([0, 'SEQEND'], [8, 'LINES']);
}

const ALIGNMENT = { start: 0, middle: 1, end: 2 } as const;

function text(
  words: string,
  x: number,
  y: number,
  anchor: keyof typeof ALIGNMENT,
  layer: string,
  put: Put,
): void {
  const plain = [...words]
    .map(sign => DXF_SIGNS.get(sign) ?? (sign > '~' ? `\\U+${hex(sign)}` : sign))
    .join('');
  put(
    [0, 'TEXT'],
    [8, layer],
    [10, x],
    [20, y],
    [30, 0],
    [40, TEXT_SIZE * 0.75],
    [1, plain.replace(/[\r\n]+/g, ' ')],
  );
  if (anchor !== 'start') put([72, ALIGNMENT[anchor]], [11, x], [21, y], [31, 0]);
}

/** Signs that release 12 knows by a code of their own, and some that fonts of drawing programs lack. */
const DXF_SIGNS = new Map([
  ['°', '%%d'],
  ['·', '-'],
  ['–', '-'],
  ['−', '-'],
  ['×', 'x'],
  ['✕', 'x'],
]);
const hex = (sign: string) => sign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0');

/** A path as strokes of straight pieces, curves in a dozen of them each. */
function strokesOf(d: string): { points: Point[]; closed: boolean }[] {
  const strokes: { points: Point[]; closed: boolean }[] = [];
  let now: { points: Point[]; closed: boolean } | undefined;
  const begin = (at: Point) => {
    now = { points: [at], closed: false };
    strokes.push(now);
  };
  svgpath(d)
    .abs()
    .unarc()
    .unshort()
    .iterate((segment, _index, x, y) => {
      const [kind, ...n] = segment as unknown as [string, ...number[]];
      if (kind === 'M') return begin([n[0]!, n[1]!]);
      if (!now) begin([x, y]);
      if (kind === 'Z') now!.closed = true;
      else if (kind === 'H') now!.points.push([n[0]!, y]);
      else if (kind === 'V') now!.points.push([x, n[0]!]);
      else if (kind === 'L') now!.points.push([n[0]!, n[1]!]);
      else if (kind === 'C') now!.points.push(...cubic([x, y], n));
      else if (kind === 'Q') now!.points.push(...cubic([x, y], raised([x, y], n)));
    });
  return strokes;
}

function cubic([x, y]: Point, [x1, y1, x2, y2, x3, y3]: readonly number[]): Point[] {
  return Array.from({ length: 12 }, (_, index): Point => {
    const t = (index + 1) / 12;
    const u = 1 - t;
    const mix = (a: number, b: number, c: number, e: number) =>
      u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * e;
    return [mix(x, x1!, x2!, x3!), mix(y, y1!, y2!, y3!)];
  });
}

/** A curve of the second degree as one of the third. */
function raised([x, y]: Point, [cx, cy, ex, ey]: readonly number[]): number[] {
  return [
    x + (2 / 3) * (cx! - x),
    y + (2 / 3) * (cy! - y),
    ex! + (2 / 3) * (cx! - ex!),
    ey! + (2 / 3) * (cy! - ey!),
    ex!,
    ey!,
  ];
}

function number(value: number): string {
  return Number.isInteger(value) ? String(value) : String(Number(value.toFixed(3)));
}
