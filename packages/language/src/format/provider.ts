import type { LangiumDocument } from 'langium';
import type { Formatter } from 'langium/lsp';
import type {
  DocumentFormattingParams,
  DocumentOnTypeFormattingParams,
  DocumentRangeFormattingParams,
  TextEdit,
} from 'vscode-languageserver';
import type { Replacement } from '../edit/text-edit.js';
import type { Project } from '../project/project.js';
import { piecesOf } from '../text/tokens.js';
import { formatEdits, formatParsed } from './format-text.js';
import { indentNewLine } from './new-line.js';

/** Formats documents of the editor: whole, in part, the block that a typed brace closes, and the line that Enter begins. */
export class TailshaftFormatter implements Omit<Formatter, 'formatOnTypeOptions'> {
  constructor(private readonly services: { readonly project: Project }) {}

  formatDocument(document: LangiumDocument, _params: DocumentFormattingParams): TextEdit[] {
    return this.edits(document);
  }

  formatDocumentRange(document: LangiumDocument, { range }: DocumentRangeFormattingParams): TextEdit[] {
    const start = document.textDocument.offsetAt({ line: range.start.line, character: 0 });
    return this.edits(document, start, document.textDocument.offsetAt(range.end));
  }

  formatDocumentOnType(document: LangiumDocument, params: DocumentOnTypeFormattingParams): TextEdit[] {
    const end = document.textDocument.offsetAt(params.position);
    if (params.ch !== '}') return this.newLine(document, end);
    const open = openingBrace(document.textDocument.getText().slice(0, end));
    if (open === undefined) return [];
    const { line } = document.textDocument.positionAt(open);
    // What stands behind the cursor stays where it is.
    return this.edits(document, document.textDocument.offsetAt({ line, character: 0 }), end - 1);
  }

  /** Somebody who types fast has left a brace behind before the editor drew it back: it goes to its place with the next line. */
  private newLine(document: LangiumDocument, offset: number): TextEdit[] {
    const text = document.textDocument.getText();
    const brace = braceAbove(text, offset);
    const edits = [...(brace === undefined ? [] : [indentNewLine(text, brace)]), indentNewLine(text, offset)];
    return edits.flatMap(edit => (edit ? [toEdit(document, edit)] : []));
  }

  private edits(document: LangiumDocument, from = 0, to = Number.POSITIVE_INFINITY): TextEdit[] {
    const text = document.textDocument.getText();
    const formatted = formatParsed(text, document.parseResult, this.services.project.reading(document));
    const inRange = (edit: Replacement) => edit.end >= from && edit.start <= to;
    return formatEdits(text, formatted)
      .filter(inRange)
      .map(edit => toEdit(document, edit));
  }
}

function toEdit({ textDocument }: LangiumDocument, { start, end, text: newText }: Replacement): TextEdit {
  return { range: { start: textDocument.positionAt(start), end: textDocument.positionAt(end) }, newText };
}

/** Where the last line above that is not empty begins, if it is a closing brace alone. */
function braceAbove(text: string, offset: number): number | undefined {
  const above = text.slice(0, text.lastIndexOf('\n', offset - 1) + 1).trimEnd();
  const start = above.lastIndexOf('\n') + 1;
  return above.slice(start).trim() === '}' ? start : undefined;
}

/** The brace that the last one of a text closes. */
function openingBrace(text: string): number | undefined {
  const open: number[] = [];
  let closed: number | undefined;
  for (const piece of piecesOf(text)) {
    if (piece.comment) continue;
    closed = undefined;
    if (piece.text === '{') open.push(piece.start);
    else if (piece.text === '}') closed = open.pop();
  }
  return closed;
}
