import { type LangiumDocuments, URI } from 'langium';
import type { TextDocumentEdit, WorkspaceEdit } from 'vscode-languageserver';
import type { TextEdit } from '../edit/text-edit.js';

/** Where a file's text comes from, and which version of it the client has. */
export interface Texts {
  readonly LangiumDocuments: LangiumDocuments;
  readonly TextDocuments?: { get(uri: string): { readonly version: number } | undefined };
}

/** Edits tied to the versions of the texts they were made for, so that a client refuses them on any other. */
export function workspaceEdit(
  edits: readonly TextEdit[],
  { LangiumDocuments, TextDocuments }: Texts,
): WorkspaceEdit {
  const files = new Map<string, TextDocumentEdit>();
  for (const edit of edits) {
    const text = LangiumDocuments.getDocument(URI.parse(edit.uri))?.textDocument;
    if (!text) continue;
    const version = TextDocuments?.get(edit.uri) ? text.version : null;
    const file = files.get(edit.uri) ?? { textDocument: { uri: edit.uri, version }, edits: [] };
    files.set(edit.uri, file);
    file.edits.push({
      range: { start: text.positionAt(edit.start), end: text.positionAt(edit.end) },
      newText: edit.text,
    });
  }
  return { documentChanges: [...files.values()] };
}

/** The text of a loaded file, empty for one that is not loaded. */
export function textsOf(documents: LangiumDocuments): (uri: string) => string {
  return uri => documents.getDocument(URI.parse(uri))?.textDocument.getText() ?? '';
}
