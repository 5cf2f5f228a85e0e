import type { LangiumDocument } from 'langium';
import { describe, expect, it } from 'vitest';
import type { TextEdit } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { TailshaftFormatter } from '../../src/format/provider.js';
import { Specs } from '../edit/specs.js';
import { SPEC } from '../server/specs.js';

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

  it('leaves what stands behind the brace where it is', async () => {
    const typed = 'gear   G {\n mass   9kg\n}<|> gear   H { }\n';
    expect(await after(typed, brace)).toBe('gear G {\n  mass 9 kg\n} gear   H { }\n');
  });

  const enter: Ask = (formatter, document, offset) =>
    formatter.formatDocumentOnType(document, {
      textDocument: { uri: document.uri.toString() },
      options: OPTIONS,
      ch: '\n',
      position: document.textDocument.positionAt(offset),
    });
  const lines: [what: string, typed: string, then: string][] = [
    ['inside a block', 'gear G {\n<|>\n}\n', 'gear G {\n  \n}\n'],
    [
      'inside a block in a block',
      'gear G {\n  ratio 2:1 {\n<|>\n  }\n}\n',
      'gear G {\n  ratio 2:1 {\n    \n  }\n}\n',
    ],
    ['behind a block', 'gear G {\n  mass 9 kg\n}\n    <|>', 'gear G {\n  mass 9 kg\n}\n'],
    ['with its closing brace', 'gear G {\n    <|>}\n', 'gear G {\n}\n'],
    [
      'in the middle of a line',
      'gear G {\n  mass 9 kg\n<|>layout V-drive\n}\n',
      'gear G {\n  mass 9 kg\n  layout V-drive\n}\n',
    ],
    [
      'of a line part',
      'vessel V {\n  arrangement a {\n    shaftline Port {\n<|>\n    }\n  }\n}\n',
      'vessel V {\n  arrangement a {\n    shaftline Port {\n      \n    }\n  }\n}\n',
    ],
    [
      'where two blocks opened on one line',
      'vessel V { arrangement a {\n<|>\n} }\n',
      'vessel V { arrangement a {\n    \n} }\n',
    ],
    [
      'where a block above was left open',
      'gear G {\n  mass 9 kg\n\nvessel V {\n<|>\n}\n',
      'gear G {\n  mass 9 kg\n\nvessel V {\n  \n}\n',
    ],
    [
      'that goes on with a sentence',
      'vessel V {\n  accept rotation/same-hand on Port\n<|>because "x"\n}\n',
      'vessel V {\n  accept rotation/same-hand on Port\n      because "x"\n}\n',
    ],
    [
      'behind a whole sentence',
      'vessel V {\n  require speed at most 5 kn at idle ahead\n      <|>\n}\n',
      'vessel V {\n  require speed at most 5 kn at idle ahead\n  \n}\n',
    ],
    ['inside a comment, as it is', 'gear G {\n  /* one\n <|>two */\n}\n', 'gear G {\n  /* one\n two */\n}\n'],
    [
      'below a brace that was left behind',
      'vessel V {\n  hull planing {\n    mass 9 kg\n    }\n<|>\n}\n',
      'vessel V {\n  hull planing {\n    mass 9 kg\n  }\n  \n}\n',
    ],
    [
      'and an empty one below such a brace',
      'vessel V {\n  hull planing {\n    mass 9 kg\n    }\n\n<|>arrangement a {\n  }\n}\n',
      'vessel V {\n  hull planing {\n    mass 9 kg\n  }\n\n  arrangement a {\n  }\n}\n',
    ],
    ['with other line ends', 'gear G {\r\n<|>\r\n}\r\n', 'gear G {\r\n  \r\n}\r\n'],
  ];
  it.each(lines)('indents the line that Enter begins %s', async (_what, typed, then) => {
    expect(await after(typed, enter)).toBe(then);
  });

  it('indents each line of a laid out spec as the formatter did', async () => {
    for (const [index, line] of SPEC.split('\n').entries()) {
      const above = SPEC.split('\n').slice(0, index);
      const below = SPEC.split('\n').slice(index + 1);
      if (line.trim() === '') continue;
      const typed = [...above, `<|>${line.trim()}`, ...below].join('\n');
      expect(await after(typed, enter), line).toBe(SPEC);
    }
  });

  it('leaves everything alone when the brace closes nothing', async () => {
    const typed = 'gear   G { }\n  }<|>\ngear   H { }\n';
    expect(await after(typed, brace)).toBe('gear   G { }\n  }\ngear   H { }\n');
  });
});
