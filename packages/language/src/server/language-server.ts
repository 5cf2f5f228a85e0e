import type { LangiumSharedServices } from 'langium/lsp';
import { DefaultLanguageServer } from 'langium/lsp';
import type { InitializedParams, InitializeParams, InitializeResult } from 'vscode-languageserver';
import { addedCapabilities } from './added.js';
import type { TailshaftServices } from './services.js';

/** Says hello to the client: what this server can do, under which name and version. */
export class TailshaftLanguageServer extends DefaultLanguageServer {
  constructor(
    shared: LangiumSharedServices,
    private readonly language: () => TailshaftServices,
    private readonly version: string,
  ) {
    super(shared);
  }

  protected override buildInitializeResult(params: InitializeParams): InitializeResult {
    const { capabilities } = super.buildInitializeResult(params);
    const added = addedCapabilities(params);
    return {
      capabilities: {
        ...capabilities,
        ...added,
        workspace: { ...capabilities.workspace, ...added.workspace },
      },
      serverInfo: { name: 'tailshaft', version: this.version },
    };
  }

  protected override fireInitializeOnDefaultServices(params: InitializeParams): void {
    this.language().settings.initialize(params);
    this.services.workspace.WorkspaceManager.initialize(params);
  }

  protected override fireInitializedOnDefaultServices(params: InitializedParams): void {
    const connection = this.services.lsp.Connection;
    const { log, settings } = this.language();
    if (connection) settings.initialized(connection).catch(error => log('asking for the settings', error));
    this.services.workspace.WorkspaceManager.initialized(params).catch(error =>
      log('reading the workspace', error),
    );
  }
}
