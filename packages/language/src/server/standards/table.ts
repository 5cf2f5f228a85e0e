import { citeSource, type Source } from '@tailshaft/mechanics';
import { paragraphs, plain } from '../hover/markdown.js';

/** A published table of sizes, laid out for a person: one row a size, in the order of the publication. */
export interface StandardTable<R> {
  /** `flywheel housing`. */
  readonly title: string;
  readonly columns: readonly Column<R>[];
  readonly rows: readonly R[];
  /** As a spec writes the size: `SAE-3`. */
  readonly nameOf: (row: R) => string;
  /** Where the figures come from; what is said of some figures only has their name in front. */
  readonly sourcesOf: (row: R) => readonly CitedFigures[];
  readonly noteOf?: (row: R) => string | undefined;
}

export interface Column<R> {
  readonly head: string;
  /** Undefined where the table prints nothing. */
  readonly cell: (row: R) => string | undefined;
}

export interface CitedFigures {
  readonly figures?: string;
  readonly source: Source;
}

/** How many sizes on either side of a row a person wants to see. */
const NEIGHBOURS = 1;

/** A row of a table with the sizes next to it, its sources and how far they can be relied on. */
export function sizeMarkdown<R>(table: StandardTable<R>, row: R, neighbours = NEIGHBOURS): string {
  const at = table.rows.indexOf(row);
  const shown = table.rows.slice(Math.max(0, at - neighbours), at + neighbours + 1);
  return paragraphs(
    `**${table.title} ${plain(table.nameOf(row))}**`,
    rowsMarkdown(table, shown, row),
    sourceLines(table, row),
    table.noteOf?.(row) && `Note: ${plain(table.noteOf(row)!)}.`,
  );
}

/** Some rows of a table; the one that is meant in bold. Columns that say nothing of them are left out. */
export function rowsMarkdown<R>(table: StandardTable<R>, shown: readonly R[], meant?: R): string {
  const columns = table.columns.filter(({ cell }) => shown.some(row => cell(row) !== undefined));
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [
    line(['size', ...columns.map(one => one.head)]),
    line(['---', ...columns.map(() => '---')]),
    ...shown.map(row => {
      const cells = [plain(table.nameOf(row)), ...columns.map(one => plain(one.cell(row) ?? 'not printed'))];
      return line(row === meant ? cells.map(cell => `**${cell}**`) : cells);
    }),
  ].join('\n');
}

/** The most telling figures of a row in a few words: what stands beside a name that is offered. */
export function rowWords<R>(table: StandardTable<R>, row: R, heads: readonly string[]): string {
  return heads
    .flatMap(head => {
      const said = table.columns.find(one => one.head === head)?.cell(row);
      return said === undefined ? [] : [`${head} ${said}`];
    })
    .join(', ');
}

function sourceLines<R>(table: StandardTable<R>, row: R): string {
  return table
    .sourcesOf(row)
    .map(({ figures, source }) => {
      const confidence = source.confidence === 'published' ? ' (published)' : '';
      return `Source${figures ? ` of ${figures}` : ''}: ${plain(citeSource(source))}${confidence}.`;
    })
    .join('  \n');
}
