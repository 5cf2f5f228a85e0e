import { afterEach, describe, expect, it } from 'vitest';
import type {
  DocumentDiagnosticReport,
  FullDocumentDiagnosticReport,
  WorkspaceDiagnosticReport,
} from 'vscode-languageserver-protocol';
import { ProtocolClient } from './client.js';
import { typeErrors } from './message-types.js';
import { ABLE, MISTAKEN, PARTS, SPEC, WRONG_HAND } from './specs.js';

const PULLS = {
  ...ABLE,
  textDocument: { ...ABLE.textDocument, diagnostic: { relatedDocumentSupport: true } },
};

describe('a client that asks for diagnostics', () => {
  let client: ProtocolClient;
  afterEach(() => client.end());

  it('gets them when it asks, also of specs that nobody opened, and is pushed none', async () => {
    client = new ProtocolClient(MISTAKEN);
    const hello = await client.start(PULLS);
    expect(hello.capabilities.diagnosticProvider).toMatchObject({
      interFileDependencies: true,
      workspaceDiagnostics: true,
    });
    const all = await client.request<WorkspaceDiagnosticReport>('workspace/diagnostic', {
      previousResultIds: [],
    });
    const spec = all.items.find(one => one.uri === client.uri(SPEC)) as FullDocumentDiagnosticReport & {
      version: unknown;
    };
    expect(spec.items.map(one => one.code)).toContain(WRONG_HAND);
    expect(spec.version).toBeNull();

    await client.show(SPEC);
    const pull = (previousResultId?: string) =>
      client.request<DocumentDiagnosticReport>('textDocument/diagnostic', {
        textDocument: { uri: client.uri(SPEC) },
        ...(previousResultId ? { previousResultId } : {}),
      });
    const first = (await pull()) as FullDocumentDiagnosticReport;
    expect(first).toMatchObject({ kind: 'full' });
    expect(await pull(first.resultId)).toEqual({ kind: 'unchanged', resultId: first.resultId });
    await client.replace(SPEC, 'blades 4', 'blades 3');
    expect(await pull(first.resultId)).toMatchObject({ kind: 'full' });

    // Of what the client knows already there is no second report, until something changes.
    const settled = await client.request<WorkspaceDiagnosticReport>('workspace/diagnostic', {
      previousResultIds: [],
    });
    const previousResultIds = settled.items.map(one => ({ uri: one.uri, value: one.resultId! }));
    let answered = false;
    const next = client
      .request<WorkspaceDiagnosticReport>('workspace/diagnostic', { previousResultIds })
      .finally(() => {
        answered = true;
      });
    await client.hover(client.uri(SPEC), { line: 3, character: 3 });
    expect(answered).toBe(false);
    await client.show(PARTS);
    await client.replace(PARTS, 'cylinders 6', 'cylinders 8');
    expect((await next).items.some(one => one.kind === 'full')).toBe(true);
    await expect.poll(() => client.refreshed.some(one => one.startsWith('diagnostic'))).toBe(true);

    const { broken, said } = client.tap;
    expect(said.filter(one => one.method === 'textDocument/publishDiagnostics')).toEqual([]);
    expect(broken).toEqual([]);
    expect(await typeErrors(said)).toEqual([]);
  });
});
