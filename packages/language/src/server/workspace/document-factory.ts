import {
  type AstNode,
  Cancellation,
  DefaultLangiumDocumentFactory,
  DocumentState,
  type LangiumDocument,
  type ParseResult,
  type URI,
} from 'langium';
import type { TextDocument } from 'vscode-languageserver-textdocument';

/** Reads files; what is open in the editor counts before what is on disk, and a file that vanished reads as empty. */
export class DocumentFactory extends DefaultLangiumDocumentFactory {
  /** The text behind each parse, so that the syntax tree need not be asked for it. */
  private readonly parsed = new WeakMap<ParseResult, string>();
  private readonly unreadable = new WeakSet<LangiumDocument>();

  override async update<T extends AstNode = AstNode>(
    document: LangiumDocument<T>,
    token: Cancellation.CancellationToken,
  ): Promise<LangiumDocument<T>> {
    const open = this.textDocuments?.get(document.uri.toString());
    const text = await this.getUpdatedText(document, open);
    const textDocument = open ? { value: open } : { get: this.createTextDocumentGetter(document.uri, text) };
    Object.defineProperty(document, 'textDocument', { ...textDocument, configurable: true });
    if (this.parsed.get(document.parseResult) !== text) {
      document.parseResult = await this.parseAsync<T>(document.uri, text, token);
      Object.assign(document.parseResult.value, { $document: document });
      this.parsed.set(document.parseResult, text);
    }
    return document;
  }

  /** Reads a document anew whose file is known to have changed. Says whether there is anything to read. */
  async freshen(document: LangiumDocument): Promise<boolean> {
    if (document.state === DocumentState.Changed) {
      await this.update(document, Cancellation.CancellationToken.None);
      document.state = DocumentState.Parsed;
    }
    return !this.unreadable.has(document);
  }

  protected override async getInitialText(uri: URI): Promise<string> {
    return this.textDocuments?.get(uri.toString())?.getText() ?? this.fileSystemProvider.readFile(uri);
  }

  protected override async getUpdatedText(
    document: LangiumDocument,
    open: TextDocument | undefined,
  ): Promise<string> {
    this.unreadable.delete(document);
    if (open) return open.getText();
    try {
      return await this.fileSystemProvider.readFile(document.uri);
    } catch {
      this.unreadable.add(document);
      return '';
    }
  }
}
