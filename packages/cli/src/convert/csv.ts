import Papa from 'papaparse';
import { CannotRun } from '../cannot-run.js';

/** A table as it was read: its header, and its rows with the line that each begins on. */
export interface CsvTable {
  readonly head: readonly string[];
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[];
}

/** Reads comma, semicolon or tab separated text as RFC 4180 has it. What is not such a table is told, never guessed at. */
export function readCsv(text: string, shown: string): CsvTable {
  const { data, errors } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { skipEmptyLines: false });
  const broken = errors.find(one => one.type === 'Quotes');
  if (broken)
    throw new CannotRun(
      `${shown} is no table: row ${(broken.row ?? 0) + 1}: a quotation mark is left open, or text stands behind one`,
    );
  const [head, ...rest] = data;
  if (!head || head.every(one => one.trim() === ''))
    throw new CannotRun(`${shown} has no header: its first row names the columns`);
  let line = 1 + lineBreaks(head);
  const rows = rest.map(cells => {
    const at = line + 1;
    line = at + lineBreaks(cells);
    return { line: at, cells: cells.map(unguarded) };
  });
  return {
    head: head.map(one => one.trim()),
    rows: rows.filter(({ cells }) => cells.some(one => one.trim() !== '')),
  };
}

export function writeCsv(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return `${Papa.unparse({ fields: [...head], data: rows.map(row => row.map(guarded)) }, { newline: '\n' })}\n`;
}

/** A cell that a spreadsheet would take for a formula is given as text; reading takes the mark off again. */
function guarded(cell: string): string {
  return /^(['=+@\t]|-(?![\d.]+$))/.test(cell) ? `'${cell}` : cell;
}

function unguarded(cell: string): string {
  return /^'(['=+@\t]|-)/.test(cell) ? cell.slice(1) : cell;
}

function lineBreaks(cells: readonly string[]): number {
  return cells.reduce((sum, cell) => sum + (cell.match(/\n/g)?.length ?? 0), 0);
}
