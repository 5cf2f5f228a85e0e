import { idFrom } from '../document/blocks.js';
import { type Child, element, type Markup } from '../document/markup.js';

/** A drawing with its title and description, which readers of the page hear in its place. */
export function drawing(
  name: string,
  width: number,
  height: number,
  title: string,
  description: string,
  ...children: readonly Child[]
): Markup {
  const id = idFrom(name);
  return element(
    'svg',
    {
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
    },
    element('title', { id: `${id}-title` }, title),
    element('desc', { id: `${id}-desc` }, description),
    ...children,
  );
}

export function label(x: number, y: number, text: string, kind = 'label', anchor = 'middle'): Markup {
  return element('text', { x, y, class: kind, 'text-anchor': anchor }, text);
}

export function path(d: string, kind: string): Markup {
  return element('path', { d, class: kind });
}

export function lineFrom(x1: number, y1: number, x2: number, y2: number, kind: string): Markup {
  return element('line', { x1, y1, x2, y2, class: kind });
}

export function box(x: number, y: number, width: number, height: number, kind: string): Markup {
  return element('rect', { x, y, width, height, class: kind });
}

/** The tip of an arrow at (x, y) that points the way of the angle, in degrees; 0 points right, 90 down. */
export function arrowTip(x: number, y: number, angle: number, size: number, kind: string): Markup {
  return element('path', {
    d: `M0 0L${-size} ${size * 0.5}L${-size} ${-size * 0.5}Z`,
    transform: `translate(${round(x)} ${round(y)}) rotate(${round(angle)})`,
    class: kind,
  });
}

function round(number: number): number {
  return Number(number.toFixed(2));
}
