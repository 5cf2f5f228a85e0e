import { policyFrom } from '@tailshaft/drivetrain';
import { DocumentState, URI } from 'langium';
import type { Connection, WorkspaceFolder } from 'vscode-languageserver';
import { isWithin } from '../project/imports.js';
import { answerAddedRequests } from './added.js';
import { publishDiagnostics } from './diagnostics.js';
import { answerRequests } from './handlers.js';
import { createTailshaftServices } from './module.js';
import { answerOutlineRequests } from './outline.js';
import { PullDiagnostics } from './pull-diagnostics.js';
import type { ServerContext, TailshaftServices } from './services.js';
import { belongs } from './workspace/belongs.js';
import type { WorkspaceScan } from './workspace/scan.js';

/** Brings a server to life on a connection. */
export function startServer(context: ServerContext & { readonly connection: Connection }): TailshaftServices {
  const { connection } = context;
  const { shared, language } = createTailshaftServices(context);
  const updates = shared.lsp.DocumentUpdateHandler;
  const texts = shared.workspace.TextDocuments;

  texts.onDidChangeContent(change => updates.didChangeContent?.(change));
  const pull = new PullDiagnostics(connection, language);
  publishDiagnostics(connection, language, () => !pull.active);
  texts.onDidClose(change => updates.didCloseDocument?.(change));
  connection.onDidChangeWatchedFiles(params => updates.didChangeWatchedFiles?.(params));
  connection.onDidChangeConfiguration(({ settings }) => {
    language.settings
      .changed(connection, settings)
      .catch(error => language.log('reading the settings', error));
  });
  answerRequests(connection, language);
  answerAddedRequests(connection, language);
  answerOutlineRequests(connection, language);

  connection.onInitialize(params => shared.lsp.LanguageServer.initialize(params));
  connection.onInitialized(params => {
    shared.lsp.LanguageServer.initialized(params);
    if (foldersCanChange) {
      connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
        (shared.workspace.WorkspaceManager as WorkspaceScan).changeFolders(added, removed);
        language.queue.submit(textsThatCame(language), filesLeft(language, removed));
      });
    }
  });
  let foldersCanChange = false;
  let refresh = { hints: false, lenses: false, tokens: false };
  shared.lsp.LanguageServer.onInitialize(({ capabilities: { workspace } }) => {
    foldersCanChange = workspace?.workspaceFolders === true;
    refresh = {
      hints: workspace?.inlayHint?.refreshSupport === true,
      lenses: workspace?.codeLens?.refreshSupport === true,
      tokens: workspace?.semanticTokens?.refreshSupport === true,
    };
  });
  const askAgain = () => {
    if (refresh.hints) void connection.languages.inlayHint.refresh();
    if (refresh.lenses) void connection.sendRequest('workspace/codeLens/refresh');
    pull.askAgain();
  };
  let policy = '';
  language.settings.onChange(() => {
    const [roles, longest] = [
      language.settings.get('acceptances.roles'),
      language.settings.get('acceptances.longest'),
    ];
    if (policy === `${roles}\n${longest}` || (policy === '' && roles === '' && longest === '')) return;
    policy = `${roles}\n${longest}`;
    language.project.policy = policyFrom(roles, longest);
    language.days.again();
  });
  language.settings.onChange(askAgain);
  // The client asks again by itself for the text that was typed at, not for others that see it.
  let typed = new Set<string>();
  shared.workspace.DocumentBuilder.onUpdate(changed => {
    typed = new Set(changed.map(uri => uri.toString()));
  });
  shared.workspace.DocumentBuilder.onBuildPhase(DocumentState.Validated, documents => {
    const others = documents.map(one => one.uri.toString()).filter(uri => !typed.has(uri));
    if (others.some(uri => texts.get(uri) !== undefined)) askAgain();
  });
  language.days.watch();
  texts.listen(connection);
  connection.listen();
  return language;
}

/** Files of folders that left the workspace; where no folder is left, open ones stand alone. */
function filesLeft(
  { project, shared: { workspace } }: TailshaftServices,
  removed: readonly WorkspaceFolder[],
): URI[] {
  const within = (uri: URI, folders: readonly URI[]) => folders.some(folder => isWithin(folder, uri));
  const gone = removed.map(folder => URI.parse(folder.uri));
  const closed = (uri: URI) => workspace.TextDocuments.get(uri.toString()) === undefined;
  return workspace.LangiumDocuments.all
    .map(document => document.uri)
    .filter(
      uri =>
        !belongs(uri, project.roots) || (within(uri, gone) && !within(uri, project.roots) && closed(uri)),
    )
    .toArray();
}

/** Open texts that were of no folder of the workspace, and now are. */
function textsThatCame({ project, shared: { workspace } }: TailshaftServices): URI[] {
  return workspace.TextDocuments.keys()
    .map(uri => URI.parse(uri))
    .filter(uri => belongs(uri, project.roots) && !workspace.LangiumDocuments.hasDocument(uri));
}
