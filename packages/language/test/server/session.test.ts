import { afterEach, describe, expect, it } from 'vitest';
import {
  CancellationTokenSource,
  type CompletionList,
  CompletionRequest,
  DidChangeConfigurationNotification,
  FileChangeType,
  type Hover,
  HoverRequest,
  InlayHintRequest,
  LSPErrorCodes,
  SelectionRangeRequest,
  SemanticTokensRequest,
} from 'vscode-languageserver/node';
import { FOLDER, uriOf } from './memory-files.js';
import { CATALOGUE, SPEC, VESSEL, withChange } from './specs.js';
import { Wire } from './wire.js';

let wire: Wire;
afterEach(() => wire.stop());

const SPEC_PATH = 'ternhaven.shaft';
const at = (path: string, line: number, character: number) => ({
  textDocument: { uri: uriOf(path) },
  position: { line, character },
});
const IMPORTING = `import "parts"\n${VESSEL}`;

describe('the server says hello', () => {
  it('with its name, and with what it can do', async () => {
    wire = await Wire.start();
    expect(wire.hello.serverInfo).toEqual({ name: 'tailshaft', version: '1.2.3' });
    const { capabilities } = wire.hello;
    expect(capabilities.textDocumentSync).toMatchObject({ change: 2, openClose: true });
    expect(capabilities).toMatchObject({
      hoverProvider: true,
      documentSymbolProvider: true,
      foldingRangeProvider: true,
      selectionRangeProvider: true,
      inlayHintProvider: { resolveProvider: false },
      codeLensProvider: { resolveProvider: false },
      workspaceSymbolProvider: { resolveProvider: false },
      completionProvider: { triggerCharacters: [' ', '[', '"', '/'] },
      semanticTokensProvider: { full: { delta: false }, range: true },
      workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
    });
  });

  it('watches specs only', async () => {
    wire = await Wire.start({}, { workspace: { didChangeWatchedFiles: { dynamicRegistration: true } } });
    await wire.settle();
    const watching = wire.registered.filter(one => one.method === 'workspace/didChangeWatchedFiles');
    expect(watching.map(one => one.registerOptions)).toEqual([{ watchers: [{ globPattern: '**/*.shaft' }] }]);
  });
});

