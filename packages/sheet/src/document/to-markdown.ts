import type { Block, Table } from './blocks.js';
import { type Text, VERDICT_SIGN } from './text.js';

/** Blocks as Markdown. Drawings are left out: their captions and the tables beside them say the same. */
export function blocksMarkdown(blocks: readonly Block[], level: number): string {
  return blocks
    .map(block => blockMarkdown(block, level))
    .filter(Boolean)
    .join('\n\n');
}

/** Words in Markdown: nothing in them is mark-up. */
export function escapeMarkdown(text: string): string {
  return text
    .replace(/\s+/g, ' ')
    .replace(CONTROLS, '\u{fffd}')
    .replace(/[\\`*_[\]<>#|~&]/g, sign => (sign === '<' ? '&lt;' : sign === '&' ? '&amp;' : `\\${sign}`))
    .replace(/^(\s*)([-+]|\d+[.)])(\s)/, '$1\\$2$3')
    .replace(/:\/\//g, '\\://')
    .replace(/\b(www)\./gi, '$1\\.')
    .replace(/@/g, '&#64;');
}

/** Signs that a terminal takes for orders, or that turn the order of what is read. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is replaced
const CONTROLS = /[\x00-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069]/g;

/** Running text as Markdown. */
export function textMarkdown(text: Text): string {
  if (typeof text === 'string') return escapeMarkdown(text);
  if (!('as' in text)) return text.map(textMarkdown).join('');
  switch (text.as) {
    case 'strong':
    case 'warning': {
      const inner = textMarkdown(text.text).trim();
      return inner ? `**${inner}**` : '';
    }
    case 'verdict':
      return `${VERDICT_SIGN[text.outcome]} ${text.outcome}`;
    case 'break':
      return '<br>';
    case 'anchor':
      return `**${escapeMarkdown(text.text)}**`;
    case 'place':
      return `(${escapeMarkdown(text.text)})`;
    case 'reference':
      return escapeMarkdown(text.text);
    default:
      return textMarkdown(text.text);
  }
}

function blockMarkdown(block: Block, level: number): string {
  switch (block.block) {
    case 'paragraph':
      return outside(block.text);
    case 'list':
      return block.items
        .map((item, index) => `${LIST_MARK[block.kind](index)} ${outside(item).replace(/\n/g, '\n  ')}`)
        .join('\n');
    case 'terms':
      return block.items
        .map(([label, value]) => `- **${escapeMarkdown(label)}**: ${outside(value)}`)
        .join('\n');
    case 'table':
      return tableMarkdown(block);
    case 'figure':
      return outside(block.caption);
    case 'row':
      return blocksMarkdown(block.figures, level);
    case 'details':
      return `**${textMarkdown(block.summary)}**\n\n${blocksMarkdown(block.blocks, level)}`;
    case 'section':
      return [
        `${'#'.repeat(Math.min(6, level))} ${escapeMarkdown(block.title)}`,
        blocksMarkdown(block.blocks, level + 1),
      ].join('\n\n');
  }
}

const LIST_MARK = {
  bullets: () => '-',
  numbers: (index: number) => `${index + 1}.`,
  boxes: () => '- [ ]',
} as const;

/** Outside of tables a line is broken by two spaces, without HTML. */
function outside(text: Text): string {
  return textMarkdown(text).replaceAll('<br>', '  \n');
}

function tableMarkdown(table: Table): string {
  const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const lines = [
    `*${escapeMarkdown(table.caption)}*`,
    '',
    row(table.columns.map(column => escapeMarkdown(column.title))),
    row(table.columns.map(column => (column.numeric ? '---:' : '---'))),
  ];
  for (const group of table.groups) {
    if (group.title !== undefined)
      lines.push(row([`**${textMarkdown(group.title)}**`, ...table.columns.slice(1).map(() => '')]));
    for (const cells of group.rows) lines.push(row(cells.map(textMarkdown)));
  }
  return lines.join('\n');
}
