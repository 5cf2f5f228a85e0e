import { ENTRY_VOCABULARY, type EntryKind, leadOf, statementsIn } from '@tailshaft/vocabulary';
import * as ast from '../generated/ast.js';
import { atomsOf } from './atoms.js';
import type { BlockReading } from './block.js';
import { readFacts, startReading } from './block.js';
import {
  docBefore,
  headerOf,
  makeHost,
  placeOfNode,
  problem,
  propertyPlace,
  type ReadContext,
  repeatsStray,
  stray,
} from './context.js';
import { impossibleDates } from './dates.js';
import { unquoted } from './forms/words.js';
import type { Host, Place } from './place.js';
import { checkPractice } from './practice.js';
import type { Problem } from './problem.js';
import { readVessel, type VesselReading } from './vessel.js';

export interface ImportReading {
  readonly path: string;
  readonly place: Place;
}

/** A catalogue entry as written. */
export interface EntryReading {
  readonly kind: EntryKind;
  readonly name: string;
  readonly title?: string;
  readonly doc?: string | undefined;
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
  /** Those of statements that count nowhere; facts of an entry are never among them. */
  readonly strays: readonly Problem[];
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
    else stray(context, statement, statementsIn('file').map(leadOf), 'a file');
  }
  context.problems.push(...impossibleDates(document, text));
  const { problems } = context;
  return { uri, imports, entries, vessels, problems, strays: problems.filter(isStray) };
}

function isStray({ code }: Problem): boolean {
  return code === 'text/stray' || code === 'text/misplaced';
}

function readImport(context: ReadContext, statement: ast.Import, imports: ImportReading[]): void {
  const path = statement.path;
  if (path === undefined) {
    problem(
      context,
      statement.$cstNode,
      'text/value-missing',
      'State what to import: import "catalogue", a file or a folder beside this file.',
    );
    return;
  }
  const place = propertyPlace(context, statement, 'path');
  // As it is written: one backslash, as paths have it elsewhere, would be an escape in any other text.
  const quoted = context.text.slice(place.start, place.end);
  imports.push({ path: unquoted(quoted.replace(/\\+(?!")/g, '/')), place });
}

function readEntry(context: ReadContext, entry: ast.Entry, entries: EntryReading[]): void {
  // The parser joins the two words of a shaft material without the space between.
  const kind = (entry.kind.startsWith('shaft') ? 'shaft material' : entry.kind) as EntryKind;
  const vocabulary = ENTRY_VOCABULARY[kind];
  if (!vocabulary) return;
  const namePlace =
    entry.name === undefined ? placeOfNode(context, entry) : propertyPlace(context, entry, 'name');
  if (entry.name === undefined) {
    problem(
      context,
      headerOf(entry),
      'text/name-missing',
      `A catalogue ${kind} needs a name: ${kind} My-${kind.split(' ')[0]} { ... }.`,
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
      `Write the facts of ${kind} ${entry.name} in braces after its name: ${kind} ${entry.name} { ... }.`,
    );
  }
  if (kind === 'practice') checkPractice(context, facts);
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

function misplaced(context: ReadContext, node: ast.Misplaced): void {
  const closing = node.text === '}';
  if (!closing && repeatsStray(context, node)) return;
  problem(
    context,
    node.$cstNode,
    closing ? 'text/brace' : 'text/misplaced',
    closing
      ? 'This closing brace has no opening brace: remove it, or add the opening one above.'
      : `"${node.text}" belongs inside a vessel: vessel Name { ... }.`,
    node.text.length,
  );
}
