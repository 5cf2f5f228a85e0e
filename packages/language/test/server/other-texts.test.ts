import { afterEach, describe, expect, it } from 'vitest';
import {
  DidChangeWorkspaceFoldersNotification,
  DidCloseTextDocumentNotification,
  DidOpenTextDocumentNotification,
  HoverRequest,
} from 'vscode-languageserver/node';
import { FOLDER, uriOf } from './memory-files.js';
import { CATALOGUE, SPEC, VESSEL, withChange } from './specs.js';
import { Wire } from './wire.js';

let wire: Wire;
afterEach(() => wire.stop());

const BROKEN = withChange('hand left [drawing]', 'hand right [drawing]');
const open = (uri: string, text = BROKEN) =>
  wire.client.sendNotification(DidOpenTextDocumentNotification.type, {
    textDocument: { uri, languageId: 'tailshaft', version: 1, text },
  });
const saidOf = (uri: string) => wire.published.filter(one => one.uri === uri);
const askedVessels = () => wire.client.sendRequest<{ uri: string }[]>('tailshaft/vessels', { all: true });

describe('texts that are none of the workspace', () => {
  it.each([
    ['the old side of a comparison with git', 'git:/yard/ternhaven.shaft?%7B%22ref%22%3A%22HEAD%22%7D'],
    ['a version in the history', 'vscode-local-history:/yard/ternhaven.shaft'],
    ['a file of another folder', 'file:///quay/ternhaven.shaft'],
  ])('%s is not judged, and is no vessel of the workspace', async (_what, uri) => {
    wire = await Wire.start({ 'ternhaven.shaft': SPEC });
    await wire.settle();
    await open(uri);
    await wire.settle();
    expect(saidOf(uri)).toEqual([]);
    expect((await askedVessels()).map(one => one.uri)).toEqual([uriOf('ternhaven.shaft')]);
    expect(
      await wire.client.sendRequest(HoverRequest.type, {
        textDocument: { uri },
        position: { line: 60, character: 20 },
      }),
    ).toBeNull();
    await wire.client.sendNotification(DidCloseTextDocumentNotification.type, { textDocument: { uri } });
    await wire.settle();
    expect(saidOf(uri)).toEqual([]);
    expect(wire.logged).toEqual([]);
  });

  it('a text that is saved nowhere yet is judged, and nothing of it stays when it closes', async () => {
    wire = await Wire.start();
    const uri = 'untitled:Untitled-1';
    await open(uri);
    await wire.settle();
    expect(
      saidOf(uri)
        .at(-1)!
        .diagnostics.map(one => one.code),
    ).toContain('rotation/propeller-hand');
    await wire.client.sendNotification(DidCloseTextDocumentNotification.type, { textDocument: { uri } });
    await wire.settle();
    expect(saidOf(uri).at(-1)!.diagnostics).toEqual([]);
  });

  it('a file that is opened without any folder is judged', async () => {
    wire = await Wire.start({}, {}, { folders: false });
    await open(uriOf('ternhaven.shaft'));
    await wire.settle();
    expect(wire.codes('ternhaven.shaft')).toContain('rotation/propeller-hand');
  });

  it('a text is judged once its folder joins the workspace, and no more once it leaves', async () => {
    const uri = 'file:///quay/ternhaven.shaft';
    wire = await Wire.start({}, { workspace: { workspaceFolders: true } });
    await open(uri);
    await wire.settle();
    const folders = (added: boolean) =>
      wire.client.sendNotification(DidChangeWorkspaceFoldersNotification.type, {
        event: { added: added ? [QUAY] : [], removed: added ? [] : [QUAY] },
      });
    await folders(true);
    await wire.settle();
    expect(
      saidOf(uri)
        .at(-1)!
        .diagnostics.map(one => one.code),
    ).toContain('rotation/propeller-hand');
    await folders(false);
    await wire.settle();
    expect(saidOf(uri).at(-1)!.diagnostics).toEqual([]);
  });

  it('the entries of a text of another folder are not offered to specs', async () => {
    wire = await Wire.start({ 'ternhaven.shaft': VESSEL });
    await open('git:/yard/old.shaft', CATALOGUE);
    await wire.open('ternhaven.shaft', VESSEL);
    await wire.settle();
    expect([...wire.services.shared.workspace.LangiumDocuments.all].map(one => one.uri.toString())).toEqual([
      `${FOLDER}/ternhaven.shaft`,
    ]);
  });
});

const QUAY = { uri: 'file:///quay', name: 'quay' };
