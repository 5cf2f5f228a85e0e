import type { Piece } from '../text/tokens.js';
import type { Outline } from './outline.js';

/** A statement or fact with its comments. */
export interface Item {
  /** Comments in front of it. */
  readonly lead: Piece[];
  /** Its tokens up to its block, with comments between them. */
  readonly head: Piece[];
  block?: Block;
  /** Comments behind it on its last line. */
  readonly trail: Piece[];
  /** To be printed as it stands. */
  raw: boolean;
  readonly sentence: boolean;
}

export interface Body {
  readonly items: Item[];
  /** Comments behind the last item. */
  readonly rest: Piece[];
}

export interface Block extends Body {
  readonly open: Piece;
  readonly close: Piece;
  /** Comments on the line of the opening brace. */
  readonly afterOpen: Piece[];
  raw: boolean;
}

/** The tokens of a text as statements in blocks in statements. What could not be read is marked to be left alone. */
export function treeOf(pieces: readonly Piece[], outline: Outline): Body {
  const builder = new TreeBuilder(pieces, outline);
  const body = builder.body(0, pieces.length, true);
  for (const offset of outline.broken) markBroken(body, offset, outline);
  return body;
}

/** First and last token of an item, without comments around it. */
export function firstOf(item: Item): Piece {
  return item.head[0]!;
}

export function lastOf(item: Item): Piece {
  return item.block?.close ?? item.head.at(-1)!;
}

class TreeBuilder {
  private readonly closeOf = new Map<number, number>();
  /** The first brace that is never closed: from its statement on nothing is certain. */
  private readonly unclosed: number;

  constructor(
    private readonly pieces: readonly Piece[],
    private readonly outline: Outline,
  ) {
    const open: number[] = [];
    for (const [index, piece] of pieces.entries()) {
      if (piece.comment) continue;
      if (piece.text === '{') open.push(index);
      else if (piece.text === '}' && open.length > 0) this.closeOf.set(open.pop()!, index);
    }
    this.unclosed = open[0] ?? Number.POSITIVE_INFINITY;
  }

  body(from: number, to: number, understood: boolean): Body {
    const items: Item[] = [];
    let pending: Piece[] = [];
    let item: Item | undefined;
    for (let index = from; index < to; index += 1) {
      const piece = this.pieces[index]!;
      if (piece.comment) {
        if (item && this.continues(index, to, understood)) this.extend(item, piece);
        else if (item && pending.length === 0 && piece.line === this.endLine(item)) item.trail.push(piece);
        else pending.push(piece);
        continue;
      }
      if (!item || this.begins(index, understood, item)) {
        if (this.reachesUnclosed(index, to)) return this.verbatim(items, pending, index, to);
        item = {
          lead: pending,
          head: [],
          trail: [],
          raw: !this.outline.starts.has(piece.start),
          sentence: this.outline.sentences.has(piece.start),
        };
        pending = [];
        items.push(item);
      } else if (this.outline.strays.has(piece.start)) item.raw = true;
      const close = piece.text === '{' ? this.closeOf.get(index) : undefined;
      if (close === undefined || item.block || item.head.length === 0) this.extend(item, piece);
      else {
        item.block = this.block(index, close);
        index = close;
      }
    }
    return { items, rest: pending };
  }

  private block(open: number, close: number): Block {
    const brace = this.pieces[open]!;
    const understood =
      this.outline.statementBlocks.has(brace.start) || this.outline.factBlocks.has(brace.start);
    const oneLine = brace.line === this.pieces[close]!.line;
    const afterOpen: Piece[] = [];
    let from = open + 1;
    for (let piece = this.pieces[from]; !oneLine && piece?.comment && piece.line === brace.line; ) {
      afterOpen.push(piece);
      from += 1;
      piece = piece.endLine === brace.line ? this.pieces[from] : undefined;
    }
    const body = this.body(from, close, understood);
    return { open: brace, close: this.pieces[close]!, afterOpen, raw: !understood, ...body };
  }

  /** A token behind a block, or a second block, has no place in the shape that is printed. */
  private extend(item: Item, piece: Piece): void {
    if (item.block) item.raw = true;
    item.head.push(...item.trail.splice(0), piece);
  }

  private begins(index: number, understood: boolean, item: Item): boolean {
    const piece = this.pieces[index]!;
    if (!understood || !this.outline.starts.has(piece.start)) return false;
    // A mistake keeps its line together: what it is told for depends on what stands beside it.
    const isStray = (one: Piece) => this.outline.strays.has(one.start);
    return piece.line > this.endLine(item) || !(isStray(piece) || item.head.some(isStray));
  }

  private continues(index: number, to: number, understood: boolean): boolean {
    let next = index;
    while (next < to && this.pieces[next]!.comment) next += 1;
    return next < to && !(understood && this.outline.starts.has(this.pieces[next]!.start));
  }

  private endLine(item: Item): number {
    return (item.trail.at(-1) ?? lastOf(item)).endLine;
  }

  private reachesUnclosed(index: number, to: number): boolean {
    if (this.unclosed >= to) return false;
    let next = index + 1;
    while (next < to && !(this.outline.starts.has(this.pieces[next]!.start) && next <= this.unclosed))
      next += 1;
    return next > this.unclosed;
  }

  private verbatim(items: Item[], lead: Piece[], from: number, to: number): Body {
    const head = this.pieces.slice(from, to);
    items.push({ lead, head: [...head], trail: [], raw: true, sentence: false });
    return { items, rest: [] };
  }
}

/** Leaves alone the innermost block or statement around a place that could not be read. */
function markBroken(body: Body, offset: number, outline: Outline): void {
  const item = body.items.find(one => offset >= firstOf(one).start && offset < lastOf(one).end);
  if (!item) return;
  const { block } = item;
  if (block && offset > block.open.start && offset < block.close.start) {
    const inner = block.items.find(one => offset >= firstOf(one).start && offset < lastOf(one).end);
    const deeper = inner?.block && offset > inner.block.open.start && offset < inner.block.close.start;
    if (outline.factBlocks.has(block.open.start) && !deeper) block.raw = true;
    else markBroken(block, offset, outline);
  } else item.raw = item.raw || isSyntax(item, offset, outline);
}

/** A header that lacks a value is still printed; one that the grammar does not know is not. */
function isSyntax(item: Item, offset: number, outline: Outline): boolean {
  return outline.strays.has(firstOf(item).start) || outline.syntax.has(offset);
}
