import type { Outcome } from '@tailshaft/drivetrain';
import type { Markup } from './markup.js';
import type { Text } from './text.js';

/** What a sheet is made of, before it is HTML or Markdown. */
export type Block = Paragraph | List | Terms | Table | Figure | Row | Details | Section;

export interface Paragraph {
  readonly block: 'paragraph';
  readonly text: Text;
  readonly tone?: 'loud' | 'quiet';
}

export interface List {
  readonly block: 'list';
  readonly kind: 'bullets' | 'numbers' | 'boxes';
  readonly items: readonly Text[];
}

/** Labels with what stands for each: a title block. */
export interface Terms {
  readonly block: 'terms';
  readonly items: readonly (readonly [label: string, value: Text])[];
}

/** A table whose rows begin with a heading cell. */
export interface Table {
  readonly block: 'table';
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly groups: readonly RowGroup[];
  /** Room to write by hand. */
  readonly form?: boolean;
}

export interface Column {
  readonly title: string;
  readonly numeric?: boolean;
  /** Words may fill the column; others are kept narrow. */
  readonly wide?: boolean;
}

/** Rows that belong together under a line of their own; without one, just rows. */
export interface RowGroup {
  readonly title?: Text;
  readonly rows: readonly (readonly Text[])[];
}

/** A drawing with the words that say the same. */
export interface Figure {
  readonly block: 'figure';
  readonly svg: Markup;
  readonly caption: Text;
}

/** Figures side by side where there is room. */
export interface Row {
  readonly block: 'row';
  readonly figures: readonly Figure[];
}

export interface Details {
  readonly block: 'details';
  readonly summary: Text;
  readonly blocks: readonly Block[];
}

export interface Section {
  readonly block: 'section';
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly Block[];
  /** Stands out: what was not checked. */
  readonly loud?: boolean;
  /** Says how all of it stands, and is marked so. */
  readonly standing?: Outcome;
  /** Starts a new page in print. */
  readonly newPage?: boolean;
}

export const paragraph = (text: Text, tone?: Paragraph['tone']): Paragraph => ({
  block: 'paragraph',
  text,
  ...(tone ? { tone } : {}),
});

export const list = (items: readonly Text[], kind: List['kind'] = 'bullets'): List => ({
  block: 'list',
  kind,
  items,
});

/** A table without groups. */
export const table = (
  caption: string,
  columns: readonly Column[],
  rows: readonly (readonly Text[])[],
): Table => ({ block: 'table', caption, columns, groups: [{ rows }] });

export const section = (
  id: string,
  title: string,
  blocks: readonly (Block | undefined)[],
  more: Pick<Section, 'loud' | 'newPage' | 'standing'> = {},
): Section => ({
  block: 'section',
  id: idFrom(id),
  title,
  blocks: blocks.filter(one => one !== undefined),
  ...more,
});

/** An id that may stand in a link, whatever name it was made from. */
export function idFrom(name: string): string {
  return name.replace(/[^\p{L}\p{N}._-]+/gu, '-');
}
