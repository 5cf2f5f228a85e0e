import { capital } from '@tailshaft/mechanics';
import { type AstNode, type CstNode, GrammarUtils } from 'langium';
import type * as ast from '../generated/ast.js';
import { Cursor } from './cursor.js';
import { closed } from './forms/words.js';
import { nearest } from './misspelt.js';
import type { Host, Place } from './place.js';
import type { Problem } from './problem.js';

/** What the readers of statements share. */
export interface ReadContext {
  readonly uri: string;
  readonly text: string;
  readonly problems: Problem[];
  /** Where the last words that meant nothing ended: what stands behind them on their line is part of one mistake. */
  strayLine?: number;
}

/** A host for the facts of a statement: the header is underlined by findings, the block takes new facts. */
export function makeHost(
  context: ReadContext,
  node: AstNode,
  header: Place,
  vocabulary: Host['vocabulary'],
  block: ast.FactBlock | undefined,
): Host {
  const cst = block?.$cstNode;
  const start = node.$cstNode?.offset ?? header.start;
  const headEnd = cst ? lastBefore(context.text, cst.offset) : (node.$cstNode?.end ?? header.end);
  return {
    uri: context.uri,
    start,
    end: Math.max(headEnd, start),
    headEnd,
    vocabulary,
    ...(cst ? { block: { start: cst.offset, end: cst.end } } : {}),
  };
}

/** Whether a mistake on this line is told already. */
export function repeatsStray(context: ReadContext, node: AstNode): boolean {
  const range = node.$cstNode?.range;
  const repeated = range !== undefined && range.start.line === context.strayLine;
  if (range) context.strayLine = range.end.line;
  return repeated;
}

/** What nothing in the grammar knows, with what was probably meant. */
export function stray(
  context: ReadContext,
  node: ast.Stray,
  known: readonly string[],
  where: string,
  /** Words of a clause that may have been meant, though no statement begins with them. */
  clauses: readonly string[] = [],
): void {
  const text = node.text;
  if (repeatsStray(context, node)) return;
  if (text === undefined) {
    problem(
      context,
      node.$cstNode,
      'text/stray',
      'This block belongs to no statement: write its kind before it.',
      1,
    );
    return;
  }
  const token = { start: node.$cstNode?.offset ?? 0, end: (node.$cstNode?.offset ?? 0) + text.length, text };
  if (text.startsWith('"')) {
    closed(new Cursor([], context.uri, () => false), token);
  }
  const meant = nearest(text, [...known, ...clauses]);
  context.problems.push({
    code: 'text/stray',
    start: token.start,
    end: token.end,
    severity: 'error',
    message: meant
      ? `Unknown statement "${text}". Did you mean "${meant}"?`
      : `Unknown statement "${text}". ${capital(where)} may contain: ${known.slice(0, 12).join(', ')}.`,
    ...(meant ? { choices: [{ title: `Write ${meant}`, text: meant }] } : {}),
  });
}

export function problem(
  context: ReadContext,
  cst: CstNode | undefined,
  code: string,
  message: string,
  length?: number,
): void {
  const start = cst?.offset ?? 0;
  context.problems.push({
    code,
    start,
    end: length === undefined ? (cst?.end ?? start) : start + length,
    severity: 'error',
    message,
  });
}

export function placeOfNode(context: ReadContext, node: AstNode): Place {
  return { uri: context.uri, start: node.$cstNode?.offset ?? 0, end: node.$cstNode?.end ?? 0 };
}

/** Place of one property of a node; the node's own when it is not there. */
export function propertyPlace(context: ReadContext, node: AstNode, property: string): Place {
  const cst = GrammarUtils.findNodeForProperty(node.$cstNode, property);
  return cst ? { uri: context.uri, start: cst.offset, end: cst.end } : placeOfNode(context, node);
}

/** The first line of a statement. */
export function headerOf(node: AstNode): CstNode | undefined {
  return (
    GrammarUtils.findNodeForProperty(node.$cstNode, 'name') ??
    GrammarUtils.findNodeForProperty(node.$cstNode, 'kind') ??
    node.$cstNode
  );
}

/** The `///` lines right above a statement. */
export function docBefore(context: ReadContext, node: AstNode): string | undefined {
  const doc: string[] = [];
  const lineStart = context.text.lastIndexOf('\n', (node.$cstNode?.offset ?? 0) - 1) + 1;
  if (context.text.slice(lineStart, node.$cstNode?.offset ?? 0).trim() !== '') return undefined;
  let end = context.text.lastIndexOf('\n', (node.$cstNode?.offset ?? 0) - 1);
  while (end > 0) {
    const start = context.text.lastIndexOf('\n', end - 1) + 1;
    const match = /^\s*\/\/\/ ?(.*?)\r?$/.exec(context.text.slice(start, end));
    if (!match) break;
    doc.unshift(match[1]!);
    end = start - 1;
  }
  return doc.length > 0 ? doc.join('\n') : undefined;
}

function lastBefore(text: string, offset: number): number {
  let end = offset;
  while (end > 0 && /\s/.test(text[end - 1]!)) end -= 1;
  return end;
}
