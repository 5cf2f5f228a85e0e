import type { Child, Markup, MarkupNode } from '../document/markup.js';
import type { Palette } from '../palette.js';
import { inkOf } from './ink.js';

/** Turned by `turn` degrees, then moved: what drawings know of transformations. */
export interface Placing {
  readonly x: number;
  readonly y: number;
  readonly turn: number;
}

export type Look = ReturnType<typeof inkOf>;

/** One thing that is drawn, in the units of the drawing, y downwards. */
export type Shape = { readonly look: Look; readonly placing: Placing } & (
  | { readonly shape: 'path'; readonly d: string }
  | {
      readonly shape: 'line';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
    }
  | {
      readonly shape: 'box';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    }
  | {
      readonly shape: 'ellipse';
      readonly cx: number;
      readonly cy: number;
      readonly rx: number;
      readonly ry: number;
    }
  | {
      readonly shape: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly anchor: 'start' | 'middle' | 'end';
    }
);

/** A drawing taken apart, for files that are no HTML. */
export interface Shapes {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly description: string;
  readonly shapes: readonly Shape[];
}

export function shapesOf(drawing: Markup, palette: Palette): Shapes {
  const root = drawing.node!;
  const words = (name: string) =>
    childNodes(root)
      .filter(one => one.name === name)
      .map(textIn)
      .join(' ');
  const shapes: Shape[] = [];
  walk(root, { x: 0, y: 0, turn: 0 }, palette, shapes);
  return {
    width: Number(root.attributes.width),
    height: Number(root.attributes.height),
    title: words('title'),
    description: words('desc'),
    shapes,
  };
}

function walk(node: MarkupNode, within: Placing, palette: Palette, shapes: Shape[]): void {
  const { name, attributes } = node;
  const placing = placedIn(within, attributes.transform);
  const of = (key: string) => Number(attributes[key] ?? 0);
  const classes = attributes.class === undefined ? undefined : String(attributes.class);
  const usual = name === 'text' ? palette.ink : name === 'line' ? undefined : BLACK;
  const look = inkOf(classes, palette, usual);
  const base = { look, placing };
  switch (name) {
    case 'title':
    case 'desc':
      return;
    case 'path':
      shapes.push({ ...base, shape: 'path', d: String(attributes.d ?? '') });
      return;
    case 'line':
      shapes.push({ ...base, shape: 'line', x1: of('x1'), y1: of('y1'), x2: of('x2'), y2: of('y2') });
      return;
    case 'rect':
      shapes.push({
        ...base,
        shape: 'box',
        x: of('x'),
        y: of('y'),
        width: of('width'),
        height: of('height'),
      });
      return;
    case 'circle':
      shapes.push({ ...base, shape: 'ellipse', cx: of('cx'), cy: of('cy'), rx: of('r'), ry: of('r') });
      return;
    case 'ellipse':
      shapes.push({ ...base, shape: 'ellipse', cx: of('cx'), cy: of('cy'), rx: of('rx'), ry: of('ry') });
      return;
    case 'text': {
      const anchor = attributes['text-anchor'];
      shapes.push({
        ...base,
        shape: 'text',
        x: of('x'),
        y: of('y'),
        text: textIn(node),
        anchor: anchor === 'middle' || anchor === 'end' ? anchor : 'start',
      });
      return;
    }
    default:
      for (const child of childNodes(node)) walk(child, placing, palette, shapes);
  }
}

/** What SVG fills a shape with when nothing is said. */
const BLACK = '#000000';

/** `translate(10 20) rotate(30)`: all that drawings use. */
function placedIn(within: Placing, transform: string | number | undefined): Placing {
  if (transform === undefined) return within;
  const [, x = '0', y = '0'] = /translate\((-?[\d.]+)[ ,]+(-?[\d.]+)\)/.exec(String(transform)) ?? [];
  const [, turn = '0'] = /rotate\((-?[\d.]+)\)/.exec(String(transform)) ?? [];
  return { x: within.x + Number(x), y: within.y + Number(y), turn: within.turn + Number(turn) };
}

function childNodes({ children }: MarkupNode): MarkupNode[] {
  const nodes = (child: Child): MarkupNode[] => {
    if (isMarkup(child))
      return !child.node ? [] : child.node.name === '' ? child.node.children.flatMap(nodes) : [child.node];
    return Array.isArray(child) ? child.flatMap(nodes) : [];
  };
  return children.flatMap(nodes);
}

function textIn({ children }: MarkupNode): string {
  const words = (child: Child): string => {
    if (child === undefined) return '';
    if (isMarkup(child)) return child.node ? textIn(child.node) : '';
    return typeof child === 'string' || typeof child === 'number' ? String(child) : child.map(words).join('');
  };
  return children.map(words).join('');
}

/** By what it holds: a bundle that draws may have been handed the finished drawings of another one. */
function isMarkup(child: Child): child is Markup {
  return typeof child === 'object' && 'source' in child;
}
