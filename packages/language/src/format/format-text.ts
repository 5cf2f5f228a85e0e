import { EmptyFileSystem, type LangiumDocument, type ParseResult, URI } from 'langium';
import type { Replacement } from '../edit/text-edit.js';
import type { Document } from '../generated/ast.js';
import { type DocumentReading, readDocument } from '../reading/document.js';
import { createTailshaftCore } from '../services/module.js';
import { reshapesBlocks } from '../services/repair/open-blocks.js';
import { isOpenComment } from '../services/repair/open-comment.js';
import { leavesOut } from '../services/repair/too-deep.js';
import { lineBreakOf, piecesOf } from '../text/tokens.js';
import { outlineOf } from './outline.js';
import { printText } from './print.js';

/** The text with its usual layout. What cannot be read stays as it is; line ends, comments and meaning always do. */
export function formatText(text: string): string {
  const { parsed, reading } = read(text);
  return formatParsed(text, parsed, reading);
}

/** The same of a text that is parsed and read already. */
export function formatParsed(text: string, parsed: ParseResult, reading: DocumentReading): string {
  const printed = print(text, parsed, reading);
  if (printed === text || !isDamaged(parsed, reading)) return printed;
  // Damage may be read otherwise once its lines have moved: then the text is left alone.
  const again = read(printed);
  const asBefore = complaints(again.parsed, again.reading) === complaints(parsed, reading);
  return asBefore && print(printed, again.parsed, again.reading) === printed ? printed : text;
}

function print(text: string, parsed: ParseResult, reading: DocumentReading): string {
  // Which block a line belongs to was told by its indentation: moving lines would change what they say.
  if (parsed.lexerErrors.some(reshapesBlocks)) return text;
  // What was not read for its depth, or for a comment without an end, is no statement that could be laid out.
  if (parsed.lexerErrors.some(one => leavesOut(one) || isOpenComment(one))) return text;
  const printed = printText(text, outlineOf(parsed, reading), lineBreakOf(text));
  return sameWords(text, printed) ? printed : text;
}

function isDamaged(parsed: ParseResult, reading: DocumentReading): boolean {
  return parsed.lexerErrors.length + parsed.parserErrors.length + reading.problems.length > 0;
}

function complaints(parsed: ParseResult, reading: DocumentReading): string {
  const all = [...parsed.lexerErrors, ...parsed.parserErrors, ...reading.problems];
  return all
    .map(one => one.message)
    .sort()
    .join('\n');
}

/** What formatting changes: the space between two tokens, wherever it is not the usual one. */
export function formatEdits(text: string, formatted: string): Replacement[] {
  const before = piecesOf(text);
  const after = piecesOf(formatted);
  const edits: Replacement[] = [];
  for (let index = 0; index <= before.length; index += 1) {
    const start = before[index - 1]?.end ?? 0;
    const end = before[index]?.start ?? text.length;
    const space = formatted.slice(after[index - 1]?.end ?? 0, after[index]?.start ?? formatted.length);
    if (text.slice(start, end) !== space) edits.push({ start, end, text: space });
  }
  return edits;
}

/** Whether two texts have the same tokens and comments in the same order. */
export function sameWords(one: string, other: string): boolean {
  const [a, b] = [piecesOf(one), piecesOf(other)];
  return a.length === b.length && a.every((piece, index) => piece.text === b[index]!.text);
}

let core: ReturnType<typeof createTailshaftCore> | undefined;

function read(text: string): { parsed: ParseResult; reading: DocumentReading } {
  core ??= createTailshaftCore(EmptyFileSystem);
  const document: LangiumDocument = core.shared.workspace.LangiumDocumentFactory.fromString(
    text,
    URI.parse('memory:/text.shaft'),
  );
  const parsed = document.parseResult;
  return { parsed, reading: readDocument(parsed.value as Document, 'memory:/text.shaft', text) };
}
