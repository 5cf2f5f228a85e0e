import {
  createDefaultCoreModule,
  createDefaultSharedCoreModule,
  type DeepPartial,
  inject,
  type Module,
} from 'langium';
import {
  DefaultFuzzyMatcher,
  DefaultNodeKindProvider,
  type LangiumLSPServices,
  type LangiumSharedLSPServices,
  type LangiumSharedServices,
  NormalizedNotebookDocuments,
} from 'langium/lsp';
import { TailshaftGeneratedModule, TailshaftGeneratedSharedModule } from '../generated/module.js';
import { Project } from '../project/project.js';
import { tailshaftCoreModule } from '../services/module.js';
import { CodeLenses } from './code-lenses.js';
import { DocumentSymbols } from './document-symbols.js';
import { EntryFindings } from './entry-findings.js';
import { FoldingRanges } from './folding-ranges.js';
import { InlayHints } from './inlay-hints.js';
import { TailshaftLanguageServer } from './language-server.js';
import { pagesOfClient } from './rule-texts.js';
import { SemanticTokenColours } from './semantic-tokens.js';
import type { ServerAdded, ServerContext, TailshaftServices } from './services.js';
import { Settings } from './settings.js';
import { Updates } from './updates.js';
import { ProjectValidator } from './validator.js';
import {
  actionsWhenAsked,
  completionsWhenAsked,
  formatterWhenAsked,
  hoversWhenAsked,
  namesWhenAsked,
} from './when-asked.js';
import { BuildQueue } from './workspace/build-queue.js';
import { Builder } from './workspace/builder.js';
import { Days } from './workspace/days.js';
import { DocumentFactory } from './workspace/document-factory.js';
import { NoIndex, NoLinks, noScopes } from './workspace/no-references.js';
import { WorkspaceScan } from './workspace/scan.js';
import { TextSnapshots } from './workspace/snapshots.js';
import { WorkspaceSymbols } from './workspace-symbols.js';

/** All services of the editor server: the language, and one provider for each request of the protocol. */
export function createTailshaftServices(context: ServerContext): {
  shared: LangiumSharedServices;
  language: TailshaftServices;
} {
  const log = (what: string, error: unknown) => {
    const said = error instanceof Error ? (error.stack ?? error.message) : String(error);
    context.connection?.console.error(`While ${what}: ${said}`);
  };
  // Services are made when first asked for, so each of these may name those below it.
  const shared: LangiumSharedServices = inject(
    createDefaultSharedCoreModule(context),
    TailshaftGeneratedSharedModule,
    sharedModule(context, () => language),
  );
  const project = new Project(shared);
  const language: TailshaftServices = inject(
    createDefaultCoreModule({ shared }),
    TailshaftGeneratedModule,
    tailshaftCoreModule(project),
    serverModule(shared, log, context),
  ) as TailshaftServices;
  shared.ServiceRegistry.register(language);
  project.freshen = document =>
    (shared.workspace.LangiumDocumentFactory as DocumentFactory).freshen(document);
  (shared.workspace.DocumentBuilder as Builder).background = language.queue;
  (shared.workspace.WorkspaceManager as WorkspaceScan).background = language.queue;
  return { shared, language };
}

function sharedModule(
  context: ServerContext,
  language: () => TailshaftServices,
): Module<LangiumSharedServices, LangiumSharedLSPServices & DeepPartial<LangiumSharedServices>> {
  return {
    lsp: {
      Connection: () => context.connection!,
      LanguageServer: services => new TailshaftLanguageServer(services, language, context.version ?? '0.0.0'),
      DocumentUpdateHandler: services => new Updates(services, language),
      NodeKindProvider: () => new DefaultNodeKindProvider(),
      FuzzyMatcher: () => new DefaultFuzzyMatcher(),
      WorkspaceSymbolProvider: services => new WorkspaceSymbols(services.lsp.FuzzyMatcher, language),
    },
    workspace: {
      TextDocuments: () => new TextSnapshots(),
      NotebookDocuments: services => new NormalizedNotebookDocuments(services.workspace.TextDocuments),
      LangiumDocumentFactory: services => new DocumentFactory(services),
      DocumentBuilder: services => new Builder(services, () => language().project),
      IndexManager: () => new NoIndex(),
      WorkspaceManager: services =>
        new WorkspaceScan(
          services,
          () => language().project,
          message => context.connection?.console.info(message),
        ),
    },
  };
}

function serverModule(
  shared: LangiumSharedServices,
  log: ServerAdded['log'],
  context: ServerContext,
): Module<TailshaftServices, DeepPartial<TailshaftServices>> {
  const { workspace } = shared;
  let names: ReturnType<typeof namesWhenAsked> | undefined;
  const namesOf = (services: TailshaftServices) => {
    names ??= namesWhenAsked(services);
    return names;
  };
  const lsp: Module<TailshaftServices, LangiumLSPServices['lsp']> = {
    HoverProvider: hoversWhenAsked,
    CompletionProvider: completionsWhenAsked,
    InlayHintProvider: services => new InlayHints(services),
    CodeLensProvider: services => new CodeLenses(services),
    SemanticTokenProvider: services => new SemanticTokenColours(services),
    DocumentSymbolProvider: services => new DocumentSymbols(services),
    FoldingRangeProvider: () => new FoldingRanges(),
    Formatter: formatterWhenAsked,
    CodeActionProvider: actionsWhenAsked,
    DefinitionProvider: namesOf,
    ReferencesProvider: namesOf,
    DocumentHighlightProvider: namesOf,
    DocumentLinkProvider: namesOf,
    RenameProvider: namesOf,
  };
  return {
    settings: () => new Settings(context.pages),
    log: () => log,
    pageOf: () => pagesOfClient(context, log),
    queue: () =>
      new BuildQueue(
        workspace.DocumentBuilder as Builder,
        workspace.WorkspaceLock,
        () => workspace.WorkspaceManager,
        log,
      ),
    days: services => new Days(services.project, workspace.LangiumDocuments, services.queue),
    entryFindings: services => new EntryFindings(services),
    validation: { DocumentValidator: services => new ProjectValidator(services) },
    references: { ScopeComputation: () => noScopes, Linker: services => new NoLinks(services) },
    lsp,
    shared: () => shared,
  };
}
