import { hostOf, type Place, placeOf } from '../reading/place.js';
import { lineBreakOf } from '../text/tokens.js';
import { indentAt, startOfLine } from './layout.js';
import { statementLike } from './like-another.js';
import { removal } from './removal.js';
import type { SpelledEdit } from './spelled.js';
import type { TextEdit } from './text-edit.js';

type TextOf = (uri: string) => string;
type Anew = SpelledEdit & { do: 'state' | 'fit anew' };

/**
 * One statement may keep several parts. Where each of them is replaced, nothing is left for it to keep: the new statements
 * stand in its place, or where the part before stood in the line. What is left of the edits is written one by one.
 */
export function allAnew(
  edits: readonly SpelledEdit[],
  textOf: TextOf,
): { readonly made: readonly TextEdit[]; readonly left: readonly SpelledEdit[] } {
  const groups = new Map<string, Anew[]>();
  for (const edit of edits) {
    if (edit.do !== 'fit anew' && !(edit.do === 'state' && !edit.keeps)) continue;
    const { uri, start } = placeOf(edit.at);
    const key = `${uri} ${start}`;
    groups.set(key, [...(groups.get(key) ?? []), edit]);
  }
  const done = new Set<SpelledEdit>();
  const made: TextEdit[] = [];
  for (const group of groups.values()) {
    const written = group.length > 1 && isEach(group) ? writtenAnew(group, textOf) : undefined;
    if (!written) continue;
    made.push(...written);
    for (const one of group) done.add(one);
  }
  return { made, left: edits.filter(one => !done.has(one)) };
}

const keptAt = (edit: Anew) => hostOf(edit.at)?.keeps;

function isEach(group: readonly Anew[]): boolean {
  const own = new Set(group.map(one => keptAt(one)?.own));
  return own.size === group.length && keptAt(group[0]!)?.names.length === group.length;
}

function writtenAnew(group: readonly Anew[], textOf: TextOf): TextEdit[] | undefined {
  const at = placeOf(group[0]!.at);
  const text = textOf(at.uri);
  const alone = text.slice(startOfLine(text, at.start), at.start).trim() === '';
  const between = alone ? lineBreakOf(text) + indentAt(text, at.start) : '  ';
  const here: string[] = [];
  const moved: TextEdit[] = [];
  for (const edit of group) {
    const words = wordsOf(edit, textOf);
    if (words === undefined) return undefined;
    const behind = keptAt(edit)?.behind;
    if (!behind) here.push(words);
    else moved.push(after(behind, between + words));
  }
  const first =
    here.length > 0
      ? [{ uri: at.uri, start: at.start, end: at.end, text: here.join(between) }]
      : removal(at, textOf);
  return first && [...first, ...moved];
}

function after(place: Place, text: string): TextEdit {
  const end = Math.max(place.end, hostOf(place)?.block?.end ?? 0);
  return { uri: place.uri, start: end, end, text };
}

function wordsOf(edit: Anew, textOf: TextOf): string | undefined {
  if (edit.do === 'fit anew') return statementLike(placeOf(edit.like), edit.changes, textOf);
  return edit.facts.length > 0 ? `${edit.header} { ${edit.facts.join('  ')} }` : edit.header;
}
