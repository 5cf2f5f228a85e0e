import type { Origin } from '@tailshaft/mechanics';
import type { Context } from '../../judge/context.js';
import type { ShaftLine } from '../../model/vessel.js';

/** One declared thing and every line that stands on it: it is judged once, however many lines share it. */
export interface Use<T> {
  readonly of: T;
  /** The line that it is reported on. */
  readonly line: ShaftLine;
  readonly lines: readonly ShaftLine[];
}

/** Groups what the lines of a vessel pick by its place in the text. */
export function usesOf<T>(
  vessel: Context['vessel'],
  pick: (line: ShaftLine) => readonly { readonly of: T; readonly at: Origin }[],
): Use<T>[] {
  const uses = new Map<Origin, { of: T; line: ShaftLine; lines: ShaftLine[] }>();
  for (const { lines } of vessel.arrangements) {
    for (const line of lines) {
      for (const { of, at } of pick(line)) {
        const had = uses.get(at);
        if (!had) uses.set(at, { of, line, lines: [line] });
        else if (!had.lines.includes(line)) had.lines.push(line);
      }
    }
  }
  return [...uses.values()];
}

/** Verdicts of these rules on these lines, to be folded under the one that causes them. */
export function foldOn(lines: readonly ShaftLine[], ...rules: string[]) {
  return lines.flatMap(line => rules.map(rule => ({ rule, subject: line.path })));
}