describe('diagnostics', () => {
  it('name the version of the text they speak of, and the last text always gets its own', async () => {
    wire = await Wire.start();
    await wire.open(SPEC_PATH, SPEC);
    let last = 0;
    for (let n = 0; n < 30; n++)
      last = await wire.type(SPEC_PATH, withChange('650 rpm', `6${'5'.repeat(n % 3)} rp`));
    await wire.settle();
    const versions = wire.published.map(one => one.version!);
    expect(versions.at(-1)).toBe(last);
    expect([...versions].sort((a, b) => a - b)).toEqual(versions);
    expect(wire.codes(SPEC_PATH)).toEqual(['units/unit-needed']);
  });

  it('come also for closed files of the workspace, without a version', async () => {
    wire = await Wire.start({
      'broken.shaft': 'gear {',
      'sound.shaft': CATALOGUE,
      'node_modules/a/broken.shaft': 'gear {',
      '.git/broken.shaft': 'gear {',
      'notes.txt': 'gear {',
    });
    await wire.settle();
    expect(wire.published.map(one => one.uri)).toEqual([uriOf('broken.shaft')]);
    expect(wire.published[0]!.version).toBeUndefined();
  });

  it('follow the catalogue: exactly the files that see a change are checked again', async () => {
    wire = await Wire.start({ 'parts/catalogue.shaft': CATALOGUE });
    await wire.open(SPEC_PATH, IMPORTING);
    await wire.open('other.shaft', SPEC);
    await wire.open('parts/catalogue.shaft', CATALOGUE);
    await wire.settle();
    expect(wire.codes(SPEC_PATH)).toEqual([]);
    await wire.type('parts/catalogue.shaft', withChange('rated medium 0.18', 'rated medium 0.1', CATALOGUE));
    const published = await wire.quiet();
    expect(new Set(published.map(one => one.uri))).toEqual(
      new Set([uriOf(SPEC_PATH), uriOf('parts/catalogue.shaft')]),
    );
    expect(wire.codes(SPEC_PATH)).toContain('capacity/gear-input-torque');
  });

  it('follow files that come, change and go', async () => {
    wire = await Wire.start({ 'hull.shaft': '' });
    await wire.open(SPEC_PATH, IMPORTING);
    await wire.settle();
    expect(wire.codes(SPEC_PATH)).toContain('text/import');
    wire.files.texts.set(uriOf('parts/catalogue.shaft'), CATALOGUE);
    await wire.fileChanged('parts/catalogue.shaft', FileChangeType.Created);
    await wire.settle();
    expect(wire.codes(SPEC_PATH)).toEqual([]);
    wire.files.texts.set(uriOf('parts/catalogue.shaft'), withChange('0.18 kW/rpm', '0.1 kW/rpm', CATALOGUE));
    await wire.fileChanged('parts/catalogue.shaft', FileChangeType.Changed);
    await wire.settle();
    expect(wire.codes(SPEC_PATH)).toContain('capacity/gear-input-torque');
    wire.files.texts.delete(uriOf('parts/catalogue.shaft'));
    await wire.fileChanged('parts/catalogue.shaft', FileChangeType.Deleted);
    await wire.settle();
    expect(wire.codes(SPEC_PATH)).toContain('text/import');
  });

  it('reach closed files that see a change', async () => {
    wire = await Wire.start({ 'parts/catalogue.shaft': CATALOGUE, [SPEC_PATH]: IMPORTING });
    await wire.settle();
    expect(wire.codes(SPEC_PATH)).toBeUndefined();
    await wire.open('parts/catalogue.shaft', withChange('0.18 kW/rpm', '0.1 kW/rpm', CATALOGUE));
    await wire.settle();
    expect(wire.codes(SPEC_PATH)).toContain('capacity/gear-input-torque');
    await wire.close('parts/catalogue.shaft');
    await wire.settle();
    expect(wire.codes(SPEC_PATH)).toEqual([]);
  });

  it('go with a text that was never a file', async () => {
    wire = await Wire.start({}, {}, { folders: false });
    await wire.open('untitled.shaft', 'gear {');
    await wire.settle();
    expect(wire.codes('untitled.shaft')).not.toEqual([]);
    await wire.close('untitled.shaft');
    await wire.settle();
    expect(wire.codes('untitled.shaft')).toEqual([]);
  });

  it('link to the pages that the client says it has, those of the text too', async () => {
    wire = await Wire.start({}, {}, { given: { pages: 'pages:/manual/' } });
    await wire.open(SPEC_PATH, `${withChange('hand left', 'hand right')}\n}`);
    await wire.settle();
    const links = wire.published.at(-1)!.diagnostics.map(one => one.codeDescription?.href);
    expect(links).toContain('pages:/manual/rotation/propeller-hand.md');
    expect(links).toContain('pages:/manual/text/brace.md');
  });

  it('link to the pages of the rules where the settings say where these are', async () => {
    const capabilities = { workspace: { configuration: true } };
    wire = await Wire.start({}, capabilities, {
      settings: { rules: { pages: 'https://example.org/rules/' } },
    });
    await wire.settle();
    await wire.open(SPEC_PATH, withChange('hand left', 'hand right'));
    await wire.settle();
    const found = wire.published.at(-1)!.diagnostics.find(one => one.code === 'rotation/propeller-hand')!;
    expect(found.codeDescription).toEqual({ href: 'https://example.org/rules/rotation/propeller-hand' });
  });
});

