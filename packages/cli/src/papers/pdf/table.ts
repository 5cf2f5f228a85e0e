import type { Table } from '@tailshaft/sheet';
import { extentOf, type Line, linesOf } from './lines.js';
import type { Element, Pen } from './pen.js';
import { type Run, runsOf } from './runs.js';

const SIZE = 7.6;
const LEADING = SIZE * 1.28;
const PAD = { x: 3.5, y: 2.2 };
/** Room to write by hand. */
const FORM_ROW = 22;
/** A table of more rows may go on over the page. */
const FEW_ROWS = 8;
const sum = (all: readonly number[]) => all.reduce((one, other) => one + other, 0);

interface Row {
  readonly cells: readonly (readonly Run[])[];
  readonly group?: true;
}

/** How a table is laid out at the width of the page. */
function layOut(pen: Pen, table: Table) {
  const { palette } = pen;
  const measure = pen.measure(SIZE);
  const head: Row = { cells: table.columns.map(one => runsOf(one.title, palette, { bold: true })) };
  const rows = table.groups.flatMap((group): Row[] => [
    ...(group.title === undefined
      ? []
      : [{ cells: [runsOf(group.title, palette, { bold: true })], group: true as const }]),
    ...group.rows.map(row => ({ cells: row.map(cell => runsOf(cell, palette)) })),
  ]);
  const widths = widthsOf(table, [head, ...rows.filter(one => !one.group)], pen.width, measure);
  const across = sum(widths);
  const laid = (row: Row): Line[][] =>
    row.cells.map((cell, index) => linesOf(cell, (row.group ? across : widths[index]!) - 2 * PAD.x, measure));
  const headLines = laid(head);
  const least = table.form ? FORM_ROW : 0;
  const heightOf = (lines: readonly Line[][], atLeast = 0) =>
    Math.max(atLeast, Math.max(1, ...lines.map(one => one.length)) * LEADING + 2 * PAD.y);
  const captionLines = linesOf(runsOf(table.caption, palette, { colour: palette.soft }), pen.width, measure);
  // A short table is not torn: its last row alone on a new page would be read as another table.
  const whole =
    rows.length > FEW_ROWS ? Number.POSITIVE_INFINITY : sum(rows.map(row => heightOf(laid(row), least)));
  const first = rows[0] ? Math.min(heightOf(laid(rows[0]), least), 80) : 0;
  const toBegin =
    captionLines.length * LEADING + heightOf(headLines) + 8 + (whole < pen.most / 3 ? whole : first);
  return { head, rows, widths, across, laid, headLines, least, heightOf, captionLines, toBegin };
}

/** The room that a table takes before it may go on over the page, in points. */
export const roomToBegin = (pen: Pen, table: Table): number => layOut(pen, table).toBegin;

/** A table whose head stands again on every page that it goes on to. */
export function drawTable(pen: Pen, table: Table, parent: Element): void {
  const { palette } = pen;
  const { head, rows, widths, across, laid, headLines, least, heightOf, captionLines, toBegin } = layOut(
    pen,
    table,
  );
  const element = pen.element('Table', parent);
  pen.need(toBegin);
  const caption = pen.element('Caption', element);
  for (const line of captionLines) {
    pen.content(caption, 'Caption', () => pen.line(line, pen.x, pen.y, SIZE));
    pen.y += LEADING;
  }
  pen.y += 1.5;

  const drawCells = (
    row: Row,
    lines: readonly (readonly Line[])[],
    height: number,
    into: Element | undefined,
    kind: (index: number) => string,
  ) => {
    let x = pen.x;
    if (row.group) pen.artifact(() => pen.doc.rect(pen.x, pen.y, across, height).fill(palette.panel));
    lines.forEach((cell, index) => {
      const width = row.group ? across : widths[index]!;
      const numeric = !row.group && (table.columns[index]?.numeric ?? false);
      const tag = kind(index);
      const draw = () =>
        cell.forEach((line, number) => {
          const shift = numeric ? width - 2 * PAD.x - line.width : 0;
          pen.line(line, x + PAD.x + shift, pen.y + PAD.y + number * LEADING, SIZE);
        });
      if (into) {
        const own = pen.element(tag, into, tag === 'TH' ? { scope: row === head ? 'Column' : 'Row' } : {});
        pen.content(own, tag, draw);
      } else pen.artifact(draw);
      x += width;
    });
    pen.y += height;
    pen.artifact(() =>
      pen.rule(
        pen.x,
        pen.x + across,
        pen.y,
        row === head ? palette.ink : palette.faint,
        row === head ? 0.9 : 0.5,
      ),
    );
  };

  const drawHead = (again: boolean) => {
    const row = again ? undefined : pen.element('TR', element);
    drawCells(head, headLines, heightOf(headLines), row, () => 'TH');
  };
  drawHead(false);
  for (const row of rows) {
    let left = laid(row);
    const element_ = pen.element('TR', element);
    while (true) {
      const height = heightOf(left, least);
      const room = pen.bottom - pen.y;
      const fresh = pen.most - heightOf(headLines);
      if (height <= room) {
        drawCells(row, left, height, element_, index => (index === 0 ? 'TH' : 'TD'));
        break;
      }
      if (height <= fresh || room < 4 * LEADING) {
        pen.next();
        drawHead(true);
        continue;
      }
      // Higher than a page: as many lines as fit, and the rest on the next one.
      const fits = Math.max(1, Math.floor((room - 2 * PAD.y) / LEADING));
      const now = left.map(cell => cell.slice(0, fits));
      drawCells(row, now, heightOf(now), element_, index => (index === 0 ? 'TH' : 'TD'));
      left = left.map(cell => cell.slice(fits));
      pen.next();
      drawHead(true);
    }
  }
  pen.y += 8;
}

/** Each column gets its widest word, and of what is left a share by what it still wants. */
function widthsOf(
  table: Table,
  rows: readonly Row[],
  width: number,
  measure: ReturnType<Pen['measure']>,
): number[] {
  const extents = table.columns.map((column, index) => {
    let [least, most] = [0, 0];
    for (const row of rows) {
      const cell = row.cells[index];
      if (!cell) continue;
      const own = extentOf(cell, measure);
      least = Math.max(least, own.least);
      most = Math.max(most, column.numeric && own.most < 90 ? own.most : own.most);
    }
    const pad = 2 * PAD.x + 0.5;
    return { least: Math.min(least, width * 0.34) + pad, most: Math.min(most, width) + pad };
  });
  const [least, most] = [
    extents.reduce((sum, one) => sum + one.least, 0),
    extents.reduce((sum, one) => sum + one.most, 0),
  ];
  if (most <= width) {
    const wide = table.columns.map((column, index) =>
      column.wide || index === 0 ? extents[index]!.most : 0,
    );
    const share = wide.reduce((sum, one) => sum + one, 0) || 1;
    return extents.map((one, index) => one.most + ((width - most) * wide[index]!) / share);
  }
  if (least >= width) return extents.map(one => (one.least * width) / least);
  return extents.map(one => one.least + ((width - least) * (one.most - one.least)) / (most - least));
}
