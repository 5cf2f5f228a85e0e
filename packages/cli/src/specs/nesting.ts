/** A spec nests five levels or so. Far deeper ones are mistakes or attacks, and cost the parser the square of their depth. */
export const DEEPEST = 100;

/** The line on which blocks open deeper than that; undefined where they never do. Strings and comments do not count. */
export function lineOfTooDeep(text: string): number | undefined {
  let depth = 0;
  let line = 1;
  for (const [piece] of text.matchAll(PIECES)) {
    if (piece === '{') depth += 1;
    else if (piece === '}') depth = Math.max(0, depth - 1);
    else line += piece.split('\n').length - 1;
    if (depth > DEEPEST) return line;
  }
  return undefined;
}

const PIECES = /\/\/[^\n]*|\/\*[\s\S]*?\*\/|"[^"\r\n]*"?|[{}\n]/g;
