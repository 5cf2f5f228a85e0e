import { DocumentState, URI } from 'langium';
import type { Connection, Diagnostic } from 'vscode-languageserver';
import { forgetOutline, keepOutline } from './outline.js';
import type { TailshaftServices } from './services.js';
import { dropTree } from './workspace/builder.js';

/** Sends diagnostics with the version of the text they speak of; what was never shown is not cleared. */
export function publishDiagnostics(
  connection: Connection,
  services: TailshaftServices,
  wanted: () => boolean,
): void {
  const { DocumentBuilder, LangiumDocuments, TextDocuments } = services.shared.workspace;
  const { entryFindings } = services;
  const shown = new Set<string>();
  const send = (uri: string, diagnostics: Diagnostic[], version?: number) => {
    if (!wanted()) return;
    if (diagnostics.length === 0 && version === undefined && !shown.has(uri)) return;
    if (diagnostics.length > 0) shown.add(uri);
    else shown.delete(uri);
    void connection.sendDiagnostics({ uri, diagnostics, ...(version === undefined ? {} : { version }) });
  };
  entryFindings.onChange(uri => {
    const document = LangiumDocuments.getDocument(URI.parse(uri));
    const open = TextDocuments.get(uri);
    if (document) send(uri, entryFindings.shownIn(document), open && document.textDocument.version);
  });
  DocumentBuilder.onUpdate((_changed, deleted) => {
    for (const uri of deleted) send(uri.toString(), []);
  });
  DocumentBuilder.onDocumentPhase(DocumentState.Validated, document => {
    const uri = document.uri.toString();
    const open = TextDocuments.get(uri);
    send(uri, entryFindings.shownIn(document), open && document.textDocument.version);
    if (open) forgetOutline(document);
    else {
      keepOutline(services, document);
      services.project.rest(document);
      dropTree(document);
    }
  });
}
