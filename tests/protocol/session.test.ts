import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { CancellationTokenSource } from 'vscode-jsonrpc/node';
import type { CodeAction, Diagnostic, WorkspaceEdit } from 'vscode-languageserver-protocol';
import { applyEdits, editsFor } from '../clients/text-edits.js';
import { ProtocolClient } from './client.js';
import { typeErrors } from './message-types.js';
import { ABLE, FILES, MISTAKEN, PARTS, SPEC, WRONG_HAND } from './specs.js';
import type { Said } from './tap.js';

const said: Said[] = [];
let client: ProtocolClient;

async function start(files: Readonly<Record<string, string>>, capabilities: object = {}) {
  client = new ProtocolClient(files);
  return client.start(capabilities);
}

const codes = (found: readonly Diagnostic[]) => found.map(one => one.code);
const wrong = (found: readonly Diagnostic[]) => codes(found).includes(WRONG_HAND);

describe('a session with the built server', () => {
  afterEach(() => {
    expect(client.tap.broken).toEqual([]);
    expect(client.stderr).toBe('');
    said.push(...client.tap.said);
    client.end();
  });
  afterAll(async () => {
    expect(said.length).toBeGreaterThan(30);
    expect(await typeErrors(said)).toEqual([]);
  });

  it('begins with a name and a version, and findings of the opened text with its version', async () => {
    const hello = await start(MISTAKEN);
    expect(hello.serverInfo?.name).toBe('tailshaft');
    expect(hello.serverInfo?.version).toMatch(/^\d+\.\d+\.\d+/);
    await client.show(SPEC);
    const found = await client.waitDiagnostics(client.uri(SPEC), (_found, version) => version === 1);
    expect(codes(found)).toContain(WRONG_HAND);
    expect(await client.shutdown()).toBe(0);
  });

  it('follows an edit with the findings of just that version', async () => {
    await start(MISTAKEN);
    await client.show(SPEC);
    await client.waitDiagnostics(client.uri(SPEC), wrong);
    const mended = await client.replace(
      SPEC,
      'hand left [drawing]  blades 4  diameter 26 in  pitch 24 in  area ratio 0.72 }\n    }\n  }',
      'hand right [drawing]  blades 4  diameter 26 in  pitch 24 in  area ratio 0.72 }\n    }\n  }',
    );
    const after = await client.waitDiagnostics(client.uri(SPEC), (_found, version) => version === mended);
    expect(codes(after)).not.toContain(WRONG_HAND);
    const again = await client.replace(SPEC, 'diameter 26 in', 'diameter');
    const broken = await client.waitDiagnostics(client.uri(SPEC), (_found, version) => version === again);
    expect(codes(broken).filter(one => String(one).startsWith('text/'))).toEqual(['text/value-missing']);
  });

  it('follows an edit of the catalogue in the spec that imports it', async () => {
    await start(FILES);
    await client.show(SPEC);
    await client.show(PARTS);
    await client.waitDiagnostics(client.uri(SPEC));
    await client.replace(PARTS, 'rated medium 0.18 kW/rpm', 'rated medium 0.018 kW/rpm');
    await client.waitDiagnostics(client.uri(SPEC), found =>
      codes(found).includes('capacity/gear-input-torque'),
    );
  });

  it('checks specs that nobody opened', async () => {
    await start(MISTAKEN);
    await client.waitDiagnostics(client.uri(SPEC), wrong);
  });

  it('says on hover what a value drives', async () => {
    await start(FILES);
    await client.show(SPEC);
    const hover = await client.hover(client.uri(SPEC), client.at(SPEC, 'diameter 65', 10));
    expect(JSON.stringify(hover?.contents)).toMatch(/mm.*in/);
  });

  it('offers the mended text at once to a client that resolves nothing', async () => {
    await start(MISTAKEN);
    await client.show(SPEC);
    const found = await client.waitDiagnostics(client.uri(SPEC), wrong);
    const finding = found.find(one => one.code === WRONG_HAND)!;
    const actions = (await client.codeAction(client.uri(SPEC), finding.range, [finding])) as CodeAction[];
    expect(actions.length).toBeGreaterThan(0);
    expect(actions.every(one => one.edit !== undefined)).toBe(true);
  });

  it('keeps the edits back from a client that fetches the one it takes', async () => {
    await start(MISTAKEN, { textDocument: { ...ABLE.textDocument } });
    await client.show(SPEC);
    const found = await client.waitDiagnostics(client.uri(SPEC), wrong);
    const finding = found.find(one => one.code === WRONG_HAND)!;
    const actions = (await client.codeAction(client.uri(SPEC), finding.range, [finding])) as CodeAction[];
    expect(actions.every(one => one.edit === undefined)).toBe(true);
    const chosen = actions.find(one => /right/i.test(one.title))!;
    const resolved = await client.request<CodeAction>('codeAction/resolve', chosen);
    expect(
      editsFor(client.uri(SPEC), resolved.edit)
        .map(one => one.newText)
        .join(),
    ).toContain('right');

    await client.replace(SPEC, 'blades 4', 'blades 5');
    await expect(client.request('codeAction/resolve', chosen)).rejects.toThrow(/changed since/);
  });

  it('corrects slips on save', async () => {
    await start({ 'slip.shaft': FILES[PARTS]!.replace('low idle', 'low, idle') });
    await client.show('slip.shaft');
    await client.waitDiagnostics(client.uri('slip.shaft'), found => found.length > 0);
    const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };
    const actions = (await client.codeAction(
      client.uri('slip.shaft'),
      range,
      [],
      ['source.fixAll'],
    )) as CodeAction[];
    expect(actions.map(one => one.kind)).toEqual(['source.fixAll.tailshaft']);
  });

  it('renames a part in all files that use it', async () => {
    await start(FILES);
    await client.show(SPEC);
    await client.waitDiagnostics(client.uri(SPEC));
    const edit = (await client.rename(client.uri(SPEC), client.at(SPEC, 'gear Alder', 8), 'Birch-1'))!;
    for (const path of [SPEC, PARTS]) {
      const renamed = applyEdits(client.text(path), editsFor(client.uri(path), edit));
      expect(renamed).toBe(client.text(path).replaceAll(/(?<=gear )Alder-63/g, 'Birch-1'));
    }
    await expect(
      client.rename(client.uri(SPEC), client.at(SPEC, 'gear Alder', 8), 'no name'),
    ).rejects.toThrow(/one word/);
  });

  it('answers a cancelled request with an error', async () => {
    await start(FILES);
    await client.show(SPEC);
    const source = new CancellationTokenSource();
    const answer = client.connection.sendRequest(
      'textDocument/documentSymbol',
      { textDocument: { uri: client.uri(SPEC) } },
      source.token,
    );
    source.cancel();
    await expect(answer).rejects.toMatchObject({ code: -32800 });
  });

  it('keeps Windows line ends', async () => {
    const text = FILES[SPEC]!.replace('      gear Alder', '  gear   Alder').replaceAll('\n', '\r\n');
    await start({ ...FILES, [SPEC]: text });
    await client.show(SPEC);
    const edits = (await client.formatting(client.uri(SPEC)))!;
    expect(edits.length).toBeGreaterThan(0);
    const formatted = applyEdits(text, edits);
    expect(formatted).toBe(FILES[SPEC]!.replaceAll('\n', '\r\n'));
  });

  it('never makes typing wait for checks: keys that come together are checked together', async () => {
    const many = Array.from({ length: 40 }, (_, at) =>
      FILES[SPEC]!.replace('import "catalogue"', '').replace('Ternhaven', `Cutter-${at}`),
    );
    await start({ ...FILES, [SPEC]: `import "catalogue"\n${many.join('\n')}` });
    await client.show(SPEC);
    await client.waitDiagnostics(client.uri(SPEC));
    const before = client.tap.said.length;
    // All are in the pipe before the first is read: none waits for the one before it.
    const keys = Array.from({ length: 30 }, (_, key) =>
      client.replace(SPEC, 'diameter 26 in', key % 2 ? 'diameter 26 in' : 'diameter 26 in '),
    );
    const last = (await Promise.all(keys)).at(-1);
    await client.waitDiagnostics(client.uri(SPEC), (_found, version) => version === last);
    const checked = client.tap.said
      .slice(before)
      .filter(one => one.method === 'textDocument/publishDiagnostics');
    expect(checked.length).toBeLessThan(keys.length / 2);
  });

  it('lives on after a request that makes no sense', async () => {
    await start(FILES);
    await client.show(SPEC);
    const nowhere = { line: 1e6, character: 1e6 };
    await client.hover(client.uri(SPEC), nowhere);
    await client.hover(client.uri('not-there.shaft'), nowhere).catch(() => null);
    await expect(client.request('tailshaft/no-such-thing', {})).rejects.toThrow();
    const edit = await client.request<WorkspaceEdit | null>('workspace/willRenameFiles', { files: [] });
    expect(edit).toBeNull();
  });
});
