import { DocumentState, isOperationCancelled, type LangiumDocument, URI, UriUtils } from 'langium';
import {
  type CancellationToken,
  type Connection,
  ErrorCodes,
  LSPErrorCodes,
  ResponseError,
  type SemanticTokensParams,
  type SemanticTokensRangeParams,
} from 'vscode-languageserver';
import { EXTENSION } from '../project/imports.js';
import { isTooLarge } from '../project/size.js';
import { selectionRanges } from './selection-ranges.js';
import type { TailshaftServices } from './services.js';
import { belongs } from './workspace/belongs.js';
import { wholeWorkspace } from './workspace/whole-workspace.js';

type AboutDocument = { readonly textDocument: { readonly uri: string } };
type Answer<R> = R | null | undefined | Promise<R | null | undefined>;

/**
 * Answers the requests of the protocol. A request waits until what was typed before it is built. One that goes wrong
 * is logged and answered with an error; the server and all other requests live on.
 */
export function answerRequests(connection: Connection, services: TailshaftServices): void {
  const { lsp, shared } = services;
  const on = <P extends AboutDocument, R>(
    name: string,
    call: (document: LangiumDocument, params: P, token: CancellationToken) => Answer<R>,
  ) => onDocument(services, name, call);
  const onAll = <P extends AboutDocument, R>(
    name: string,
    call: (document: LangiumDocument, params: P, token: CancellationToken) => Answer<R>,
  ) => onDocumentOfAll(services, name, call);

  if (lsp.CompletionProvider)
    connection.onCompletion(on('completion', (d, p, t) => lsp.CompletionProvider!.getCompletion(d, p, t)));
  if (lsp.HoverProvider)
    connection.onHover(on('hover', (d, p, t) => lsp.HoverProvider!.getHoverContent(d, p, t)));
  if (lsp.DocumentSymbolProvider)
    connection.onDocumentSymbol(on('symbols', (d, p, t) => lsp.DocumentSymbolProvider!.getSymbols(d, p, t)));
  if (lsp.FoldingRangeProvider)
    connection.onFoldingRanges(
      on('folding', (d, p, t) => lsp.FoldingRangeProvider!.getFoldingRanges(d, p, t)),
    );
  if (lsp.CodeLensProvider)
    connection.onCodeLens(on('lenses', (d, p, t) => lsp.CodeLensProvider!.provideCodeLens(d, p, t)));
  if (lsp.InlayHintProvider)
    connection.languages.inlayHint.on(
      on('inlay hints', (d, p, t) => lsp.InlayHintProvider!.getInlayHints(d, p, t)),
    );
  const tokens = lsp.SemanticTokenProvider;
  if (tokens) {
    const { semanticTokens } = connection.languages;
    semanticTokens.on(
      ofText(
        services,
        on('tokens', (d, p: SemanticTokensParams, t) => tokens.semanticHighlight(d, p, t)),
      ) as never,
    );
    semanticTokens.onRange(
      ofText(
        services,
        on('tokens', (d, p: SemanticTokensRangeParams, t) => tokens.semanticHighlightRange(d, p, t)),
      ) as never,
    );
  }
  connection.onSelectionRanges(
    on('selection ranges', (document, { positions }) => selectionRanges(document, positions)),
  );

  if (lsp.DefinitionProvider)
    connection.onDefinition(on('definition', (d, p, t) => lsp.DefinitionProvider!.getDefinition(d, p, t)));
  if (lsp.ReferencesProvider)
    connection.onReferences(
      onAll('references', (d, p, t) => lsp.ReferencesProvider!.findReferences(d, p, t)),
    );
  if (lsp.DocumentHighlightProvider)
    connection.onDocumentHighlight(
      on('highlights', (d, p, t) => lsp.DocumentHighlightProvider!.getDocumentHighlight(d, p, t)),
    );
  if (lsp.RenameProvider) {
    connection.onRenameRequest(onAll('rename', (d, p, t) => lsp.RenameProvider!.rename(d, p, t)));
    connection.onPrepareRename(on('rename', (d, p, t) => lsp.RenameProvider!.prepareRename(d, p, t)));
  }
  if (lsp.Formatter) {
    connection.onDocumentFormatting(on('formatting', (d, p, t) => lsp.Formatter!.formatDocument(d, p, t)));
    connection.onDocumentRangeFormatting(
      on('formatting', (d, p, t) => lsp.Formatter!.formatDocumentRange(d, p, t)),
    );
    if (lsp.Formatter.formatOnTypeOptions)
      connection.onDocumentOnTypeFormatting(
        on('formatting', (d, p, t) => lsp.Formatter!.formatDocumentOnType(d, p, t)),
      );
  }

  const symbols = shared.lsp.WorkspaceSymbolProvider;
  if (symbols)
    connection.onWorkspaceSymbol((params, token) =>
      guarded(services, 'workspace symbols', token, async () => {
        await wholeWorkspace(services, token);
        return symbols.getSymbols(params, token);
      }),
    );
}

