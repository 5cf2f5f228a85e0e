import type { Origin } from '@tailshaft/mechanics';
import type { Context } from '../../judge/context.js';
import { isAsFound } from '../../model/as-found.js';
import type { ShaftLine } from '../../model/vessel.js';

/**
 * One declared thing and every line that stands on it: it is judged once, however many lines share it. Lines as found are
 * told apart: what is wrong there is a fact of the vessel, and what is kept of it is built again.
 */
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
  const [found, proposed] = [new Map<Origin, MutableUse<T>>(), new Map<Origin, MutableUse<T>>()];
  for (const arrangement of vessel.arrangements) {
    const uses = isAsFound(arrangement, vessel) ? found : proposed;
    for (const line of arrangement.lines) {
      for (const { of, at } of pick(line)) {
        const had = uses.get(at);
        if (!had) uses.set(at, { of, line, lines: [line] });
        else if (!had.lines.includes(line)) had.lines.push(line);
      }
    }
  }
  return [...found.values(), ...proposed.values()];
}

interface MutableUse<T> extends Use<T> {
  readonly lines: ShaftLine[];
}

/** Verdicts of these rules on these lines, to be folded under the one that causes them. */
export function foldOn(lines: readonly ShaftLine[], ...rules: string[]) {
  return lines.flatMap(line => rules.map(rule => ({ rule, subject: line.path })));
}
