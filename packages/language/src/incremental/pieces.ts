import type { ParseResult } from 'langium';
import type { Document } from '../generated/ast.js';
import { syntaxProblems } from '../project/syntax.js';
import { type DocumentReading, type EntryReading, readDocument } from '../reading/document.js';
import type { Problem } from '../reading/problem.js';
import { move, type Positioned, positionedIn } from './positions.js';
import { cutStatements } from './statements.js';
import { type EntryHead, headOfWholeEntry, unreadEntry } from './unread-entry.js';

/** A statement as it was read, at the place where it stands now. */
interface Piece {
  readonly text: string;
  readonly reading: DocumentReading;
  readonly syntax: readonly Problem[];
  start: number;
  /** Where to look for what moves with it. */
  readonly parts: () => readonly unknown[];
  /** What moves with it, found when it first moves. */
  placed?: Positioned[];
  /** What was made of it when `placed` was found. */
  made?: readonly unknown[];
}

/** A whole file, read statement by statement. */
export interface ReadFile {
  readonly reading: DocumentReading;
  readonly syntax: readonly Problem[];
  /** Those of the last text that could be read so, when this one could only be read as a whole. */
  readonly pieces?: readonly Piece[];
}

/** What was made of a reading elsewhere and has places of its own in the same stretch. */
export type MadeOf = (reading: DocumentReading) => readonly unknown[];

/**
 * Reads a file, taking over every statement that the reading before it had too. Those keep their identity, so that
 * whatever was worked out of them stays true; they only move. Reading afresh gives the same.
 */
export function readInPieces(
  text: string,
  uri: string,
  parse: (text: string) => ParseResult,
  before: ReadFile | undefined,
  madeOf: MadeOf,
): ReadFile {
  const statements = cutStatements(text);
  if (!statements) return readWhole(text, uri, parse, before);
  const old = new Map<string, Piece[]>();
  for (const piece of before?.pieces ?? []) {
    const same = old.get(piece.text);
    if (same) same.push(piece);
    else old.set(piece.text, [piece]);
  }
  const pieces: Piece[] = [];
  for (const { start, end } of statements) {
    const said = text.slice(start, end);
    const kept = old.get(said)?.shift();
    if (kept) {
      moveTo(kept, start, uri, madeOf);
      pieces.push(kept);
      continue;
    }
    const piece = readPiece(said, uri, parse);
    if (!piece) return readWhole(text, uri, parse, before);
    moveTo(piece, start, uri, madeOf);
    pieces.push(piece);
  }
  return joined(uri, pieces, before?.reading);
}

/**
 * Reads a text that nobody wrote yet, beside the one that stands. Statements that both have are the very readings of the
 * one that stands, unmoved; the others are placed behind it, where no place of theirs can be taken for another. Good for
 * whoever asks what would be said, not where. Undefined where only the whole text tells what belongs to what.
 */
export function readBeside(
  text: string,
  uri: string,
  parse: (text: string) => ParseResult,
  { reading: before, pieces: standing }: ReadFile,
): ReadFile | undefined {
  const statements = standing && cutStatements(text);
  if (!statements) return undefined;
  const left = new Set(standing);
  const behind = Math.max(...standing.map(one => one.start + one.text.length)) + 1;
  const pieces: Piece[] = [];
  for (const { start, end } of statements) {
    const said = text.slice(start, end);
    const kept = [...left].find(one => one.text === said);
    if (kept) left.delete(kept);
    const piece = kept ?? readPiece(said, uri, parse);
    if (!piece) return undefined;
    if (!kept) moveTo(piece, behind + start, uri, () => []);
    pieces.push(piece);
  }
  const { reading, syntax } = joined(uri, pieces, before);
  return { reading, syntax };
}

/** Undefined where how the parser goes on after an error may depend on what follows; a mended mark ends with its line. */
function readPiece(said: string, uri: string, parse: (text: string) => ParseResult): Piece | undefined {
  const head = headOfWholeEntry(said);
  if (head) return putOff(said, uri, head, parse);
  const parsed = parse(said);
  if (parsed.parserErrors.length > 0) return undefined;
  const reading = readDocument(parsed.value as Document, uri, said);
  const syntax = syntaxProblems(parsed, said);
  return { text: said, reading, syntax, start: 0, parts: () => [reading, syntax] };
}

/** The piece of an entry whose facts are read when somebody asks for them, at the place where it stands by then. */
function putOff(said: string, uri: string, head: EntryHead, parse: (text: string) => ParseResult): Piece {
  let had: { readonly reading: DocumentReading; readonly syntax: readonly Problem[] } | undefined;
  const read = () => {
    if (had) return had;
    const parsed = parse(said);
    const reading = readDocument(parsed.value as Document, uri, said);
    const syntax = syntaxProblems(parsed, said);
    move(positionedIn([reading, syntax], uri, { start: 0, end: said.length }), piece.start);
    delete piece.placed;
    had = { reading, syntax };
    return had;
  };
  const reading = unreadEntry(head, uri, () => read().reading);
  const piece: Piece = {
    text: said,
    reading,
    get syntax() {
      return read().syntax;
    },
    start: 0,
    parts: () => [reading.entries, ...(had ? [had.reading, had.syntax] : [])],
  };
  return piece;
}

/** The reading of a text as a whole; the pieces of the text before are kept for the one after. */
export function readWhole(
  text: string,
  uri: string,
  parse: (text: string) => ParseResult,
  before?: ReadFile,
): ReadFile {
  const parsed = parse(text);
  const reading = readDocument(parsed.value as Document, uri, text);
  const pieces = before?.pieces;
  return { reading, syntax: syntaxProblems(parsed, text), ...(pieces ? { pieces } : {}) };
}

function moveTo(piece: Piece, start: number, uri: string, madeOf: MadeOf): void {
  if (piece.start === start) return;
  const made = madeOf(piece.reading);
  if (!piece.placed || !sameElements(piece.made ?? [], made)) {
    const within = { start: piece.start, end: piece.start + piece.text.length };
    piece.placed = positionedIn([...piece.parts(), ...made], uri, within);
    piece.made = made;
  }
  move(piece.placed, start - piece.start);
  piece.start = start;
}

function joined(uri: string, pieces: readonly Piece[], before: DocumentReading | undefined): ReadFile {
  const readings = pieces.map(piece => piece.reading);
  const entries = readings.flatMap(one => one.entries);
  let problems: readonly Problem[] | undefined;
  let syntax: readonly Problem[] | undefined;
  return {
    reading: {
      uri,
      imports: readings.flatMap(one => one.imports),
      entries: before ? unlessSame(entries, before.entries) : entries,
      vessels: readings.flatMap(one => one.vessels),
      strays: readings.flatMap(one => one.strays),
      // What is wrong in entries shows when they are read: who sees them through an import does not ask.
      get problems() {
        problems ??= readings.flatMap(one => one.problems);
        return problems;
      },
    },
    get syntax() {
      syntax ??= pieces.flatMap(piece => piece.syntax);
      return syntax;
    },
    pieces,
  };
}

/** The old list when it has the same in it: whoever remembers it sees that nothing changed. */
function unlessSame(now: readonly EntryReading[], before: readonly EntryReading[]): readonly EntryReading[] {
  return sameElements(now, before) ? before : now;
}

export function sameElements(one: readonly unknown[], other: readonly unknown[]): boolean {
  return one.length === other.length && one.every((element, index) => element === other[index]);
}
