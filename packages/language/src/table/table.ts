import type { EntryReading } from '../reading/document.js';
import { type Column, headerOf } from './columns.js';
import { COMMENTS } from './comments.js';
import { cellsOf } from './entry-cells.js';

/** What every row begins with. */
export const LEAD = ['kind', 'name', 'title', 'remark'] as const;

/** A table of catalogue entries: one row each, a column for every property that one of them says. */
export interface Table {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/**
 * Entries as a table. Where every cell of a column is a plain number with one unit, the unit stands in its header; otherwise
 * cells are as written, with their evidence.
 */
export function tableOf(
  entries: readonly EntryReading[],
  textOf: (entry: EntryReading) => string,
  comments: ReadonlyMap<EntryReading, string> = new Map(),
): Table {
  const all = entries.map(entry => ({ entry, cells: cellsOf(entry.facts, textOf(entry)) }));
  const paths = [...new Set(all.flatMap(({ cells }) => [...cells.keys()]))];
  const columns = paths.map((path): Column => {
    const unit = unitOfAll(all.flatMap(({ cells }) => cells.get(path) ?? []));
    return unit === undefined ? { path } : { path, unit };
  });
  const commented = entries.some(one => comments.has(one));
  return {
    head: [...LEAD, ...(commented ? [COMMENTS] : []), ...columns.map(headerOf)],
    rows: all.map(({ entry, cells }) => [
      entry.kind,
      entry.name,
      entry.title ?? '',
      entry.doc ?? '',
      ...(commented ? [comments.get(entry) ?? ''] : []),
      ...columns.map(({ path, unit }) => {
        const cell = cells.get(path) ?? '';
        return unit === undefined ? cell : cell.replace(PLAIN, '$1');
      }),
    ]),
  };
}

const PLAIN = /^(-?\d+(?:\.\d+)?) ([^\s"[\]{}]+)$/;

/** The unit of cells that are all a plain number in it. */
function unitOfAll(cells: readonly string[]): string | undefined {
  const units = new Set(cells.map(cell => PLAIN.exec(cell)?.[2]));
  const [unit] = units;
  return units.size === 1 && unit !== undefined && !/^\d/.test(unit) ? unit : undefined;
}
