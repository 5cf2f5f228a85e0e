/** A token of the text as an editor sees it, whether or not the text can be read yet. */
export interface Token {
  readonly kind:
    | 'word'
    | 'number'
    | 'string'
    | 'comment'
    | 'mark'
    | 'open'
    | 'close'
    | 'mark open'
    | 'mark close';
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly line: number;
}

const LETTER = "A-Za-z_%'\\u00B0\\u00B5\\u00C0-\\u00D6\\u00D8-\\u00F6\\u00F8-\\u1FFF\\u2126\\u3040-\\uD7FF";
const TOKEN = new RegExp(
  [
    '(?<comment>\\/\\/[^\\r\\n]*|\\/\\*[\\s\\S]*?(?:\\*\\/|$))',
    '(?<string>"[^"\\r\\n]*"?)',
    '(?<number>\\d{4}-\\d{2}-\\d{2}(?![\\d\\w])|\\d+(?:\\.\\d+)?:\\d+(?:\\.\\d+)?|\\d+-\\d+\\/\\d+|\\d+\\/\\d+|[+-]?\\d+(?:\\.\\d+)?)',
    `(?<word>[${LETTER}](?:[${LETTER}0-9\\u00B2\\u00B3\\u00B7]|[-./](?=[${LETTER}0-9]))*)`,
    '(?<open>\\{)|(?<close>\\})|(?<evidence>\\[)|(?<evidenceEnd>\\])',
    '(?<mark>\\.\\.|\\S)',
    '(?<newline>\\n)',
  ].join('|'),
  'gu',
);

/** The tokens of a text, or of its beginning. Never fails: what fits nowhere is a mark. */
export function scan(text: string, end = text.length): Token[] {
  const tokens: Token[] = [];
  let line = 0;
  TOKEN.lastIndex = 0;
  for (let match = TOKEN.exec(text); match && match.index < end; match = TOKEN.exec(text)) {
    const groups = match.groups!;
    if (groups.newline !== undefined) {
      line += 1;
      continue;
    }
    const cut = match[0].slice(0, end - match.index);
    tokens.push({ kind: kindOf(groups), text: cut, start: match.index, end: match.index + cut.length, line });
    if (groups.comment !== undefined) line += cut.split('\n').length - 1;
  }
  return tokens;
}

function kindOf(groups: Record<string, string | undefined>): Token['kind'] {
  if (groups.word !== undefined) return 'word';
  if (groups.number !== undefined) return 'number';
  if (groups.open !== undefined) return 'open';
  if (groups.close !== undefined) return 'close';
  if (groups.string !== undefined) return 'string';
  if (groups.comment !== undefined) return 'comment';
  if (groups.evidence !== undefined) return 'mark open';
  return groups.evidenceEnd !== undefined ? 'mark close' : 'mark';
}

/** The token at an offset, or right before it. */
export function tokenAt(tokens: readonly Token[], offset: number): Token | undefined {
  const inside = tokens.find(one => offset >= one.start && offset < one.end);
  return inside ?? tokens.find(one => one.end === offset && one.kind !== 'open' && one.kind !== 'close');
}

/** A block in braces: from the first word of its statement to behind its closing brace. */
export interface Braces {
  readonly header: number;
  readonly open: number;
  readonly close: number;
  readonly openLine: number;
  readonly closeLine: number;
}

/** All blocks, outer ones before inner ones. A block that is not closed ends with the text. */
export function bracesOf(tokens: readonly Token[]): Braces[] {
  const found: Braces[] = [];
  const waiting: { header: number; open: Token; place: number }[] = [];
  let statement: Token | undefined;
  const last = tokens.at(-1);
  const finish = (one: { header: number; open: Token; place: number }, close: Token) => {
    found[one.place] = {
      header: one.header,
      open: one.open.start,
      close: close.end,
      openLine: one.open.line,
      closeLine: close.line,
    };
  };
  for (const token of tokens) {
    if (token.kind === 'comment') continue;
    if (token.kind === 'open') {
      waiting.push({ header: statement?.start ?? token.start, open: token, place: found.length });
      found.length += 1;
      statement = undefined;
    } else if (token.kind === 'close') {
      const one = waiting.pop();
      if (one) finish(one, token);
      statement = undefined;
    } else if (!statement || statement.line !== token.line) statement = token;
  }
  for (const one of waiting) if (last) finish(one, last);
  return found;
}
