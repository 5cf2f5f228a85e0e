import type {
  CodeActionProvider,
  CompletionProvider,
  DefinitionProvider,
  DocumentHighlightProvider,
  DocumentLinkProvider,
  Formatter,
  HoverProvider,
  ReferencesProvider,
  RenameProvider,
} from 'langium/lsp';
import type { TailshaftServices } from './services.js';
import { isWholeWorkspaceRead } from './workspace/whole-workspace.js';

/** The module of what is asked for, read once. */
export const asked = () => import('./asked.js');

/** A provider that is made when somebody first asks it for one of these. */
function whenAsked<T extends object, Name extends keyof T>(
  make: () => Promise<T>,
  ...names: readonly Name[]
): Pick<T, Name> {
  let made: Promise<T> | undefined;
  const answer =
    (name: Name) =>
    async (...given: unknown[]) => {
      made ??= make();
      const provider = await made;
      return (provider[name] as (...given: unknown[]) => unknown).call(provider, ...given);
    };
  return Object.fromEntries(names.map(name => [name, answer(name)])) as unknown as Pick<T, Name>;
}

export function hoversWhenAsked(services: TailshaftServices): HoverProvider {
  return whenAsked<HoverProvider, keyof HoverProvider>(
    async () => new (await asked()).Hovers(services),
    'getHoverContent',
  );
}

export function completionsWhenAsked(services: TailshaftServices): CompletionProvider {
  // Whether the client fills in places of a snippet is said once, at the start.
  let snippets = true;
  services.shared.lsp.LanguageServer.onInitialize(({ capabilities: { textDocument } }) => {
    snippets = textDocument?.completion?.completionItem?.snippetSupport === true;
  });
  return {
    completionOptions: { triggerCharacters: [' ', '[', '"', '/'] },
    ...whenAsked<CompletionProvider, 'getCompletion'>(
      async () => new (await asked()).Completions(services, snippets),
      'getCompletion',
    ),
  };
}

export function actionsWhenAsked(services: TailshaftServices): CodeActionProvider {
  return whenAsked<CodeActionProvider, keyof CodeActionProvider>(
    async () =>
      new (await asked()).CodeActions(
        services,
        () => isWholeWorkspaceRead(services),
        (uri, range) => services.entryFindings.saidAt(uri, range),
      ),
    'getCodeActions',
  );
}

export function formatterWhenAsked(services: TailshaftServices): Formatter {
  return {
    formatOnTypeOptions: { firstTriggerCharacter: '}', moreTriggerCharacter: ['\n'] },
    ...whenAsked<
      Omit<Formatter, 'formatOnTypeOptions'>,
      'formatDocument' | 'formatDocumentRange' | 'formatDocumentOnType'
    >(
      async () => new (await asked()).TailshaftFormatter(services),
      'formatDocument',
      'formatDocumentRange',
      'formatDocumentOnType',
    ),
  };
}

type Named = DefinitionProvider &
  ReferencesProvider &
  DocumentHighlightProvider &
  DocumentLinkProvider &
  RenameProvider;

export function namesWhenAsked(services: TailshaftServices): Named {
  return whenAsked<Named, keyof Named>(
    async () => new (await asked()).NameProviders(services),
    'getDefinition',
    'findReferences',
    'getDocumentHighlight',
    'getDocumentLinks',
    'rename',
    'prepareRename',
  );
}
