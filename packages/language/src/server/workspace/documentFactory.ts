import { DefaultLangiumDocumentFactory, type LangiumDocument, type URI } from 'langium';
import type { TextDocument } from 'vscode-languageserver-textdocument';

/** Reads files; what is open in the editor counts before what is on disk, and a file that vanished reads as empty. */
export class DocumentFactory extends DefaultLangiumDocumentFactory {
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
