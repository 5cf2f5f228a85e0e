/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import type { Spot } from '../sheet/messages.js';

type Point = readonly [line: number, character: number];

/** Marks what the cursor in the text stands in: the innermost things, wherever the sheet shows them. */
export function markCursor(sheet: HTMLElement, spot: Spot): void {
  const found: { element: Element; size: Point }[] = [];
  for (const element of sheet.querySelectorAll<HTMLElement | SVGElement>('[data-place]')) {
    element.classList.remove('at-cursor');
    element.removeAttribute('aria-current');
    for (const place of [element.dataset.place, element.dataset.entry]) {
      const size = place === undefined ? undefined : sizeAround(place, spot);
      if (size) found.push({ element, size });
    }
  }
  const least = found.map(one => one.size).sort(compare)[0];
  if (!least) return;
  const marked = found.filter(
    one => compare(one.size, least) === 0 || one.element.classList.contains('followed'),
  );
  const parts = smallest(marked.filter(one => one.element.classList.contains('followed')));
  for (const { element } of new Set([
    ...marked.filter(one => !one.element.classList.contains('followed')),
    ...parts,
  ])) {
    element.classList.add('at-cursor');
    element.setAttribute('aria-current', 'true');
  }
}

function smallest<T extends { readonly size: Point }>(all: readonly T[]): T[] {
  const least = all.map(one => one.size).sort(compare)[0];
  return least ? all.filter(one => compare(one.size, least) === 0) : [];
}

/** How large a place is that holds the cursor; nothing when it does not. */
function sizeAround(place: string, { uri, line, character }: Spot): Point | undefined {
  const at = place.indexOf('@');
  if (place.slice(at + 1) !== uri) return undefined;
  const [startLine, startCharacter, , , endLine, endCharacter] = place
    .slice(0, at)
    .split(',')
    .map(Number) as [number, number, number, number, number, number];
  const here: Point = [line, character];
  if (compare(here, [startLine, startCharacter]) < 0 || compare(here, [endLine, endCharacter]) > 0)
    return undefined;
  return [endLine - startLine, endLine === startLine ? endCharacter - startCharacter : endCharacter];
}

function compare(one: Point, other: Point): number {
  return one[0] - other[0] || one[1] - other[1];
}
