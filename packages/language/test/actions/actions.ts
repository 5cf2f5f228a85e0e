import { URI } from 'langium';
import { type CodeAction, TextDocumentEdit } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { CodeActions } from '../../src/actions/provider.js';
import { Specs } from '../edit/specs.js';
import { uriOf } from '../server/memory-files.js';

/** What is offered at `<|>` of the first file, and what comes of it. */
export class Offers {
  private constructor(
    readonly specs: Specs,
    readonly actions: readonly CodeAction[],
  ) {}

  static async at(files: string | Record<string, string>, ...only: string[]): Promise<Offers> {
    const all: Record<string, string> =
      typeof files === 'string' ? { 'ternhaven.shaft': files } : { ...files };
    const [first] = Object.keys(all);
    const offset = all[first!]!.indexOf('<|>');
    all[first!] = all[first!]!.replace('<|>', '');
    const specs = await Specs.read(all);
    const { document, core } = specs;
    const position = document.textDocument.positionAt(Math.max(0, offset));
    const provider = new CodeActions({ project: core.language.project, shared: core.shared as never });
    const actions = await provider.getCodeActions(document, {
      textDocument: { uri: document.uri.toString() },
      range: { start: position, end: offset < 0 ? document.textDocument.positionAt(1e9) : position },
      context: { diagnostics: [], ...(only.length > 0 ? { only } : {}) },
    });
    return new Offers(specs, actions);
  }

  get titles(): string {
    return this.actions.map(one => `${one.isPreferred ? '* ' : ''}${one.title}`).join('\n');
  }

  /** The first file, or the named one, after the action whose title begins so. */
  after(title: string, path?: string): string {
    const action = this.actions.find(one => one.title.startsWith(title));
    if (!action) throw new Error(`not offered: ${title}\n${this.titles}`);
    const uri = path ? uriOf(path) : this.specs.document.uri.toString();
    const text = this.specs.core.shared.workspace.LangiumDocuments.getDocument(URI.parse(uri))!.textDocument;
    const edits = (action.edit?.documentChanges ?? [])
      .filter(TextDocumentEdit.is)
      .filter(one => one.textDocument.uri === uri)
      .flatMap(one => one.edits as { range: never; newText: string }[]);
    return TextDocument.applyEdits(text, edits);
  }
}