/** A handler for requests about one document. */
export function onDocument<P extends AboutDocument, R>(
  services: TailshaftServices,
  name: string,
  call: (document: LangiumDocument, params: P, token: CancellationToken) => Answer<R>,
): (params: P, token: CancellationToken) => Promise<R | null | ResponseError<void>> {
  return (params, token) =>
    guarded(services, name, token, async () => {
      const document = await builtDocument(services, URI.parse(params.textDocument.uri));
      if (!document || token.isCancellationRequested || isTooLarge(document.textDocument.getText()))
        return null;
      return call(document, params, token);
    }) as Promise<R | null | ResponseError<void>>;
}

/** The same for questions about everything that the workspace says of a thing: they wait until all of it is read. */
export function onDocumentOfAll<P extends AboutDocument, R>(
  services: TailshaftServices,
  name: string,
  call: (document: LangiumDocument, params: P, token: CancellationToken) => Answer<R>,
): (params: P, token: CancellationToken) => Promise<R | null | ResponseError<void>> {
  const answer = onDocument(services, name, call);
  return async (params, token) => {
    await wholeWorkspace(services, token);
    return answer(params, token);
  };
}

/**
 * Answers only for the text as it was when the question came: a client moves colours along with what was typed since, so
 * colours of a later text would be moved twice. It asks again by itself.
 */
function ofText<P extends AboutDocument, R>(
  services: TailshaftServices,
  answer: (params: P, token: CancellationToken) => Promise<R | null | ResponseError<void>>,
): (params: P, token: CancellationToken) => Promise<R | null | ResponseError<void>> {
  const versionOf = (params: P) =>
    services.shared.workspace.TextDocuments.get(params.textDocument.uri)?.version;
  return async (params, token) => {
    const version = versionOf(params);
    const answered = await answer(params, token);
    return versionOf(params) === version
      ? answered
      : new ResponseError<void>(LSPErrorCodes.ContentModified, 'The text has changed since.');
  };
}

/** The document as last typed, checked; nothing for what is no spec. */
async function builtDocument(services: TailshaftServices, uri: URI): Promise<LangiumDocument | undefined> {
  const { LangiumDocuments, TextDocuments } = services.shared.workspace;
  const { queue } = services;
  await queue.settled();
  const ready = () => {
    const document = LangiumDocuments.getDocument(uri);
    return document && document.state >= DocumentState.Validated ? document : undefined;
  };
  if (!belongs(uri, services.project.roots)) return undefined;
  const had = ready();
  if (had) return had;
  if (!TextDocuments.get(uri) && UriUtils.extname(uri) !== EXTENSION) return undefined;
  queue.submit([uri]);
  await queue.settled();
  return ready();
}

/** Runs one request: a cancelled one, and one that goes wrong, is answered with an error. */
export async function guarded<R>(
  services: TailshaftServices,
  name: string,
  token: CancellationToken,
  work: () => Answer<R>,
): Promise<R | null | ResponseError<void>> {
  const cancelled = () =>
    new ResponseError<void>(LSPErrorCodes.RequestCancelled, 'The request was cancelled.');
  try {
    const result = await work();
    return token.isCancellationRequested ? cancelled() : (result ?? null);
  } catch (error) {
    if (isOperationCancelled(error) || token.isCancellationRequested) return cancelled();
    if (error instanceof ResponseError) return error;
    services.log(`answering a request for ${name}`, error);
    return new ResponseError<void>(
      ErrorCodes.InternalError,
      `The request for ${name} failed; the log says why.`,
    );
  }
}
