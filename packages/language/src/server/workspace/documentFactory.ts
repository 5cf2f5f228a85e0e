import {
  type AstNode,
  type Cancellation,
  DefaultLangiumDocumentFactory,
  type LangiumDocument,
  type ParseResult,
  type URI,
} from 'langium';
import type { TextDocument } from 'vscode-languageserver-textdocument';

/** Reads files; what is open in the editor counts before what is on disk, and a file that vanished reads as empty. */
export class DocumentFactory extends DefaultLangiumDocumentFactory {
  /** The text behind each parse, so that the syntax tree need not be asked for it. */
  private readonly parsed = new WeakMap<ParseResult, string>();

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

  protected override async getInitialText(uri: URI): Promise<string> {
    return this.textDocuments?.get(uri.toString())?.getText() ?? this.fileSystemProvider.readFile(uri);
  }

  protected override async getUpdatedText(
    document: LangiumDocument,
    open: TextDocument | undefined,
  ): Promise<string> {
    if (open) return open.getText();
    try {
      return await this.fileSystemProvider.readFile(document.uri);
    } catch {
      return '';
    }
  }
}
