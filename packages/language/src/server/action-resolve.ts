import { type LangiumDocument, URI } from 'langium';
import {
  type CancellationToken,
  type CodeAction,
  type CodeActionParams,
  type Connection,
  type InitializeParams,
  LSPErrorCodes,
  ResponseError,
} from 'vscode-languageserver';
import { onDocument } from './handlers.js';
import type { TailshaftServices } from './services.js';

/** What finds an offer again: the question it answered, and the text it was made for. */
interface Asked {
  readonly params: CodeActionParams;
  readonly version: number;
  /** Which of the offers it is: two may have one title. */
  readonly edit: string;
}

/** Whether the client fetches the edit of an offer when somebody takes it. */
export function resolvesActions({ capabilities }: InitializeParams): boolean {
  const action = capabilities.textDocument?.codeAction;
  return action?.dataSupport === true && action.resolveSupport?.properties.includes('edit') === true;
}

/** The same for the same edit of the same texts. */
function identityOf(edit: CodeAction['edit']): string {
  let hash = 5381;
  for (const character of JSON.stringify(edit ?? null)) hash = (hash * 33 + character.charCodeAt(0)) >>> 0;
  return hash.toString(36);
}

/** Offers without their edits, for clients that fetch those of the one that is taken; with them for all others. */
export function answerCodeActions(connection: Connection, services: TailshaftServices): void {
  const provider = services.lsp.CodeActionProvider!;
  let resolves = false;
  services.shared.lsp.LanguageServer.onInitialize(params => {
    resolves = resolvesActions(params);
  });
  const offers = async (document: LangiumDocument, params: CodeActionParams, token: CancellationToken) =>
    ((await provider.getCodeActions(document, params, token)) ?? []) as CodeAction[];
  connection.onCodeAction(
    onDocument(services, 'code actions', async (document, params: CodeActionParams, token) => {
      const actions = await offers(document, params, token);
      if (!resolves) return actions;
      const { version } = document.textDocument;
      return actions.map(({ edit, ...rest }) => ({
        ...rest,
        data: { params, version, edit: identityOf(edit) } satisfies Asked,
      }));
    }),
  );
  const resolve = onDocument(
    services,
    'a code action',
    async (document, { action }: Asked['params'] & { action: CodeAction }, token) => {
      const { params, version, edit } = action.data as Asked;
      if (document.textDocument.version !== version)
        throw new ResponseError(LSPErrorCodes.ContentModified, 'The text changed since this was offered.');
      const found = (await offers(document, params, token)).find(one => identityOf(one.edit) === edit);
      return { ...action, ...(found?.edit ? { edit: found.edit } : {}) };
    },
  );
  connection.onCodeActionResolve((action, token) => {
    const asked = action.data as Asked | undefined;
    if (!asked || !URI.parse(asked.params.textDocument.uri)) return action;
    return resolve({ ...asked.params, action }, token) as Promise<CodeAction>;
  });
}
