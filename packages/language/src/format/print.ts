import { type Piece, piecesOf } from '../text/tokens.js';
import type { Outline } from './outline.js';
import { type Block, type Body, firstOf, type Item, lastOf, treeOf } from './tree.js';

/** A line is no longer than this where it can be helped. */
export const WIDTH = 110;

/** Prints a text anew from its tree; nothing but the space between tokens and comments is different afterwards. */
export function printText(text: string, outline: Outline, eol: string): string {
  const pieces = piecesOf(text);
  const printer = new Printer(text, outline, eol);
  const mark = text.startsWith('\uFEFF') ? '\uFEFF' : '';
  const body = printer.body(treeOf(pieces, outline), '');
  const last = pieces.at(-1);
  const ends = last ? /[\r\n]/.test(text.slice(last.end)) : false;
  return mark + body + (ends ? eol : '');
}

class Printer {
  constructor(
    private readonly text: string,
    private readonly outline: Outline,
    private readonly eol: string,
  ) {}

  /** Statements one below the other, with at most one blank line where the author left some. */
  body({ items, rest }: Body, indent: string): string {
    let printed = '';
    let at = 0;
    const add = (first: Piece, lastLine: number, words: string) => {
      const gap = printed === '' ? '' : first.line > at + 1 ? this.eol + this.eol : this.eol;
      printed += gap + indent + words;
      at = lastLine;
    };
    for (const item of items) {
      const same = this.sameLineLead(item);
      this.comments(item.lead.slice(0, item.lead.length - same.length), add);
      const lead = same.map(one => `${one.text} `).join('');
      const first = same[0] ?? firstOf(item);
      add(first, (item.trail.at(-1) ?? lastOf(item)).endLine, lead + this.item(item, indent));
    }
    this.comments(rest, add);
    return printed;
  }

  /** Comments on lines of their own; several that share a line go on sharing it. */
  private comments(all: readonly Piece[], add: (first: Piece, last: number, words: string) => void): void {
    for (let from = 0; from < all.length; ) {
      let to = from + 1;
      while (to < all.length && all[to]!.line === all[to - 1]!.endLine) to += 1;
      const together = all.slice(from, to);
      add(together[0]!, together.at(-1)!.endLine, together.map(one => one.text).join(' '));
      from = to;
    }
  }

  /** Comments in front of an item that share its first line. */
  private sameLineLead(item: Item): Piece[] {
    let next = firstOf(item);
    let from = item.lead.length;
    while (
      from > 0 &&
      item.lead[from - 1]!.comment === 'block' &&
      item.lead[from - 1]!.endLine === next.line
    ) {
      from -= 1;
      next = item.lead[from]!;
    }
    return item.lead.slice(from);
  }

  private item(item: Item, indent: string): string {
    const trail = item.trail.map(one => `  ${one.text}`).join('');
    if (item.raw) return this.slice(firstOf(item), lastPiece(item)) + trail;
    const head = this.head(item, indent);
    const { block } = item;
    if (!block) return head + trail;
    const before = this.breaksAfter(item.head.at(-1)!) ? `${head}${this.eol}${indent}` : `${head} `;
    const lastLine = before.slice(Math.max(before.lastIndexOf('\n'), before.lastIndexOf('\r')) + 1);
    const width = (lastLine === before ? indent.length : 0) + lastLine.length;
    const flat = block.open.line === block.close.endLine ? this.flat(block) : undefined;
    if (flat !== undefined && (width + flat.length <= WIDTH || isEmpty(block))) return before + flat + trail;
    if (block.raw) return before + this.slice(block.open, block.close) + trail;
    const after = block.afterOpen.map(one => `  ${one.text}`).join('');
    const body = this.body(block, `${indent}  `);
    return `${before}{${after}${body === '' ? '' : this.eol + body}${this.eol}${indent}}${trail}`;
  }

  /** A block on one line. */
  private flat(block: Block): string | undefined {
    if (block.raw) return this.slice(block.open, block.close);
    if (isEmpty(block)) return '{ }';
    const words = [...block.items.map(item => this.flatItem(item)), ...block.rest.map(one => one.text)];
    return words.some(one => one === undefined) ? undefined : `{ ${words.join('  ')} }`;
  }

  private flatItem(item: Item): string | undefined {
    const lead = item.lead.map(one => `${one.text} `).join('');
    const trail = item.trail.map(one => `  ${one.text}`).join('');
    if (item.raw) return lead + this.slice(firstOf(item), lastPiece(item)) + trail;
    const head = this.head(item, '');
    const block = item.block ? this.flat(item.block) : '';
    return block === undefined ? undefined : `${lead}${head}${block && ` ${block}`}${trail}`;
  }

  /** The tokens of a statement up to its block. */
  private head(item: Item, indent: string): string {
    let printed = '';
    let before: Piece | undefined;
    for (const piece of item.head) {
      if (before) {
        const breaks = item.sentence && piece.line > before.endLine;
        printed += breaks || this.breaksAfter(before) ? `${this.eol}${indent}    ` : this.gap(before, piece);
      }
      printed += piece.text;
      before = piece;
    }
    return printed;
  }

  private gap(before: Piece, piece: Piece): string {
    if (piece.comment === 'line') return '  ';
    if (piece.text === ']' || before.text === '[' || piece.text === ',') return '';
    return this.outline.inline.get(piece.start) ?? ' ';
  }

  /** Nothing may stand behind a line comment, nor behind a text whose closing quote is missing. */
  private breaksAfter(piece: Piece): boolean {
    if (piece.comment) return piece.comment === 'line';
    return piece.text.startsWith('"') && (piece.text.length < 2 || !piece.text.endsWith('"'));
  }

  private slice(first: Piece, last: Piece): string {
    return this.text.slice(first.start, last.end);
  }
}

function isEmpty(block: Block): boolean {
  return block.items.length + block.rest.length + block.afterOpen.length === 0;
}

function lastPiece(item: Item): Piece {
  const head = item.head.at(-1)!;
  return item.block && item.block.close.end > head.end ? item.block.close : head;
}
