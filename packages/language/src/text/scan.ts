import { TailshaftTerminals } from '../generated/ast.js';

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

const { WS, COMMENT_LINE, COMMENT_BLOCK, MARK, ...TOKENS } = TailshaftTerminals;

/** What the terminals of the grammar are to an editor; the rest of them are numbers. */
const KIND: Readonly<Record<string, Token['kind']>> = {
  WORD: 'word',
  STRING: 'string',
  OPEN_STRING: 'string',
};

/** The terminals in the order of the grammar, in one expression. A comment that is not closed yet goes to the end. */
const TOKEN = new RegExp(
  [
    `(?<space>${WS.source})`,
    `(?<comment>${COMMENT_LINE.source}|${COMMENT_BLOCK.source}|\\/\\*[\\s\\S]*$)`,
    ...Object.entries(TOKENS).map(([name, { source }]) => `(?<${name}>${source})`),
    '(?<open>\\{)|(?<close>\\})|(?<evidence>\\[)|(?<evidenceEnd>\\])',
    `(?<mark>${MARK.source}|[\\uD800-\\uDBFF][\\uDC00-\\uDFFF]|[\\s\\S])`,
  ].join('|'),
  'y',
);

const KINDS: readonly (readonly [group: string, kind: Token['kind']])[] = [
  ...Object.keys(TOKENS).map(name => [name, KIND[name] ?? 'number'] as const),
  ['open', 'open'],
  ['close', 'close'],
  ['comment', 'comment'],
  ['evidence', 'mark open'],
  ['evidenceEnd', 'mark close'],
];

/** The tokens of a text, or of its beginning. Never fails: what fits nowhere is a mark. */
export function scan(text: string, end = text.length): Token[] {
  const tokens: Token[] = [];
  let line = 0;
  TOKEN.lastIndex = 0;
  for (let match = TOKEN.exec(text); match && match.index < end; match = TOKEN.exec(text)) {
    const groups = match.groups!;
    const breaks = () => match[0].split('\n').length - 1;
    if (groups.space !== undefined) {
      line += breaks();
      continue;
    }
    const cut = match[0].slice(0, end - match.index);
    tokens.push({ kind: kindOf(groups), text: cut, start: match.index, end: match.index + cut.length, line });
    if (groups.comment !== undefined) line += breaks();
  }
  return tokens;
}

function kindOf(groups: Readonly<Record<string, string | undefined>>): Token['kind'] {
  return KINDS.find(([group]) => groups[group] !== undefined)?.[1] ?? 'mark';
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
