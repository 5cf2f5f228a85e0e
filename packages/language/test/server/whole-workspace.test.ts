import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type {
  CallHierarchyIncomingCall,
  CallHierarchyItem,
  Location,
  TextDocumentEdit,
  WorkspaceDiagnosticReport,
  WorkspaceEdit,
  WorkspaceSymbol,
} from 'vscode-languageserver';
import type { Outline } from '../../src/server/outline.js';
import { uriOf } from './memory-files.js';
import { CATALOGUE, VESSEL, withChange } from './specs.js';
import { Wire } from './wire.js';

/** Two cutters that nobody opens, in folders that take long to look into. */
const FILES = {
  'catalogue/parts.shaft': CATALOGUE,
  'boats/north/ternhaven.shaft': `import "../../catalogue"\n${VESSEL}`,
  'boats/south/skua.shaft': `import "../../catalogue"\n${withChange('vessel Ternhaven', 'vessel Skua', VESSEL)}`,
};
const PARTS = 'catalogue/parts.shaft';

let wire: Wire;
beforeEach(async () => {
  wire = await Wire.start(FILES, { textDocument: { diagnostic: {} } }, { delay: 30 });
  await wire.open(PARTS, CATALOGUE);
});
afterEach(() => wire.stop());

const ask = <R>(method: string, params: object) => wire.client.sendRequest<R>(method, params);
const placeOf = (words: string) => {
  const before = CATALOGUE.slice(0, CATALOGUE.indexOf(words)).split('\n');
  return {
    textDocument: { uri: uriOf(PARTS) },
    position: { line: before.length - 1, character: before.at(-1)!.length },
  };
};
const byFile = (uris: readonly string[]) => [...new Set(uris)].sort();
const ALL = byFile(Object.keys(FILES).map(uriOf));

/** Each is asked right after the hello, long before the folders have been looked into. */
describe('questions about the whole workspace wait until all of it is read', () => {
  it('references', async () => {
    const found = await ask<Location[]>('textDocument/references', {
      ...placeOf('Alder-63'),
      context: { includeDeclaration: true },
    });
    expect(found).toHaveLength(5);
    expect(byFile(found.map(one => one.uri))).toEqual(ALL);
  });

  it('rename, into files that nobody has open', async () => {
    const edit = await ask<WorkspaceEdit>('textDocument/rename', {
      ...placeOf('Alder-63'),
      newName: 'Alder-64',
    });
    const changes = edit.documentChanges as TextDocumentEdit[];
    expect(byFile(changes.map(one => one.textDocument.uri))).toEqual(ALL);
    expect(changes.flatMap(one => one.edits)).toHaveLength(5);
  });

  it('a clutch is renamed with every line that runs ahead on it', async () => {
    const at = placeOf('clutch A output');
    const edit = await ask<WorkspaceEdit>('textDocument/rename', {
      ...at,
      position: { ...at.position, character: at.position.character + 'clutch '.length },
      newName: 'P',
    });
    const changes = edit.documentChanges as TextDocumentEdit[];
    expect(byFile(changes.map(one => one.textDocument.uri))).toEqual(ALL);
  });

  it('symbols', async () => {
    const found = await ask<WorkspaceSymbol[]>('workspace/symbol', { query: 'Skua' });
    expect(found.map(one => one.name)).toEqual(['Skua']);
  });

  it('where a part is used, with its margin', async () => {
    const [item] = await ask<CallHierarchyItem[]>('textDocument/prepareCallHierarchy', placeOf('Alder-63'));
    const calls = await ask<CallHierarchyIncomingCall[]>('callHierarchy/incomingCalls', { item });
    expect(calls.map(one => one.from.name).sort()).toEqual([
      'Skua proposed.Port',
      'Skua proposed.Starboard',
      'Ternhaven proposed.Port',
      'Ternhaven proposed.Starboard',
    ]);
    expect(calls[0]!.from.detail).toMatch(/least margin \+[\d.]+ %/);
  });

  it('vessels for comparison', async () => {
    const found = await ask<Outline[]>('tailshaft/vessels', { all: true });
    expect(found.flatMap(one => one.vessels.map(vessel => vessel.name))).toEqual(['Ternhaven', 'Skua']);
  });

  it('imports of a folder that gets another name', async () => {
    const edit = await ask<WorkspaceEdit>('workspace/willRenameFiles', {
      files: [{ oldUri: uriOf('catalogue'), newUri: uriOf('parts') }],
    });
    expect(edit.documentChanges).toHaveLength(2);
  });

  it('diagnostics of the workspace', async () => {
    const { items } = await ask<WorkspaceDiagnosticReport>('workspace/diagnostic', { previousResultIds: [] });
    expect(byFile(items.map(one => one.uri))).toEqual(ALL);
  });
});

/** An entry that one line of one file uses may be taken away; whether it is the only one must be known first. */
describe('taking an entry into its only line', () => {
  const ONE = `${VESSEL.slice(0, VESSEL.indexOf('    shaftline Starboard'))}  }\n}\n`;
  const offered = async () => {
    const at = placeOf('Alder-63');
    const range = { start: at.position, end: at.position };
    const context = { diagnostics: [], only: ['refactor.inline'] };
    const params = { textDocument: at.textDocument, range, context };
    const actions = await ask<{ title: string }[]>('textDocument/codeAction', params);
    return actions.map(one => one.title);
  };
  const startWith = async (boats: Record<string, string>) => {
    await wire.stop();
    wire = await Wire.start({ [PARTS]: CATALOGUE, ...boats }, {}, { delay: 30 });
    await wire.open(PARTS, CATALOGUE);
    const early = await offered();
    await ask<Outline[]>('tailshaft/vessels', { all: true });
    return { early, late: await offered() };
  };

  it('is offered once everything is read, and not before', async () => {
    const { early, late } = await startWith({ 'boats/a.shaft': `import "../catalogue"\n${ONE}` });
    expect(early).toEqual([]);
    expect(late).toHaveLength(1);
    expect(late[0]).toContain('into Port of Ternhaven, the only line that uses it');
  });
  it('is not offered when a file that nobody opened uses it too', async () => {
    const { early, late } = await startWith({
      'boats/a.shaft': `import "../catalogue"\n${ONE}`,
      'boats/b.shaft': `import "../catalogue"\n${ONE.replace('Ternhaven', 'Skua')}`,
    });
    expect([early, late]).toEqual([[], []]);
  });
});
