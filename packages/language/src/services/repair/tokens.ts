import { type Spelling, statementsOf } from '@tailshaft/vocabulary';
import type { LexerResult } from 'langium';
import { DEPTH_OF } from '../../text/depth.js';

export type Token = LexerResult['tokens'][number];
type LexerError = LexerResult['errors'][number];

export interface Repaired {
  readonly tokens: readonly Token[];
  readonly errors: readonly LexerError[];
}

/** Makes a token that the text does not have, before or behind one that it has. */
export type Insert = (image: string, at: Token, before: boolean) => Token;

/** Mends one kind of mistake; nothing when there is none. */
export type Repair = (tokens: readonly Token[], insert: Insert) => Repaired | undefined;

export function errorAt(token: Token, message: string): LexerError {
  return {
    offset: token.startOffset,
    line: token.startLine,
    column: token.startColumn,
    length: token.image.length,
    message,
  };
}

/** Opening braces less closing ones. */
export function balanceOf(tokens: readonly Token[]): number {
  let balance = 0;
  for (const { image } of tokens) {
    if (image === '{') balance += 1;
    else if (image === '}') balance -= 1;
  }
  return balance;
}

/** Keywords that, at the start of a line, can only stand at this depth of braces; others of a vessel are property words too. */
const DEPTH: Readonly<Record<string, number>> = {
  ...DEPTH_OF,
  criteria: 1,
  require: 1,
  accept: 1,
  revision: 1,
} satisfies Partial<Record<Spelling, number>>;
const ENTRIES = new Set(statementsOf('file').filter(word => !(word in DEPTH)));
/** What holds statements in braces. */
const HOLDERS: ReadonlySet<string> = new Set<Spelling>(['vessel', 'arrangement', 'shaftline']);

/** The depth that the line beginning with this token must have, where its first word decides it. */
export function depthOf(tokens: readonly Token[], at: number): number | undefined {
  const token = tokens[at]!;
  const known = DEPTH[token.image];
  if (known !== undefined) return known;
  if (token.startColumn !== 1 || !ENTRIES.has(token.image)) return undefined;
  // `shaft material Name {` in the first column, not a fact that begins with such a word.
  return lineOf(tokens, at).some(one => one.image === '{') ? 0 : undefined;
}

/** The tokens of one line from this one on. */
export function lineOf(tokens: readonly Token[], at: number): Token[] {
  const line: Token[] = [];
  for (let index = at; tokens[index]?.startLine === tokens[at]!.startLine; index++) line.push(tokens[index]!);
  return line;
}

/** Whether this token begins a line that opens a block, were its brace there. */
export function opensBlock(token: Token): boolean {
  if (HOLDERS.has(token.image)) return true;
  return token.startColumn === 1 && ENTRIES.has(token.image);
}

export function isFirst(tokens: readonly Token[], at: number): boolean {
  return tokens[at - 1]?.startLine !== tokens[at]!.startLine;
}
