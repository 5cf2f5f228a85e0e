import { afterEach, describe, expect, it } from 'vitest';
import type {
  CodeAction,
  Diagnostic,
  FullDocumentDiagnosticReport,
  WorkspaceDiagnosticReport,
} from 'vscode-languageserver-protocol';
import { ProtocolClient } from './client.js';
import { ABLE, PARTS } from './specs.js';

/** An engine whose rating names neither standard nor hours: a fact of the entry, whoever fits it. */
const CATALOGUE = `engine Kittiwake-9 "six-cylinder diesel engine" {
  source "Kittiwake 9 data sheet, issue 2" dated 2025-01-20
  rotation standard viewed from flywheel
  rating medium { power 300 kW at 2300 rpm  measured at crankshaft }
  high idle 2530 rpm
}
`;

const vessel = (name: string, engine = 'Kittiwake-9') => `import "catalogue"

vessel ${name} {
  duty medium { hours 1500 per year  passengers none }
  arrangement proposed {
    shaftline Centre {
      engine ${engine} at medium { flywheel aft }
      propeller { hand left }
    }
  }
}
`;

const FILES = { [PARTS]: CATALOGUE, 'a.shaft': vessel('Heron'), 'b.shaft': vessel('Gannet') };
const RULE = 'capacity/rating-undefined';
const HINT = 4;
const WARNING = 2;

const own = (found: readonly Diagnostic[]) => found.filter(one => one.code === RULE);
const usesOf = (one: Diagnostic | undefined) =>
  one?.relatedInformation?.filter(each => each.message.startsWith('used in ')).map(each => each.message);

describe('a fact of a catalogue entry that two specs use', () => {
  let client: ProtocolClient;
  afterEach(() => {
    expect(client.tap.broken).toEqual([]);
    expect(client.stderr).toBe('');
    client.end();
  });

  const told = (uses: readonly string[]) =>
    client
      .waitDiagnostics(client.uri(PARTS), found => {
        const said = usesOf(own(found)[0]) ?? [];
        return said.join() === uses.map(one => `used in ${one}`).join();
      })
      .then(own);

  it('is told once, at the entry, with both as related places; each spec keeps a hint where it uses it', async () => {
    client = new ProtocolClient(FILES);
    await client.start();
    const [one, ...more] = await told(['Heron', 'Gannet']);
    expect(more).toEqual([]);
    expect(one).toMatchObject({
      severity: WARNING,
      range: client.rangeOf(PARTS, '300 kW at 2300 rpm'),
      message: expect.stringMatching(/^Heron, .* The same in Gannet\.$/),
    });
    expect(one!.relatedInformation!.slice(0, 2).map(each => each.location)).toEqual([
      { uri: client.uri('a.shaft'), range: client.rangeOf('a.shaft', 'Kittiwake-9') },
      { uri: client.uri('b.shaft'), range: client.rangeOf('b.shaft', 'Kittiwake-9') },
    ]);
    for (const spec of ['a.shaft', 'b.shaft']) {
      const found = own(await client.waitDiagnostics(client.uri(spec)));
      expect(found.map(each => each.severity)).toEqual([HINT]);
    }
  });

  it('follows the specs: one that no longer uses it, one that goes, and the entry itself put right', async () => {
    client = new ProtocolClient(FILES);
    await client.start(ABLE);
    await told(['Heron', 'Gannet']);
    await client.show('b.shaft');
    await client.replace('b.shaft', 'engine Kittiwake-9', 'engine unknown');
    expect((await told(['Heron']))[0]!.message).not.toContain('The same in');
    await client.replace('b.shaft', 'engine unknown', 'engine Kittiwake-9');
    await told(['Heron', 'Gannet']);
    await client.notify('workspace/didChangeWatchedFiles', {
      changes: [{ uri: client.uri('a.shaft'), type: 3 }],
    });
    await told(['Gannet']);
    await client.show(PARTS);
    await client.replace(PARTS, 'measured at', 'standard ISO-3046  hours 2000 per year  measured at');
    const after = await client.waitDiagnostics(client.uri(PARTS), found => own(found).length === 0);
    expect(own(after)).toEqual([]);
  });

  it('offers at the entry what is to be written there', async () => {
    client = new ProtocolClient(FILES);
    await client.start();
    const [one] = await told(['Heron', 'Gannet']);
    await client.show(PARTS);
    const actions = (await client.codeAction(client.uri(PARTS), one!.range, [one!])) as CodeAction[];
    const writes = actions.filter(each => each.diagnostics?.length);
    expect(writes.map(each => each.title)).toContain(
      'Write its standard as an open question: the sheet then lists it',
    );
    for (const { edit } of writes)
      expect(edit?.documentChanges?.map(each => 'textDocument' in each && each.textDocument.uri)).toEqual([
        client.uri(PARTS),
      ]);
  });

  it('is told so to a client that asks, too', async () => {
    client = new ProtocolClient(FILES);
    await client.start({
      ...ABLE,
      textDocument: { ...ABLE.textDocument, diagnostic: { relatedDocumentSupport: true } },
    });
    const { items } = await client.request<WorkspaceDiagnosticReport>('workspace/diagnostic', {
      previousResultIds: [],
    });
    const of = (path: string) =>
      own((items.find(one => one.uri === client.uri(path)) as FullDocumentDiagnosticReport).items);
    expect(of(PARTS).map(one => [one.severity, usesOf(one)])).toEqual([
      [WARNING, ['used in Heron', 'used in Gannet']],
    ]);
    expect([...of('a.shaft'), ...of('b.shaft')].map(one => one.severity)).toEqual([HINT, HINT]);
  });

  it('stays in the spec that declares the entry itself', async () => {
    const { [PARTS]: parts, 'a.shaft': spec } = FILES;
    client = new ProtocolClient({ 'a.shaft': `${spec.replace('import "catalogue"\n', parts!)}` });
    await client.start();
    const found = await client.waitDiagnostics(client.uri('a.shaft'));
    expect(own(found).map(one => one.severity)).toEqual([WARNING]);
  });
});
