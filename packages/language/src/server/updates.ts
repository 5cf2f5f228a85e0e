import { Emitter, URI } from 'langium';
import type { DocumentUpdateHandler, LangiumSharedServices } from 'langium/lsp';
import {
  DidChangeWatchedFilesNotification,
  type DidChangeWatchedFilesParams,
  FileChangeType,
  type TextDocumentChangeEvent,
} from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { EXTENSION, isWithin } from '../project/imports.js';
import type { TailshaftServices } from './services.js';
import { belongs } from './workspace/belongs.js';

/** Takes what the client tells of changed texts and files, and has it built. */
export class Updates implements DocumentUpdateHandler {
  private readonly watched = new Emitter<DidChangeWatchedFilesParams>();
  readonly onWatchedFilesChange = this.watched.event;

  constructor(
    services: LangiumSharedServices,
    private readonly language: () => TailshaftServices,
  ) {
    let dynamic = false;
    services.lsp.LanguageServer.onInitialize(params => {
      dynamic = params.capabilities.workspace?.didChangeWatchedFiles?.dynamicRegistration === true;
    });
    services.lsp.LanguageServer.onInitialized(() => {
      if (!dynamic) return;
      const watchers = [{ globPattern: `**/*${EXTENSION}` }];
      void services.lsp.Connection?.client.register(DidChangeWatchedFilesNotification.type, { watchers });
    });
  }

  didChangeContent({ document }: TextDocumentChangeEvent<TextDocument>): void {
    const uri = URI.parse(document.uri);
    const { project, queue } = this.language();
    if (belongs(uri, project.roots)) queue.submit([uri]);
  }

  /** What was not saved is gone: the file on disk counts again, or nothing where it is no file of the workspace. */
  didCloseDocument({ document }: TextDocumentChangeEvent<TextDocument>): void {
    const uri = URI.parse(document.uri);
    const { project, queue } = this.language();
    if (project.roots.some(root => isWithin(root, uri))) queue.submit([uri]);
    else queue.submit([], [uri]);
  }

  didChangeWatchedFiles(params: DidChangeWatchedFilesParams): void {
    this.watched.fire(params);
    const of = (deleted: boolean) =>
      params.changes
        .filter(change => (change.type === FileChangeType.Deleted) === deleted)
        .map(change => URI.parse(change.uri));
    this.language().queue.submit(of(false), of(true));
  }
}
