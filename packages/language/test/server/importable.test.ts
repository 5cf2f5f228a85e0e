import { afterEach, describe, expect, it } from 'vitest';
import type {
  CodeAction,
  CompletionItem,
  CompletionList,
  TextDocumentEdit,
  TextEdit,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { uriOf } from './memory-files.js';
import { CATALOGUE, VESSEL } from './specs.js';
import { withCursor } from './testbed.js';
import { Wire } from './wire.js';

const PATH = 'boats/ternhaven.shaft';
let wire: Wire;
afterEach(() => wire.stop());

/** A client that opened just one spec of a workspace whose other files have been read. */
async function opened(marked: string, files: Record<string, string>) {
  const { text, offset } = withCursor(marked);
  wire = await Wire.start(files);
  await wire.open(PATH, text);
  await wire.settle();
  const document = TextDocument.create(uriOf(PATH), 'tailshaft', 1, text);
  return { text, document, position: document.positionAt(offset) };
}

const textDocument = { uri: uriOf(PATH) };
const after = (document: TextDocument, edits: readonly TextEdit[]) =>
  TextDocument.applyEdits(document, [...edits]);

describe('names of files that are not imported', () => {
  const complete = async (marked: string, files: Record<string, string>) => {
    const { document, position } = await opened(marked, files);
    const list = await wire.client.sendRequest<CompletionList>('textDocument/completion', {
      textDocument,
      position,
    });
    const taken = (item: CompletionItem) =>
      after(document, [item.textEdit as TextEdit, ...(item.additionalTextEdits ?? [])]);
    return { items: list.items, taken };
  };
  const typing = (words: string) => VESSEL.replace(words, '<|>');

  it('are offered behind those in sight, and bring their import', async () => {
    const small = 'gear Stint-2 "small" {\n  ratio 2:1 { clutch A output same ahead continuous }\n}\n';
    const { items, taken } = await complete(
      `import "own"\n${typing('Alder-63 ratio 2.04:1 ahead clutch A')}`,
      {
        'boats/own.shaft': small,
        'parts/gears.shaft': CATALOGUE,
      },
    );
    expect(items.slice(0, 3).map(one => one.label)).toEqual(['Stint-2', 'Alder-63', 'Rowan-7']);
    expect(items[0]!.additionalTextEdits).toBeUndefined();
    expect(items[1]!.detail).toMatch(
      /cannot tell · down-angle reduction gear · imports "\.\.\/parts\/gears"$/,
    );
    expect(taken(items[1]!)).toMatch(
      /^import "own"\nimport "\.\.\/parts\/gears"\nvessel [\s\S]*gear Alder-63\n/,
    );
  });

  it('with the margin where the line can be judged', async () => {
    const engines = CATALOGUE.slice(0, CATALOGUE.indexOf('gear Alder'));
    const { items } = await complete(
      `import "../parts/engines"\n${typing('Alder-63 ratio 2.04:1 ahead clutch A')}`,
      { 'parts/engines.shaft': engines, 'gears.shaft': CATALOGUE.slice(engines.length) },
    );
    expect(items[0]!.detail).toMatch(/^2\.04:1 clutch A: holds.* · imports "\.\.\/gears"$/);
  });

  it('of shaft material too, and an import is written at the beginning of a file that has none', async () => {
    const { items, taken } = await complete(typing('high-strength-stainless'), { 'parts.shaft': CATALOGUE });
    expect(items[0]!.label).toBe('high-strength-stainless');
    expect(taken(items[0]!)).toMatch(/^import "\.\.\/parts"\n\nvessel /);
  });

  it('are not offered twice when their file is seen already', async () => {
    const { items } = await complete(`import "../parts"\n${typing('Alder-63 ratio 2.04:1 ahead clutch A')}`, {
      'parts/gears.shaft': CATALOGUE,
    });
    expect(items.filter(one => one.label === 'Alder-63')).toHaveLength(1);
    expect(items.find(one => one.label === 'Alder-63')!.additionalTextEdits).toBeUndefined();
  });
});

describe('a name that is declared in a file that is not imported', () => {
  const fixes = async (marked: string, files: Record<string, string>) => {
    const { document, position } = await opened(marked, files);
    const actions = await wire.client.sendRequest<CodeAction[]>('textDocument/codeAction', {
      textDocument,
      range: { start: position, end: position },
      context: {
        diagnostics: wire.published.findLast(one => one.uri === uriOf(PATH))?.diagnostics ?? [],
        only: ['quickfix'],
      },
    });
    const imports = actions.filter(one => one.title.startsWith('Import '));
    const applied = imports.map(one =>
      after(
        document,
        (one.edit!.documentChanges as TextDocumentEdit[]).flatMap(file => file.edits as TextEdit[]),
      ),
    );
    return { imports, applied };
  };

  it('is found by the import that a fix writes, and the finding goes', async () => {
    const marked = VESSEL.replace('gear Alder', 'gear <|>Alder');
    const { imports, applied } = await fixes(marked, { 'parts/all.shaft': CATALOGUE });
    expect(imports.map(one => one.title)).toEqual(['Import "../parts/all", which declares gear Alder-63']);
    expect(imports[0]!.isPreferred).toBe(true);
    expect(imports[0]!.diagnostics?.map(one => one.code)).toEqual(['text/unknown-name']);
    expect(wire.codes(PATH)).toContain('text/unknown-name');
    await wire.type(PATH, applied[0]!);
    await wire.settle();
    expect(wire.codes(PATH)).toEqual([]);
  });

  it('is left to the author when more than one file declares it', async () => {
    const marked = VESSEL.replace('material high', 'material <|>high');
    const { imports } = await fixes(marked, { 'a.shaft': CATALOGUE, 'b.shaft': CATALOGUE });
    expect(imports.map(one => one.title)).toEqual([
      'Import "../a", which declares shaft material high-strength-stainless',
      'Import "../b", which declares shaft material high-strength-stainless',
    ]);
    expect(imports.some(one => one.isPreferred)).toBe(false);
  });

  it('needs no fix where it is imported', async () => {
    const marked = `import "../all"\n${VESSEL.replace('gear Alder', 'gear <|>Alder')}`;
    expect((await fixes(marked, { 'all.shaft': CATALOGUE })).imports).toEqual([]);
  });
});
