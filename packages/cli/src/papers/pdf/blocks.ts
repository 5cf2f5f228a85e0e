import type { Block, Section, Text } from '@tailshaft/sheet';
import { drawFigures, heightOfFigures } from './figure.js';
import { linesOf } from './lines.js';
import type { Element, Pen } from './pen.js';
import { colourOf, type Look, runsOf } from './runs.js';
import { drawTable, roomToBegin } from './table.js';

type Outline = PDFKit.PDFOutline;

/** Where a block stands: how deep, below which element, in what size. */
interface Place {
  readonly level: number;
  readonly parent: Element;
  readonly outline: Outline;
  readonly size: number;
}

const BODY = 8.8;
/** Workings are read one by one, not through. */
const SMALL = 6.9;
const HEADINGS = [16, 12.5, 10.6, 9.6, 9.2, 9];

export function drawBlocks(pen: Pen, blocks: readonly Block[], place: Place): void {
  for (const block of blocks) drawBlock(pen, block, place);
}

/** The first place of a paper. */
export function topPlace(pen: Pen): Place {
  return { level: 2, parent: pen.root, outline: pen.doc.outline, size: BODY };
}

function drawBlock(pen: Pen, block: Block, place: Place): void {
  switch (block.block) {
    case 'paragraph': {
      const loud = block.tone === 'loud';
      const look: Look = block.tone === 'quiet' ? { colour: pen.palette.soft } : {};
      drawText(pen, block.text, place, 'P', { look, size: loud ? place.size * 1.12 : place.size });
      return;
    }
    case 'list':
      drawList(pen, block.items, place, block.kind);
      return;
    case 'terms':
      drawTerms(pen, block.items, place);
      return;
    case 'table':
      drawTable(pen, block, place.parent);
      return;
    case 'figure':
      drawFigures(pen, [block], place.parent);
      return;
    case 'row':
      drawFigures(pen, block.figures, place.parent);
      return;
    case 'details': {
      const inner = { ...place, parent: pen.element('Div', place.parent) };
      pen.need(3 * place.size);
      drawText(pen, block.summary, inner, 'P', {
        look: { bold: true, colour: pen.palette.accent },
        size: place.size,
      });
      drawBlocks(pen, block.blocks, inner);
      return;
    }
    case 'section':
      drawSection(pen, block, place);
      return;
  }
}

function drawSection(pen: Pen, section: Section, place: Place): void {
  if (section.newPage && pen.y > pen.top) pen.newPage();
  const parent = pen.element('Sect', place.parent);
  const size = HEADINGS[Math.min(place.level, HEADINGS.length) - 1]!;
  pen.y += pen.y > pen.top ? size * 0.8 : 0;
  pen.need(size * 1.9 + leastHeight(pen, section.blocks[0], size));
  const outline = place.outline.addItem(section.title, { expanded: place.level < 3 });
  const { palette } = pen;
  const colour = section.standing
    ? colourOf(section.standing, palette)
    : section.loud
      ? palette.unsure
      : undefined;
  if (colour) pen.artifact(() => pen.doc.rect(pen.x - 8, pen.y - 1, 4, size * 1.3).fill(colour));
  pen.doc.addNamedDestination(section.id, 'XYZ', pen.x, pen.y - 4, null);
  drawText(pen, section.title, { ...place, parent }, `H${Math.min(place.level, 6)}`, {
    look: { bold: true, colour: colour ?? palette.accent },
    size,
  });
  if (place.level === 2) pen.artifact(() => pen.rule(pen.x, pen.x + pen.width, pen.y - 2, palette.rule));
  const inner: Place = { level: place.level + 1, parent, outline, size: place.size };
  if (section.id === 'workings') {
    pen.inColumns(2, () => drawBlocks(pen, section.blocks, { ...inner, size: SMALL }));
  } else drawBlocks(pen, section.blocks, inner);
}

/** How much of a block stays with the heading before it. */
function leastHeight(pen: Pen, block: Block | undefined, size: number): number {
  if (block?.block === 'section') return size * 2.6 + leastHeight(pen, block.blocks[0], size);
  if (block?.block === 'figure') return heightOfFigures(pen, [block]);
  if (block?.block === 'row') return heightOfFigures(pen, block.figures);
  if (block?.block === 'table') return Math.min(pen.most - 80, roomToBegin(pen, block));
  return 54;
}

interface TextStyle {
  readonly look?: Look;
  readonly size: number;
  readonly indent?: number;
  readonly after?: number;
}

export function drawText(
  pen: Pen,
  text: Text,
  { parent }: Pick<Place, 'parent'>,
  tag: string,
  style: TextStyle,
): void {
  const { look = {}, size, indent = 0, after = size * 0.45 } = style;
  const lines = linesOf(runsOf(text, pen.palette, look), pen.width - indent, pen.measure(size));
  const element = pen.element(tag, parent);
  for (const line of lines) {
    pen.need(size * 1.3);
    pen.content(element, tag, () => pen.line(line, pen.x + indent, pen.y, size));
    pen.y += size * 1.3;
  }
  pen.y += after;
}

function drawList(
  pen: Pen,
  items: readonly Text[],
  place: Place,
  kind: 'bullets' | 'numbers' | 'boxes',
): void {
  const list = pen.element('L', place.parent);
  const { size } = place;
  const indent = size * (kind === 'numbers' ? 1.9 : 1.4);
  items.forEach((item, index) => {
    const entry = pen.element('LI', list);
    const mark = kind === 'numbers' ? `${index + 1}.` : kind === 'boxes' ? '☐' : '•';
    const lines = linesOf(runsOf(item, pen.palette), pen.width - indent, pen.measure(size));
    pen.need(Math.min(lines.length, 3) * size * 1.3);
    const label = pen.element('Lbl', entry);
    pen.content(label, 'Lbl', () => pen.letters(mark, pen.x, pen.y, size, false, pen.palette.soft));
    const body = pen.element('LBody', entry);
    for (const line of lines) {
      pen.need(size * 1.3);
      pen.content(body, 'LBody', () => pen.line(line, pen.x + indent, pen.y, size));
      pen.y += size * 1.3;
    }
    pen.y += size * 0.22;
  });
  pen.y += size * 0.4;
}

/** Labels and what stands for each, in two columns of pairs. */
function drawTerms(pen: Pen, items: readonly (readonly [string, Text])[], place: Place): void {
  const list = pen.element('L', place.parent);
  const size = 8.2;
  const measure = pen.measure(size);
  const gap = 16;
  const half = (pen.width - gap) / 2;
  const label = Math.max(...items.map(([name]) => measure(name, false))) + 6;
  const top = pen.y;
  const rows = Math.ceil(items.length / 2);
  let y = top;
  let lowest = top;
  items.forEach(([name, value], index) => {
    if (index === rows) y = top;
    const x = pen.x + (index < rows ? 0 : half + gap);
    const lines = linesOf(runsOf(value, pen.palette), half - label, measure);
    const entry = pen.element('LI', list);
    pen.content(pen.element('Lbl', entry), 'Lbl', () =>
      pen.letters(name, x, y, size, false, pen.palette.soft),
    );
    const body = pen.element('LBody', entry);
    lines.forEach((line, row) => {
      pen.content(body, 'LBody', () => pen.line(line, x + label, y + row * size * 1.25, size));
    });
    y += Math.max(1, lines.length) * size * 1.25 + 2.4;
    const at = y;
    pen.artifact(() => pen.rule(x, x + half, at - 1.6, pen.palette.faint));
    lowest = Math.max(lowest, y);
  });
  pen.y = lowest + 6;
}
