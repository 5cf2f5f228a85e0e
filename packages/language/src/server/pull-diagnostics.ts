import { DocumentState, type LangiumDocument } from 'langium';
import {
  type CancellationToken,
  type Connection,
  type DiagnosticRegistrationOptions,
  type DocumentDiagnosticParams,
  type DocumentDiagnosticReport,
  DocumentDiagnosticReportKind,
  type InitializeParams,
  type WorkspaceDiagnosticParams,
  type WorkspaceDiagnosticReport,
  type WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver';
import { guarded, onDocument } from './handlers.js';
import type { TailshaftServices } from './services.js';
import { wholeWorkspace } from './workspace/whole-workspace.js';

export const PULLED: Omit<DiagnosticRegistrationOptions, 'documentSelector'> = {
  identifier: 'tailshaft',
  interFileDependencies: true,
  workspaceDiagnostics: true,
};

/** Whether this client asks for diagnostics; they are pushed to all others, and never both. */
export function pulls({ capabilities }: InitializeParams): boolean {
  return capabilities.textDocument?.diagnostic !== undefined;
}

/** Answers clients that ask for diagnostics, and tells them when to ask again. */
export class PullDiagnostics {
  /** Set by the client's hello. */
  active = false;
  private refreshes = false;
  private readonly results = new Map<string, string>();
  private checked = 0;
  private waiting: (() => void)[] = [];

  constructor(
    private readonly connection: Connection,
    private readonly services: TailshaftServices,
  ) {
    const { lsp, workspace } = services.shared;
    lsp.LanguageServer.onInitialize(params => {
      this.active = pulls(params);
      this.refreshes = params.capabilities.workspace?.diagnostics?.refreshSupport === true;
    });
    const changed = (uri: string) => {
      this.checked += 1;
      this.results.set(uri, String(this.checked));
      for (const wake of this.waiting.splice(0)) wake();
    };
    workspace.DocumentBuilder.onDocumentPhase(DocumentState.Validated, document =>
      changed(document.uri.toString()),
    );
    services.entryFindings.onChange(uri => {
      changed(uri);
      // Nobody typed at it, so that its client does not ask by itself.
      if (workspace.TextDocuments.get(uri)) this.askAgain();
    });
    workspace.DocumentBuilder.onUpdate((_changed, deleted) => {
      for (const uri of deleted) this.results.delete(uri.toString());
    });
    connection.languages.diagnostics.on(
      onDocument(services, 'diagnostics', (document, { previousResultId }: DocumentDiagnosticParams) =>
        this.report(document, previousResultId),
      ) as never,
    );
    connection.languages.diagnostics.onWorkspace(
      (params, token) =>
        guarded(services, 'diagnostics of the workspace', token, () =>
          this.workspace(params, token),
        ) as never,
    );
  }

  /** Says that what is known of texts changed without their being typed at. */
  askAgain(): void {
    if (this.active && this.refreshes) this.connection.languages.diagnostics.refresh();
  }

  private report(document: LangiumDocument, before: string | undefined): DocumentDiagnosticReport {
    const resultId = this.results.get(document.uri.toString()) ?? '0';
    return resultId === before
      ? { kind: DocumentDiagnosticReportKind.Unchanged, resultId }
      : {
          kind: DocumentDiagnosticReportKind.Full,
          resultId,
          items: this.services.entryFindings.shownIn(document),
        };
  }

  /** All files of the workspace; when the client knows all of it, the answer waits until there is something new. */
  private async workspace(
    { previousResultIds }: WorkspaceDiagnosticParams,
    token: CancellationToken,
  ): Promise<WorkspaceDiagnosticReport> {
    const known = new Map(previousResultIds.map(one => [one.uri, one.value]));
    for (;;) {
      const seen = this.checked;
      await wholeWorkspace(this.services, token);
      const items = this.reports(known);
      const news = items.some(one => one.kind === DocumentDiagnosticReportKind.Full);
      if (news || token.isCancellationRequested) return { items };
      if (this.checked === seen) await this.somethingNew(token);
    }
  }

  private reports(known: ReadonlyMap<string, string>): WorkspaceDocumentDiagnosticReport[] {
    const { LangiumDocuments, TextDocuments } = this.services.shared.workspace;
    const items: WorkspaceDocumentDiagnosticReport[] = [];
    for (const document of LangiumDocuments.all) {
      if (document.state < DocumentState.Validated) continue;
      const uri = document.uri.toString();
      const version = TextDocuments.get(uri) ? document.textDocument.version : null;
      items.push({
        ...this.report(document, known.get(uri)),
        uri,
        version,
      } as WorkspaceDocumentDiagnosticReport);
    }
    // Files that went: nothing is to be said of them any more.
    for (const [uri, value] of known) {
      if (value !== GONE && !items.some(one => one.uri === uri))
        items.push({
          kind: DocumentDiagnosticReportKind.Full,
          uri,
          version: null,
          resultId: GONE,
          items: [],
        });
    }
    return items;
  }

  private somethingNew(token: CancellationToken): Promise<void> {
    return new Promise(done => {
      this.waiting.push(done);
      token.onCancellationRequested(() => done());
    });
  }
}

const GONE = 'gone';
