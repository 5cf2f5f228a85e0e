import { type Figure, type Shape, type Shapes, shapesOf, TEXT_SIZE } from '@tailshaft/sheet';
import { type Line, linesOf } from './lines.js';
import type { Element, Pen } from './pen.js';
import { runsOf } from './runs.js';

/** A point of a drawing is three quarters of a point of the page where there is room. */
const SCALE = 0.75;
const CAPTION = 7.5;
const LEADING = CAPTION * 1.3;

/** Room that the headings of a section and of its first part take. */
const HEADINGS = 70;

/** Between drawings that stand beside each other. */
const APART = 14;

interface Laid {
  readonly drawing: Shapes;
  readonly scale: number;
  readonly lines: readonly Line[];
  readonly height: number;
}

function laid(pen: Pen, figures: readonly Figure[]): Laid[] {
  const room = roomOf(pen, figures);
  return figures.map(figure => {
    const drawing = shapesOf(figure.svg, pen.palette);
    const words = runsOf(figure.caption, pen.palette, { colour: pen.palette.soft });
    const lines = linesOf(words, room, pen.measure(CAPTION));
    const below = lines.length * LEADING + 10;
    // A drawing higher than a page is drawn smaller, never cut, and leaves room for the headings before it.
    const scale = Math.min(SCALE, room / drawing.width, (pen.most - HEADINGS - below) / drawing.height);
    return { drawing, scale, lines, height: drawing.height * scale + below };
  });
}

const roomOf = (pen: Pen, figures: readonly Figure[]) =>
  (pen.width - APART * (figures.length - 1)) / figures.length;

export function heightOfFigures(pen: Pen, figures: readonly Figure[]): number {
  return Math.max(...laid(pen, figures).map(one => one.height));
}

/** Drawings beside each other, as vectors, each with its words below and for readers that see none. */
export function drawFigures(pen: Pen, figures: readonly Figure[], parent: Element): void {
  const made = laid(pen, figures);
  const room = roomOf(pen, figures);
  pen.need(Math.max(...made.map(one => one.height)));
  const top = pen.y;
  made.forEach(({ drawing, scale, lines }, index) => {
    const x = pen.x + index * (room + APART);
    const bottom = top + drawing.height * scale;
    const figure = pen.element('Figure', parent, {
      alt: `${drawing.title}. ${drawing.description}`,
      bbox: [x, top, x + drawing.width * scale, bottom],
    });
    pen.content(figure, 'Figure', () => {
      pen.doc.save();
      pen.doc.translate(x, top).scale(scale);
      for (const shape of drawing.shapes) drawShape(pen, shape);
      pen.doc.restore();
    });
    const caption = pen.element('Caption', parent);
    lines.forEach((line, row) => {
      pen.content(caption, 'Caption', () => pen.line(line, x, bottom + 3 + row * LEADING, CAPTION));
    });
  });
  pen.y = top + Math.max(...made.map(one => one.height)) + 4;
}

function drawShape(pen: Pen, shape: Shape): void {
  const { doc } = pen;
  const { look, placing } = shape;
  doc.save();
  doc.translate(placing.x, placing.y);
  if (placing.turn !== 0) doc.rotate(placing.turn);
  if (shape.shape === 'text') {
    const { bold } = look;
    const width = pen.measure(TEXT_SIZE)(shape.text, bold);
    const shift = shape.anchor === 'middle' ? width / 2 : shape.anchor === 'end' ? width : 0;
    // Letters of a drawing stand on their line; here they hang from their top.
    pen.letters(shape.text, shape.x - shift, shape.y - ASCENT, TEXT_SIZE, bold, look.fill ?? pen.palette.ink);
    doc.restore();
    return;
  }
  if (shape.shape === 'path') doc.path(shape.d);
  else if (shape.shape === 'line') doc.moveTo(shape.x1, shape.y1).lineTo(shape.x2, shape.y2);
  else if (shape.shape === 'box') doc.rect(shape.x, shape.y, shape.width, shape.height);
  else doc.ellipse(shape.cx, shape.cy, shape.rx, shape.ry);
  const { fill, stroke, width, dash } = look;
  doc.lineWidth(width);
  if (dash) doc.dash(dash[0]!, { space: dash[1]! });
  else doc.undash();
  if (fill && stroke) doc.fillAndStroke(fill, stroke);
  else if (fill) doc.fill(fill);
  else if (stroke) doc.stroke(stroke);
  doc.restore();
}

/** Height of the letters' top above their line, of the font used here at the size of drawings. */
const ASCENT = TEXT_SIZE * 0.93;
