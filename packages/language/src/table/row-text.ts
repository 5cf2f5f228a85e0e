import { type Column, stepsOf, withoutNumber } from './columns.js';
import { NOTHING } from './entry-cells.js';

/** A cell in a text: which column it came from, and where its property stands. */
export interface CellPlace {
  readonly column: number;
  readonly start: number;
  readonly end: number;
}

export interface RowText {
  readonly text: string;
  readonly places: readonly CellPlace[];
  /** Why a cell cannot stand in a spec at all, by its column. */
  readonly refused: readonly { readonly column: number; readonly why: string }[];
}

interface Block {
  readonly inner: Map<string, Block>;
  readonly cells: { readonly column: number; readonly words: string; readonly written: string }[];
}

/** The statement that a row says: its header, and in braces what its cells say. Blank cells say nothing. */
export function rowText(header: string, columns: readonly Column[], cells: readonly string[]): RowText {
  const root: Block = { inner: new Map(), cells: [] };
  const refused: { column: number; why: string }[] = [];
  for (const [column, { path, unit }] of columns.entries()) {
    const cell = (cells[column] ?? '').trim();
    if (cell === '') continue;
    const why = breaksOut(cell);
    if (why) {
      refused.push({ column, why });
      continue;
    }
    const { blocks, words } = stepsOf(path);
    let at = root;
    for (const step of blocks) {
      const inner = at.inner.get(step) ?? { inner: new Map(), cells: [] };
      at.inner.set(step, inner);
      at = inner;
    }
    if (words === NOTHING && blocks.length > 0) continue;
    const written = unit !== undefined && /^[-+]?[\d.,]+$/.test(cell) ? `${cell} ${unit}` : cell;
    at.cells.push({ column, words, written });
  }
  const places: CellPlace[] = [];
  let text = `${header} {\n`;
  const print = (block: Block, indent: string): void => {
    for (const { column, words, written } of block.cells) {
      const start = text.length;
      text += `${indent}${words} ${written}\n`;
      places.push({ column, start, end: text.length });
    }
    for (const [step, inner] of block.inner) {
      const start = text.length;
      text += `${indent}${withoutNumber(step)} {\n`;
      // A block that cannot be read is told at the first cell within it.
      const first = firstCell(inner);
      if (first !== undefined) places.push({ column: first, start, end: text.length });
      print(inner, `${indent}  `);
      text += `${indent}}\n`;
    }
  };
  print(root, '  ');
  return { text: `${text}}\n`, places, refused };
}

function firstCell(block: Block): number | undefined {
  return block.cells[0]?.column ?? [...block.inner.values()].map(firstCell).find(one => one !== undefined);
}

/** What would say more than the one property of its column. */
function breaksOut(cell: string): string | undefined {
  const bare = cell.replace(/"[^"\n]*"/g, '""');
  if (/[\r\n]/.test(cell)) return 'a cell is one line';
  if (/["]/.test(bare.replaceAll('""', ''))) return 'a quotation mark is left open';
  if (/[{}]/.test(bare)) return 'braces cannot stand in a cell: a block has columns of its own';
  if (/\/\/|\/\*/.test(bare)) return 'a comment cannot stand in a cell';
  return undefined;
}
