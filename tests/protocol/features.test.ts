import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type {
  CallHierarchyIncomingCall,
  CallHierarchyItem,
  CallHierarchyOutgoingCall,
  DocumentLink,
  InitializeResult,
  LinkedEditingRanges,
  SignatureHelp,
  TextEdit,
  WorkspaceEdit,
  WorkspaceSymbol,
} from 'vscode-languageserver-protocol';
import { applyEdits, editsFor } from '../clients/text-edits.js';
import { ProtocolClient } from './client.js';
import { typeErrors } from './message-types.js';
import { ABLE, FILES, PARTS, SPEC } from './specs.js';

/** Diagnostics are pushed to this client: it says nothing of asking for them. */
describe('each feature of the protocol', () => {
  const uri = (path: string) => client.uri(path);
  let client: ProtocolClient;
  let hello: InitializeResult;

  beforeAll(async () => {
    client = new ProtocolClient({
      ...FILES,
      [PARTS]: FILES[PARTS]!.replace('Alder 63 technical sheet, issue 4', 'sheets/alder-63.pdf'),
      'catalogue/sheets/alder-63.pdf': 'a sheet',
      'boats/small.shaft': 'import "../catalogue/parts"\n\nvessel Small { duty light }\n',
    });
    hello = await client.start(ABLE);
    await client.show(SPEC);
    await client.waitDiagnostics(uri(SPEC));
  });
  afterAll(async () => {
    const { broken, said, errors } = client.tap;
    client.end();
    expect({ broken, errors }).toEqual({ broken: [], errors: [] });
    expect(await typeErrors(said)).toEqual([]);
  });

  it('is told to the client', () => {
    expect(hello.capabilities).toMatchObject({
      callHierarchyProvider: true,
      linkedEditingRangeProvider: true,
      selectionRangeProvider: true,
      codeActionProvider: { resolveProvider: true },
      documentRangeFormattingProvider: { rangesSupport: true },
      workspace: {
        fileOperations: { willRename: { filters: [{}, {}] } },
        workspaceFolders: { supported: true },
      },
    });
    expect(hello.capabilities.diagnosticProvider).toBeUndefined();
  });

  it('says where a part is used, and with what margin', async () => {
    const [item] = await client.ask<CallHierarchyItem[]>(
      'textDocument/prepareCallHierarchy',
      SPEC,
      'gear Alder',
    );
    expect(item).toMatchObject({ name: 'Alder-63', uri: uri(PARTS) });
    const calls = await client.request<CallHierarchyIncomingCall[]>('callHierarchy/incomingCalls', { item });
    expect(calls.map(one => one.from.name)).toEqual([
      'Ternhaven proposed.Port',
      'Ternhaven proposed.Starboard',
    ]);
    expect(calls[0]!.from.detail).toMatch(/least margin [+−]\d+(\.\d+)? % \(\w+\/[\w-]+\); \d+ hold/);
    expect(calls[0]!.fromRanges).toEqual([client.rangeOf(SPEC, 'Alder-63')]);

    const [material] = await client.ask<CallHierarchyItem[]>(
      'textDocument/prepareCallHierarchy',
      SPEC,
      'material high',
      -1 + 13,
    );
    expect(material?.name).toBe('high-strength-stainless');
    const made = await client.request<CallHierarchyIncomingCall[]>('callHierarchy/incomingCalls', {
      item: material,
    });
    expect(made).toHaveLength(2);
  });

  it('says of which parts a line consists', async () => {
    const [item] = await client.ask<CallHierarchyItem[]>(
      'textDocument/prepareCallHierarchy',
      SPEC,
      'shaftline Port',
      12,
    );
    expect(item?.name).toBe('Ternhaven proposed.Port');
    const calls = await client.request<CallHierarchyOutgoingCall[]>('callHierarchy/outgoingCalls', { item });
    expect(calls.map(one => one.to.name)).toEqual(['Kittiwake-9', 'Alder-63', 'shaft', 'propeller']);
    expect(await client.request('callHierarchy/incomingCalls', { item })).toEqual([]);
  });

  it('types a local name in all its places', async () => {
    const linked = await client.ask<LinkedEditingRanges>(
      'textDocument/linkedEditingRange',
      SPEC,
      'arrangement prop',
    );
    // One place only: nothing to link.
    expect(linked).toBeNull();
    const path = 'revised.shaft';
    const text = FILES[SPEC]!.replace(/\}\s*$/, '  arrangement later revises proposed {\n  }\n}\n');
    client.write(path, text);
    await client.show(path);
    const both = await client.ask<LinkedEditingRanges>(
      'textDocument/linkedEditingRange',
      path,
      'arrangement prop',
    );
    expect(both.ranges).toHaveLength(2);
    await client.closeDocument(uri(path));
  });

  it('shows what a property takes while it is typed', async () => {
    const path = 'typed.shaft';
    client.write(path, 'engine Lapwing-2 {\n  low idle \n}\n');
    await client.show(path);
    const help = await client.ask<SignatureHelp>('textDocument/signatureHelp', path, 'low idle ');
    expect(help.signatures[0]!.label).toMatch(/^low idle </);
    expect(help.activeParameter).toBe(0);
    const [start, end] = help.signatures[0]!.parameters![0]!.label as [number, number];
    expect(help.signatures[0]!.label.slice(start, end)).toMatch(/unit/);
    await client.closeDocument(uri(path));
  });

  it('opens the whole computation', async () => {
    const of = await client.ask<{ title: string; markdown: string }>(
      'tailshaft/working',
      SPEC,
      'diameter 65',
      10,
    );
    expect(of.title).toContain('diameter');
    expect(of.markdown).toMatch(/^# /);
    expect(of.markdown).toContain('shafting/diameter');
    const line = await client.ask<{ markdown: string }>('tailshaft/working', SPEC, 'shaftline Port', 12);
    expect(line.markdown.length).toBeGreaterThan(of.markdown.length);
    expect(await client.ask('tailshaft/working', SPEC, 'import "cat')).toBeNull();
  });

  it('links imports, folders and sheets that lie beside the spec', async () => {
    const of = (path: string) =>
      client.request<DocumentLink[]>('textDocument/documentLink', { textDocument: { uri: uri(path) } });
    expect((await of(SPEC)).map(one => one.target)).toEqual([uri(PARTS)]);
    expect((await of(PARTS)).map(one => one.target)).toEqual([uri('catalogue/sheets/alder-63.pdf')]);
  });

  it('rewrites imports when files and folders are renamed', async () => {
    const renamed = (oldPath: string, newPath: string) =>
      client.request<WorkspaceEdit | null>('workspace/willRenameFiles', {
        files: [{ oldUri: uri(oldPath), newUri: uri(newPath) }],
      });
    const applied = (edit: WorkspaceEdit | null, path: string) =>
      applyEdits(client.text(path), editsFor(uri(path), edit));
    const folder = await renamed('catalogue', 'parts/2026');
    expect(applied(folder, SPEC)).toMatch(/^import "parts\/2026"/);
    expect(applied(folder, 'boats/small.shaft')).toMatch(/^import "..\/parts\/2026\/parts"/);
    const file = await renamed(PARTS, 'catalogue/all.shaft');
    expect(applied(file, 'boats/small.shaft')).toMatch(/^import "..\/catalogue\/all"/);
    expect(editsFor(uri(SPEC), file)).toEqual([]);
    const moved = await renamed('boats/small.shaft', 'small.shaft');
    expect(applied(moved, 'boats/small.shaft')).toMatch(/^import "catalogue\/parts"/);
    expect(await renamed('boats', 'ships')).toBeNull();
  });

  it('formats ranges, and the block that a brace closes', async () => {
    const path = 'messy.shaft';
    client.write(path, 'engine A {\n      fuel diesel\n}\nengine B {\n      fuel diesel\n}\n');
    await client.show(path);
    const options = { tabSize: 2, insertSpaces: true };
    const textDocument = { uri: uri(path) };
    const second = { start: { line: 3, character: 0 }, end: { line: 5, character: 1 } };
    const applied = (edits: TextEdit[]) => applyEdits(client.text(path), edits);
    const one = await client.request<TextEdit[]>('textDocument/rangesFormatting', {
      textDocument,
      ranges: [second],
      options,
    });
    expect(applied(one)).toBe('engine A {\n      fuel diesel\n}\nengine B {\n  fuel diesel\n}\n');
    const typed = await client.request<TextEdit[]>('textDocument/onTypeFormatting', {
      textDocument,
      position: { line: 2, character: 1 },
      ch: '}',
      options,
    });
    expect(applied(typed)).toBe('engine A {\n  fuel diesel\n}\nengine B {\n      fuel diesel\n}\n');
    await client.closeDocument(uri(path));
  });

  it('indents the line that Enter begins, and moves nothing else', async () => {
    const { documentOnTypeFormattingProvider } = hello.capabilities;
    expect(documentOnTypeFormattingProvider).toEqual({
      firstTriggerCharacter: '}',
      moreTriggerCharacter: ['\n'],
    });
    const path = 'begun.shaft';
    client.write(path, 'engine   A {\n      fuel diesel\nlow idle 650 rpm\n}\n');
    await client.show(path);
    const edits = await client.request<TextEdit[]>('textDocument/onTypeFormatting', {
      textDocument: { uri: uri(path) },
      position: { line: 2, character: 0 },
      ch: '\n',
      options: { tabSize: 2, insertSpaces: true },
    });
    expect(applyEdits(client.text(path), edits)).toBe(
      'engine   A {\n      fuel diesel\n  low idle 650 rpm\n}\n',
    );
    await client.closeDocument(uri(path));
  });

  it('shows the table of a standard size', async () => {
    await client.show(PARTS);
    const hover = await client.ask<{ contents: { value: string } }>(
      'textDocument/hover',
      PARTS,
      'input housing SAE',
    );
    expect(hover.contents.value).toContain('**flywheel housing SAE-3**');
    expect(hover.contents.value).toContain('| SAE-4 |');
  });

  it('finds names of the whole workspace', async () => {
    const found = await client.request<WorkspaceSymbol[]>('workspace/symbol', { query: 'Alder' });
    expect(found.map(one => one.name)).toEqual(['Alder-63']);
  });

  it('answers what editors ask all day', async () => {
    const textDocument = { uri: uri(SPEC) };
    const range = { start: { line: 0, character: 0 }, end: { line: 20, character: 0 } };
    for (const [method, more] of [
      ['semanticTokens/full', {}],
      ['semanticTokens/range', { range }],
      ['inlayHint', { range }],
      ['codeLens', {}],
      ['documentSymbol', {}],
      ['foldingRange', {}],
      ['selectionRange', { positions: [client.at(SPEC, 'diameter')] }],
      ['completion', { position: client.at(SPEC, 'diameter ') }],
      ['definition', { position: client.at(SPEC, 'gear Alder') }],
      ['references', { position: client.at(SPEC, 'gear Alder'), context: { includeDeclaration: true } }],
      ['documentHighlight', { position: client.at(SPEC, 'gear Alder') }],
      ['prepareRename', { position: client.at(SPEC, 'gear Alder') }],
      ['formatting', { options: { tabSize: 2, insertSpaces: true } }],
    ] as const) {
      const answer = await client.request(`textDocument/${method}`, { textDocument, ...more });
      expect(answer, method).not.toBeNull();
    }
  });

  it('asks for hints and lenses again when another file changes what they say', async () => {
    await client.show(PARTS);
    const before = client.refreshed.length;
    await client.replace(PARTS, 'rated medium 0.18 kW/rpm', 'rated medium 0.017 kW/rpm');
    await client.waitDiagnostics(uri(SPEC), found =>
      found.some(one => one.code === 'capacity/gear-input-torque'),
    );
    await expect
      .poll(() => client.refreshed.slice(before))
      .toEqual(expect.arrayContaining(['codeLens', 'inlayHint']));
  });

  it('forgets what was found in a folder that leaves the workspace', async () => {
    await client.notify('workspace/didChangeWorkspaceFolders', {
      event: { added: [], removed: [{ uri: uri('').replace(/\/$/, ''), name: 'workspace' }] },
    });
    await expect
      .poll(
        async () => (await client.request<WorkspaceSymbol[]>('workspace/symbol', { query: 'Small' })).length,
      )
      .toBe(0);
  });
});
