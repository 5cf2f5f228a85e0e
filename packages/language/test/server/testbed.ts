import { type LangiumDocument, URI } from 'langium';
import type { Diagnostic, Position } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { createTailshaftServices } from '../../src/server/module.js';
import type { TailshaftServices } from '../../src/server/services.js';
import { FOLDER, MemoryFiles, uriOf } from './memory-files.js';

/** The services with open texts, without a connection: for tests of single features. */
export class Testbed {
  readonly files: MemoryFiles;
  readonly services: TailshaftServices;
  readonly failures: string[] = [];

  constructor(files: Readonly<Record<string, string>> = {}) {
    this.files = new MemoryFiles(files);
    const { shared, language } = createTailshaftServices({
      fileSystemProvider: () => this.files,
      connection: {
        console: {
          error: (message: string) => this.failures.push(message),
          info: () => {},
        },
      } as never,
    });
    this.services = language;
    language.project.roots = [URI.parse(FOLDER)];
    language.project.today = () => '2026-06-01';
    shared.workspace.TextDocuments.onDidChangeContent(change =>
      shared.lsp.DocumentUpdateHandler.didChangeContent?.(change),
    );
    void shared.workspace.WorkspaceManager.initializeWorkspace([]);
  }

  /** Opens a text, or puts another text in its place, and waits until it is checked. */
  async open(text: string, path = 'ternhaven.shaft'): Promise<LangiumDocument> {
    const { TextDocuments, LangiumDocuments } = this.services.shared.workspace;
    TextDocuments.set(TextDocument.create(uriOf(path), 'tailshaft', 1, text));
    await this.services.queue.settled();
    if (this.failures.length > 0) throw new Error(this.failures.join('\n'));
    return LangiumDocuments.getDocument(URI.parse(uriOf(path)))!;
  }
}

/** A text with one `<|>` in it, taken apart. */
export function withCursor(marked: string): { text: string; offset: number } {
  const offset = marked.indexOf('<|>');
  if (offset < 0) throw new Error('the text has no <|>');
  return { text: marked.replace('<|>', ''), offset };
}

export function positionOf(document: LangiumDocument, offset: number): Position {
  return document.textDocument.positionAt(offset);
}

/** `3:5 error text/value: message`, one a line. */
export function listed(diagnostics: readonly Diagnostic[] | undefined): string {
  const severity = ['', 'error', 'warning', 'information', 'hint'];
  return (diagnostics ?? [])
    .map(one => {
      const { line, character } = one.range.start;
      return `${line + 1}:${character + 1} ${severity[one.severity ?? 0]} ${one.code}: ${one.message}`;
    })
    .join('\n');
}
