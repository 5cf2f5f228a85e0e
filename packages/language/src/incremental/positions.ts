/** Anything that remembers where it stands. */
export interface Positioned {
  start: number;
  end: number;
  headEnd?: number;
}

/** Constants of the language hang on readings too; they stand nowhere in the text. */
const CONSTANT = new Set(['vocabulary', 'row']);

/**
 * Everything below some roots that remembers where in this stretch of a file it stands, each once. What stands
 * elsewhere, as the catalogue entry that a part names, is not followed: it belongs to its own stretch.
 */
export function positionedIn(
  roots: readonly unknown[],
  uri: string,
  within: { readonly start: number; readonly end: number },
): Positioned[] {
  const found: Positioned[] = [];
  const seen = new Set<object>();
  const waiting: unknown[] = [...roots];
  while (waiting.length > 0) {
    const one = waiting.pop();
    if (typeof one !== 'object' || one === null || seen.has(one)) continue;
    seen.add(one);
    if (Array.isArray(one)) {
      for (const element of one) waiting.push(element);
      continue;
    }
    const place = one as Partial<Positioned> & { readonly uri?: string };
    if (typeof place.start === 'number' && typeof place.end === 'number') {
      const elsewhere =
        place.uri !== undefined &&
        (place.uri !== uri || place.start < within.start || place.start > within.end);
      if (elsewhere) continue;
      found.push(place as Positioned);
    }
    for (const key in one) if (!CONSTANT.has(key)) waiting.push((one as Record<string, unknown>)[key]);
  }
  return found;
}

/** Says that everything stands so much further on. */
export function move(all: readonly Positioned[], by: number): void {
  for (const one of all) {
    one.start += by;
    one.end += by;
    if (one.headEnd !== undefined) one.headEnd += by;
  }
}