describe('requests', () => {
  it('are answered for the text as last typed', async () => {
    wire = await Wire.start();
    await wire.open(SPEC_PATH, 'gear G {\n  mass 10 kg\n}\n');
    await wire.type(SPEC_PATH, '\n\ngear G {\n  mass 10 kg\n}\n');
    const hover = (await wire.client.sendRequest(HoverRequest.type, at(SPEC_PATH, 3, 10))) as Hover;
    expect(JSON.stringify(hover.contents)).toContain('10 kg');
    await wire.type(SPEC_PATH, 'gear G {\n  mass 10 \n}\n');
    const list = (await wire.client.sendRequest(
      CompletionRequest.type,
      at(SPEC_PATH, 1, 10),
    )) as CompletionList;
    expect(list.items[0]!.label).toBe('kg');
  });

  it('that are cancelled get an error, not a result', async () => {
    wire = await Wire.start();
    await wire.open(SPEC_PATH, SPEC);
    const source = new CancellationTokenSource();
    const answer = wire.client.sendRequest(HoverRequest.type, at(SPEC_PATH, 3, 5), source.token);
    source.cancel();
    await expect(answer).rejects.toMatchObject({ code: LSPErrorCodes.RequestCancelled });
  });

  it('that go wrong are logged and answered with an error, and the server lives on', async () => {
    wire = await Wire.start();
    await wire.open(SPEC_PATH, SPEC);
    const { HoverProvider } = wire.services.lsp;
    const sound = HoverProvider!.getHoverContent;
    HoverProvider!.getHoverContent = () => {
      throw new Error('the keel fell off');
    };
    await expect(wire.client.sendRequest(HoverRequest.type, at(SPEC_PATH, 3, 5))).rejects.toMatchObject({
      message: 'The request for hover failed; the log says why.',
    });
    expect(wire.logged.join('\n')).toContain('the keel fell off');
    HoverProvider!.getHoverContent = sound;
    expect(await wire.client.sendRequest(HoverRequest.type, at(SPEC_PATH, 14, 5))).not.toBeNull();
  });

  it('with positions outside of the text, or for files that are none, do no harm', async () => {
    wire = await Wire.start({ 'notes.txt': 'low idle' });
    await wire.open(SPEC_PATH, 'gear G { }');
    for (const [line, character] of [
      [9999, 0],
      [0, 9999],
      [0, 2147483647],
    ] as const) {
      await wire.client.sendRequest(HoverRequest.type, at(SPEC_PATH, line, character));
      await wire.client.sendRequest(CompletionRequest.type, at(SPEC_PATH, line, character));
      await wire.client.sendRequest(SelectionRangeRequest.type, {
        textDocument: { uri: uriOf(SPEC_PATH) },
        positions: [{ line, character }],
      });
    }
    expect(await wire.client.sendRequest(HoverRequest.type, at('gone.shaft', 0, 0))).toBeNull();
    expect(await wire.client.sendRequest(HoverRequest.type, at('notes.txt', 0, 0))).toBeNull();
    expect(wire.logged).toEqual([]);
  });

  it('for two files at once do not mix their tokens', async () => {
    wire = await Wire.start();
    await wire.open('one.shaft', SPEC);
    await wire.open('two.shaft', CATALOGUE);
    const tokens = (path: string) =>
      wire.client.sendRequest(SemanticTokensRequest.type, { textDocument: { uri: uriOf(path) } });
    const alone = [await tokens('one.shaft'), await tokens('two.shaft')];
    const together = await Promise.all([tokens('one.shaft'), tokens('two.shaft'), tokens('one.shaft')]);
    expect(together).toEqual([alone[0], alone[1], alone[0]]);
  });
});

describe('settings', () => {
  it('change what is shown, and have the client ask again', async () => {
    let refreshed = 0;
    const inlay = { inlayHint: { refreshSupport: true } };
    wire = await Wire.start({}, { workspace: inlay });
    wire.client.onRequest('workspace/inlayHint/refresh', () => {
      refreshed += 1;
    });
    await wire.open(SPEC_PATH, SPEC);
    const hints = () =>
      wire.client.sendRequest(InlayHintRequest.type, {
        textDocument: { uri: uriOf(SPEC_PATH) },
        range: { start: { line: 0, character: 0 }, end: { line: 500, character: 0 } },
      });
    const all = (await hints())!.length;
    await wire.client.sendNotification(DidChangeConfigurationNotification.type, {
      settings: { tailshaft: { hints: { shaftTorque: false } } },
    });
    expect((await hints())!.length).toBe(all - 2);
    expect(refreshed).toBeGreaterThan(0);
  });
});

describe('hints of a text', () => {
  it('are asked for again when a catalogue that it sees has changed', async () => {
    let refreshed = 0;
    wire = await Wire.start(
      { 'parts/catalogue.shaft': CATALOGUE },
      { workspace: { inlayHint: { refreshSupport: true } } },
    );
    wire.client.onRequest('workspace/inlayHint/refresh', () => {
      refreshed += 1;
    });
    await wire.open(SPEC_PATH, IMPORTING);
    await wire.open('parts/catalogue.shaft', CATALOGUE);
    await wire.settle();
    refreshed = 0;
    await wire.type(SPEC_PATH, `${IMPORTING}\n`);
    await wire.settle();
    expect(refreshed).toBe(0);
    await wire.type('parts/catalogue.shaft', withChange('exact 2.043:1', 'exact 2.05:1', CATALOGUE));
    await wire.settle();
    expect(refreshed).toBe(1);
  });
});

describe('folders', () => {
  it('are not searched deeper than a person would nest them', async () => {
    const deep = (levels: number) => `${'a/'.repeat(levels)}broken.shaft`;
    wire = await Wire.start({ [deep(12)]: 'gear {', [deep(13)]: 'gear {' });
    await wire.settle();
    expect(wire.published.map(one => one.uri)).toEqual([uriOf(deep(12))]);
  });

  it('that join the workspace are read', async () => {
    wire = await Wire.start(
      { 'broken.shaft': 'gear {' },
      { workspace: { workspaceFolders: true } },
      { folders: false },
    );
    await wire.settle();
    expect(wire.published).toEqual([]);
    await wire.client.sendNotification('workspace/didChangeWorkspaceFolders', {
      event: { added: [{ uri: FOLDER, name: 'yard' }], removed: [] },
    });
    await wire.settle();
    expect(wire.published.map(one => one.uri)).toEqual([uriOf('broken.shaft')]);
  });
});
