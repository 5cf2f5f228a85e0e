/** Other words in the place of a stretch of a text. Offsets are UTF-16 code units. */
export interface Replacement {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** A replacement in one file. */
export interface TextEdit extends Replacement {
  readonly uri: string;
}

/** The text after the edits; they may come in any order, and must not overlap. */
export function applyEdits(text: string, edits: readonly Replacement[]): string {
  let result = '';
  let at = 0;
  for (const edit of inOrder(edits)) {
    result += text.slice(at, edit.start) + edit.text;
    at = Math.max(at, edit.end);
  }
  return result + text.slice(at);
}

/**
 * The edits in the order of the text, the same one said twice said once, additions at one place joined; undefined
 * when two of them want different things of the same words.
 */
export function merged(edits: readonly TextEdit[]): TextEdit[] | undefined {
  const result: TextEdit[] = [];
  for (const edit of [...edits].sort((a, b) => (a.uri < b.uri ? -1 : a.uri > b.uri ? 1 : order(a, b)))) {
    const last = result.at(-1);
    if (!last || last.uri !== edit.uri || last.end < edit.start) result.push(edit);
    else if (last.start === edit.start && last.end === edit.end) {
      if (last.text === edit.text) continue;
      if (last.start !== last.end) return undefined;
      result[result.length - 1] = { ...last, text: last.text + edit.text };
    } else if (last.end === edit.start) result.push(edit);
    else return undefined;
  }
  return result;
}

function inOrder<E extends Replacement>(edits: readonly E[]): E[] {
  return [...edits].sort(order);
}

function order(a: Replacement, b: Replacement): number {
  return a.start - b.start || a.end - b.end;
}
