import { type LangiumDocument, URI } from 'langium';
import type {
  CallHierarchyItem,
  Connection,
  FileOperationRegistrationOptions,
  FormattingOptions,
  InitializeParams,
  Range,
  ServerCapabilities,
  TextDocumentPositionParams,
} from 'vscode-languageserver';
import { CODE_ACTION_KINDS } from '../actions/kinds.js';
import { EXTENSION } from '../project/imports.js';
import { answerCodeActions, resolvesActions } from './action-resolve.js';
import type { CallHierarchy } from './call-hierarchy.js';
import { guarded, onDocument, onDocumentOfAll } from './handlers.js';
import { linkedEditing } from './linked-editing.js';
import { PULLED, pulls } from './pull-diagnostics.js';
import type { TailshaftServices } from './services.js';
import { asked } from './when-asked.js';
import type { WorkingAnswer } from './working.js';
import { wholeWorkspace } from './workspace/whole-workspace.js';

/** Specs, and folders that may hold some. */
const RENAMED_FILES: FileOperationRegistrationOptions = {
  filters: [
    { pattern: { glob: `**/*${EXTENSION}`, matches: 'file' } },
    { pattern: { glob: '**', matches: 'folder' } },
  ],
};

/** Asks for the whole computation behind what stands at a position: `{ markdown }`, or null where nothing is computed. */
const WORKING = 'tailshaft/working';

/** What this server can do that the library has no words for. */
export function addedCapabilities(params: InitializeParams): ServerCapabilities {
  return {
    selectionRangeProvider: true,
    callHierarchyProvider: true,
    linkedEditingRangeProvider: true,
    signatureHelpProvider: { triggerCharacters: [' '] },
    documentRangeFormattingProvider: { rangesSupport: true },
    codeActionProvider: { codeActionKinds: CODE_ACTION_KINDS, resolveProvider: resolvesActions(params) },
    ...(pulls(params) ? { diagnosticProvider: PULLED } : {}),
    workspace: {
      workspaceFolders: { supported: true, changeNotifications: true },
      fileOperations: { willRename: RENAMED_FILES },
    },
  };
}

/** Answers the requests that the library has no place for. */
export function answerAddedRequests(connection: Connection, services: TailshaftServices): void {
  let hierarchies: Promise<CallHierarchy> | undefined;
  const hierarchy = () => {
    hierarchies ??= asked().then(({ CallHierarchy }) => new CallHierarchy(services));
    return hierarchies;
  };
  const { languages } = connection;
  languages.callHierarchy.onPrepare(
    onDocument(services, 'a hierarchy', async (document, { position }: TextDocumentPositionParams) =>
      (await hierarchy()).prepare(document, position),
    ) as never,
  );
  languages.callHierarchy.onIncomingCalls(
    ofItem(services, onDocumentOfAll, async (document, item) =>
      (await hierarchy()).incoming(document, item),
    ) as never,
  );
  languages.callHierarchy.onOutgoingCalls(
    ofItem(services, onDocument, async (document, item) =>
      (await hierarchy()).outgoing(document, item),
    ) as never,
  );
  languages.onLinkedEditingRange(
    onDocument(services, 'linked editing', (document, { position }: TextDocumentPositionParams) =>
      linkedEditing(services, document, position),
    ) as never,
  );
  connection.onSignatureHelp(
    onDocument(services, 'help on a property', async (document, { position }: TextDocumentPositionParams) =>
      (await asked()).propertyHelp(document, position),
    ) as never,
  );
  connection.onDocumentLinks(
    onDocument(services, 'links', async (document, params, token) => [
      ...((await services.lsp.DocumentLinkProvider!.getDocumentLinks(document, params as never, token)) ??
        []),
      ...(await (await asked()).sourceLinks(services, document)),
    ]),
  );
  connection.onRequest(
    'textDocument/rangesFormatting',
    onDocument(services, 'formatting', async (document, params: RangesParams) => {
      const edits = params.ranges.map(range =>
        services.lsp.Formatter!.formatDocumentRange(document, { ...params, range }),
      );
      return unlike((await Promise.all(edits)).flat());
    }),
  );
  connection.workspace.onWillRenameFiles(
    (params, token) =>
      guarded(services, 'renaming files', token, async () => {
        await wholeWorkspace(services, token);
        return (await asked()).importsAfterRename(services, params);
      }) as never,
  );
  answerCodeActions(connection, services);
  connection.onRequest<WorkingAnswer | null, void>(
    WORKING,
    onDocument(services, 'a working', async (document, { position }: TextDocumentPositionParams) =>
      (await asked()).workingAt(services, document, document.textDocument.offsetAt(position)),
    ),
  );
}

interface RangesParams {
  readonly textDocument: { readonly uri: string };
  readonly ranges: readonly Range[];
  readonly options: FormattingOptions;
}

/** A question about an item of a hierarchy, which says itself in which file it lies. */
function ofItem<R>(
  services: TailshaftServices,
  on: typeof onDocument,
  call: (document: LangiumDocument, item: CallHierarchyItem) => R,
) {
  const answer = on(
    services,
    'a hierarchy',
    (
      document: LangiumDocument,
      { item }: { readonly textDocument: { readonly uri: string }; readonly item: CallHierarchyItem },
    ) => call(document, item),
  );
  return ({ item }: { readonly item: CallHierarchyItem }, token: Parameters<typeof answer>[1]) =>
    answer({ textDocument: { uri: URI.parse(item.uri).toString() }, item }, token);
}

/** Each edit once: ranges may touch. */
function unlike<T>(edits: readonly T[]): T[] {
  return [...new Map(edits.map(edit => [JSON.stringify(edit), edit])).values()];
}
