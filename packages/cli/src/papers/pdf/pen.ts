import { type Palette, PRINT } from '@tailshaft/sheet';
import PDFDocument from 'pdfkit';
import type { Line, Measure } from './lines.js';
import { plainFont } from './plain-font.js';

export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

export type Document = InstanceType<typeof PDFDocument>;
/** An element of the structure that readers of the page follow. */
export type Element = PDFKit.PDFStructureElement;

/** A4, in points. */
const PAGE = { width: 595.28, height: 841.89 };
const MARGIN = { left: 42, right: 42, top: 56, bottom: 52 };

/** What is written where on the pages of a PDF: pages, columns, letters, and the structure behind them. */
export class Pen {
  readonly doc: Document;
  readonly palette: Palette = PRINT;
  readonly root: Element;
  y = MARGIN.top;
  private column = 0;
  private columns = 1;
  private columnTop = MARGIN.top;
  private lowest = MARGIN.top;
  private readonly widths = new Map<string, number>();

  constructor(info: { readonly title: string; readonly dated: string }, fonts: Fonts) {
    const day = new Date(`${info.dated}T00:00:00Z`);
    this.doc = new PDFDocument({
      autoFirstPage: false,
      bufferPages: true,
      pdfVersion: '1.7',
      tagged: true,
      lang: 'en',
      displayTitle: true,
      size: [PAGE.width, PAGE.height],
      margin: 0,
      // None to begin with: one that is opened before it is registered is opened anew for every word.
      font: '',
      // The same paper has the same bytes: its dates are those of the judgement.
      info: {
        Title: info.title,
        Creator: 'Tailshaft',
        Producer: 'Tailshaft',
        CreationDate: day,
        ModDate: day,
      },
    });
    this.doc.registerFont('regular', Buffer.from(plainFont(fonts.regular)));
    this.doc.registerFont('bold', Buffer.from(plainFont(fonts.bold)));
    this.root = this.doc.struct('Document');
    this.doc.addStructure(this.root);
    this.newPage();
  }

  get width(): number {
    const whole = PAGE.width - MARGIN.left - MARGIN.right;
    return (whole - (this.columns - 1) * GAP) / this.columns;
  }

  get x(): number {
    return MARGIN.left + this.column * (this.width + GAP);
  }

  get top(): number {
    return this.columnTop;
  }

  get bottom(): number {
    return PAGE.height - MARGIN.bottom;
  }

  /** How much a whole page or column takes. */
  get most(): number {
    return this.bottom - MARGIN.top;
  }

  newPage(): void {
    this.doc.addPage();
    this.column = 0;
    this.y = MARGIN.top;
    this.columnTop = MARGIN.top;
    this.lowest = MARGIN.top;
  }

  /** Goes on in the next column, or on the next page, where so much room is not left. */
  need(height: number): void {
    if (this.y + height <= this.bottom || this.y <= this.columnTop) return;
    this.next();
  }

  next(): void {
    this.lowest = Math.max(this.lowest, this.y);
    if (this.column + 1 < this.columns) {
      this.column++;
      this.y = this.columnTop;
    } else this.newPage();
  }

  /** What is drawn meanwhile stands in so many columns. */
  inColumns(columns: number, draw: () => void): void {
    this.columns = columns;
    this.column = 0;
    this.columnTop = this.y;
    this.lowest = this.y;
    draw();
    this.y = Math.max(this.lowest, this.y);
    this.columns = 1;
    this.column = 0;
    this.columnTop = MARGIN.top;
  }

  /** An element below another one. */
  element(type: string, parent: Element, options: object = {}): Element {
    const made = this.doc.struct(type, options);
    parent.add(made);
    return made;
  }

  /** Draws what an element says. */
  content(element: Element, type: string, draw: () => void): void {
    const content = this.doc.markStructureContent(type);
    draw();
    this.doc.endMarkedContent();
    element.add(content);
  }

  /** Draws what says nothing: rules, grounds, running heads. */
  artifact(draw: () => void): void {
    this.doc.markContent('Artifact', { type: 'Layout' });
    draw();
    this.doc.endMarkedContent();
  }

  measure(size: number): Measure {
    return (words, bold) => {
      const key = `${bold ? 'b' : 'r'}${size} ${words}`;
      const had = this.widths.get(key);
      if (had !== undefined) return had;
      const width = this.doc
        .font(bold ? 'bold' : 'regular')
        .fontSize(size)
        .widthOfString(words);
      this.widths.set(key, width);
      return width;
    };
  }

  line(line: Line, x: number, y: number, size: number): void {
    for (const piece of line.pieces) {
      this.letters(piece.words, x + piece.x, y, size, piece.bold, piece.colour);
      if (piece.id) this.doc.addNamedDestination(piece.id, 'XYZ', x, y - 2, null);
      if (piece.to) this.doc.goTo(x + piece.x, y, piece.width, size * 1.2, piece.to);
    }
  }

  letters(words: string, x: number, y: number, size: number, bold: boolean, colour: string): void {
    this.doc
      .font(bold ? 'bold' : 'regular')
      .fontSize(size)
      .fillColor(colour)
      .text(words, x, y, { lineBreak: false });
  }

  rule(x1: number, x2: number, y: number, colour: string, width = 0.5): void {
    this.doc.moveTo(x1, y).lineTo(x2, y).lineWidth(width).undash().strokeColor(colour).stroke();
  }

  /** The running head and foot of every page, when all of them are there. */
  furnish(head: string, title: string, foot: string): void {
    const { doc } = this;
    const { start, count } = doc.bufferedPageRange();
    const right = PAGE.width - MARGIN.right;
    for (let index = 0; index < count; index++) {
      doc.switchToPage(start + index);
      doc.markContent('Artifact', { type: 'Pagination' });
      const side = (words: string, y: number) =>
        this.letters(words, right - this.measure(8)(words, false), y, 8, false, this.palette.soft);
      this.letters(head, MARGIN.left, 30, 8, true, this.palette.ink);
      side(title, 30);
      this.rule(MARGIN.left, right, 43, this.palette.rule);
      this.rule(MARGIN.left, right, PAGE.height - 42, this.palette.rule);
      this.letters(foot, MARGIN.left, PAGE.height - 36, 8, false, this.palette.soft);
      side(`Page ${index + 1} of ${count}`, PAGE.height - 36);
      doc.endMarkedContent();
    }
  }

  /** The whole file. */
  async finish(): Promise<Uint8Array> {
    this.root.end();
    const pieces: Buffer[] = [];
    const done = new Promise<void>((resolve, reject) => {
      this.doc.on('data', (piece: Buffer) => pieces.push(piece));
      this.doc.on('end', resolve);
      this.doc.on('error', reject);
    });
    this.doc.end();
    await done;
    return Buffer.concat(pieces);
  }
}

/** Between columns. */
const GAP = 14;
