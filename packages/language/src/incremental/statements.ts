/** A stretch of a text that can be read by itself: a statement of the file with the comments above it. */
export interface Statement {
  readonly start: number;
  readonly end: number;
}

/** What can begin a statement in the first column, and can continue none. */
const OPENERS =
  /^(?:import|engine|motor|gear|transfer|coupling|propeller|vessel|shaft[ \t]+material)(?![\w.%'/-])/;

/** A number in inches, which opens no string; strings and comments, in which braces mean nothing, braces, and the beginnings of lines. */
const LOOK =
  /[\d\u00BC-\u00BE\u2150-\u215E]"(?![^\s}\])\u00D7,;])|"[^"\r\n]*"?|\/\/[^\r\n]*|\/\*[\s\S]*?\*\/|\/\*[^\r\n]*|[{}]|\n/g;

/**
 * Cuts a text where a new statement begins in the first column outside all braces. The stretches follow one another
 * without a gap. Nothing when braces do not match: then only the whole text tells what belongs to what.
 */
export function cutStatements(text: string): Statement[] | undefined {
  const cuts: number[] = [];
  let depth = 0;
  /** Where the comments above the next statement begin. */
  let above: number | undefined;
  const line = (start: number) => {
    if (depth !== 0) return;
    if (text.startsWith('//', start)) above ??= start;
    else {
      if (OPENERS.test(text.slice(start, start + 20))) cuts.push(above ?? start);
      above = undefined;
    }
  };
  line(0);
  LOOK.lastIndex = 0;
  for (let match = LOOK.exec(text); match; match = LOOK.exec(text)) {
    const found = match[0];
    if (found === '\n') line(match.index + 1);
    else if (found === '{') depth += 1;
    else if (found === '}') {
      depth -= 1;
      if (depth < 0) return undefined;
    }
  }
  if (depth !== 0) return undefined;
  if (cuts[0] !== 0) cuts.unshift(0);
  return cuts.map((start, index) => ({ start, end: cuts[index + 1] ?? text.length }));
}
