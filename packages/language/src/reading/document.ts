import { type AstNode, type CstNode, GrammarUtils } from 'langium';
import * as ast from '../generated/ast.js';
import { ENTRY_VOCABULARY } from '../vocabulary/index.js';
import { atomsOf } from './atoms.js';
import type { BlockReading } from './block.js';
import { readFacts, startReading } from './block.js';
import { Cursor } from './cursor.js';
import { closed, unquoted } from './forms/words.js';
import { nearest } from './misspelt.js';
import type { Host, Place } from './place.js';
import type { Problem } from './problem.js';
import { readVessel, type VesselReading } from './vessel.js';

export interface ImportReading {
  readonly path: string;
  readonly place: Place;
}

/** A catalogue entry as written. */
export interface EntryReading {
  readonly kind: string;
  readonly name: string;
  readonly title?: string;
  readonly doc?: string;
  readonly namePlace: Place;
  readonly host: Host;
  readonly whole: Place;
  readonly facts: BlockReading;
}

/** Everything that one file says, freed of the syntax tree: what stays in memory when the file is closed. */
export interface DocumentReading {
  readonly uri: string;
  readonly imports: readonly ImportReading[];
  readonly entries: readonly EntryReading[];
  readonly vessels: readonly VesselReading[];
  readonly problems: readonly Problem[];
}

/** What the readers of statements share. */
export interface ReadContext {
  readonly uri: string;
  readonly text: string;
  readonly problems: Problem[];
}

/** Reads a parsed file. Never throws: what cannot be read becomes a problem at its place. */
export function readDocument(document: ast.Document, uri: string, text: string): DocumentReading {
  const context: ReadContext = { uri, text, problems: [] };
  const imports: ImportReading[] = [];
  const entries: EntryReading[] = [];
  const vessels: VesselReading[] = [];
  for (const statement of document.statements) {
    if (ast.isImport(statement)) readImport(context, statement, imports);
    else if (ast.isEntry(statement)) readEntry(context, statement, entries);
    else if (ast.isVessel(statement)) {
      const vessel = readVessel(context, statement);
      if (vessel) vessels.push(vessel);
    } else if (ast.isMisplaced(statement)) misplaced(context, statement);
    else stray(context, statement, ['import', 'vessel', ...Object.keys(ENTRY_VOCABULARY)], 'a file');
  }
  return { uri, imports, entries, vessels, problems: context.problems };
}

function readImport(context: ReadContext, statement: ast.Import, imports: ImportReading[]): void {
  const path = statement.path;
  if (path === undefined) {
    problem(
      context,
      statement.$cstNode,
      'text/value-missing',
      'Say what to import: import "catalogue", a file or a folder beside this file.',
    );
    return;
  }
  imports.push({ path: unquoted(path), place: propertyPlace(context, statement, 'path') });
}

function readEntry(context: ReadContext, entry: ast.Entry, entries: EntryReading[]): void {
  const vocabulary = ENTRY_VOCABULARY[entry.kind.replace(/\s+/g, ' ')];
  const kind = entry.kind.replace(/\s+/g, ' ');
  if (!vocabulary) return;
  const namePlace =
    entry.name === undefined ? placeOfNode(context, entry) : propertyPlace(context, entry, 'name');
  if (entry.name === undefined) {
    problem(
      context,
      headerOf(entry),
      'text/name-missing',
      `A catalogue ${kind} needs a name to be called by: ${kind} My-${kind.split(' ')[0]} { ... }.`,
    );
  }
  const host = makeHost(context, entry, namePlace, vocabulary, entry.block);
  const facts = startReading(host);
  if (entry.block) readFacts(facts, atomsOf(entry.block).atoms);
  else if (entry.name !== undefined) {
    problem(
      context,
      headerOf(entry),
      'text/block-missing',
      `The facts of ${kind} ${entry.name} stand in braces behind its name: ${kind} ${entry.name} { ... }.`,
    );
  }
  context.problems.push(...facts.problems);
  const doc = docBefore(context, entry);
  entries.push({
    kind,
    name: entry.name ?? '',
    ...(entry.title ? { title: unquoted(entry.title) } : {}),
    ...(doc ? { doc } : {}),
    namePlace,
    host,
    whole: placeOfNode(context, entry),
    facts,
  });
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

/** What nothing in the grammar knows, with what was probably meant. */
export function stray(context: ReadContext, node: ast.Stray, known: readonly string[], where: string): void {
  const text = node.text;
  if (text === undefined) {
    problem(
      context,
      node.$cstNode,
      'text/stray',
      'This block belongs to nothing: write what it is in front of it.',
      1,
    );
    return;
  }
  const token = { start: node.$cstNode?.offset ?? 0, end: (node.$cstNode?.offset ?? 0) + text.length, text };
  if (text.startsWith('"')) {
    closed(new Cursor([], context.uri, () => false), token);
  }
  const meant = nearest(text, known);
  context.problems.push({
    code: 'text/stray',
    start: token.start,
    end: token.end,
    severity: 'error',
    message: `"${text}" means nothing here.${meant ? ` Did you mean "${meant}"?` : ` In ${where} stand: ${known.slice(0, 12).join(', ')}.`}`,
    ...(meant ? { choices: [{ title: `Write ${meant}`, text: meant }] } : {}),
  });
}

function misplaced(context: ReadContext, node: ast.Misplaced): void {
  const closing = node.text === '}';
  problem(
    context,
    node.$cstNode,
    closing ? 'text/brace' : 'text/misplaced',
    closing
      ? 'This closing brace closes nothing: remove it, or look for an opening one that is missing above.'
      : `"${node.text}" belongs inside a vessel: vessel Name { ... }.`,
    node.text.length,
  );
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
function headerOf(node: AstNode): CstNode | undefined {
  return (
    GrammarUtils.findNodeForProperty(node.$cstNode, 'name') ??
    GrammarUtils.findNodeForProperty(node.$cstNode, 'kind') ??
    node.$cstNode
  );
}

/** The `///` lines right above a statement. */
export function docBefore(context: ReadContext, node: AstNode): string | undefined {
  const doc: string[] = [];
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
