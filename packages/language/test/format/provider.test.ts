import type { LangiumDocument } from 'langium';
import { describe, expect, it } from 'vitest';
import type { TextEdit } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { TailshaftFormatter } from '../../src/format/provider.js';
import { Specs } from '../edit/specs.js';

const OPTIONS = { tabSize: 4, insertSpaces: false };

type Ask = (formatter: TailshaftFormatter, document: LangiumDocument, offset: number) => TextEdit[];

/** The text after formatting with the cursor, or one end of the selection, at `<|>`. */
async function after(marked: string, ask: Ask): Promise<string> {
  const offset = marked.indexOf('<|>');
  const specs = await Specs.read(marked.replace('<|>', ''));
  const edits = ask(new TailshaftFormatter(specs.core.language), specs.document, offset);
  return TextDocument.applyEdits(specs.document.textDocument, edits);
}

describe('formatting in the editor', () => {
  const messy = 'gear   G {\n mass   9kg\n   layout   V-drive<|>\n}\ngear   H { }\n';

  it('formats the whole document', async () => {
    const whole: Ask = (formatter, document) =>
      formatter.formatDocument(document, {
        textDocument: { uri: document.uri.toString() },
        options: OPTIONS,
      });
    expect(await after(messy, whole)).toBe('gear G {\n  mass 9 kg\n  layout V-drive\n}\ngear H { }\n');
  });

  it('formats the lines of a selection, and no other', async () => {
    const line: Ask = (formatter, document, offset) => {
      const end = document.textDocument.positionAt(offset);
      return formatter.formatDocumentRange(document, {
        textDocument: { uri: document.uri.toString() },
        options: OPTIONS,
        range: { start: { line: end.line, character: 5 }, end },
      });
    };
    expect(await after(messy, line)).toBe('gear   G {\n mass   9kg\n  layout V-drive\n}\ngear   H { }\n');
  });

  const brace: Ask = (formatter, document, offset) =>
    formatter.formatDocumentOnType(document, {
      textDocument: { uri: document.uri.toString() },
      options: OPTIONS,
      ch: '}',
      position: document.textDocument.positionAt(offset),
    });

  it('formats the block that a brace closes', async () => {
    const typed = 'gear   G {\n mass   9kg\n      }<|>\ngear   H { }\n';
    expect(await after(typed, brace)).toBe('gear G {\n  mass 9 kg\n}\ngear   H { }\n');
  });

  it('leaves everything alone when the brace closes nothing', async () => {
    const typed = 'gear   G { }\n  }<|>\ngear   H { }\n';
    expect(await after(typed, brace)).toBe('gear   G { }\n  }\ngear   H { }\n');
  });
});
