import { NormalizedTextDocuments } from 'langium/lsp';
import { TextDocument } from 'vscode-languageserver-textdocument';

/**
 * Open texts as the client has them. A change makes a new object and leaves the old one as it was: whoever parsed a
 * text keeps positions and version of just that text, also while the author types on.
 */
export class TextSnapshots extends NormalizedTextDocuments<TextDocument> {
  constructor() {
    super({
      create: TextDocument.create,
      update: (before, changes, version) => {
        const next = TextDocument.create(before.uri, before.languageId, before.version, before.getText());
        return TextDocument.update(next, changes, version);
      },
    });
  }
}
