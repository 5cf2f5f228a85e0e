import { afterEach, describe, expect, it } from 'vitest';
import { FoldingRangeRequest, HoverRequest } from 'vscode-languageserver/node';
import { LARGEST_SPEC } from '../../src/project/size.js';
import { uriOf } from './memory-files.js';
import { CATALOGUE, SPEC, VESSEL } from './specs.js';
import { Wire } from './wire.js';

let wire: Wire;
afterEach(() => wire.stop());

const TEN = CATALOGUE.repeat(Math.ceil((10 * 1024 * 1024) / CATALOGUE.length));

describe('a file that is no spec for its size', () => {
  it('is told of, not read, and keeps no other file waiting', async () => {
    wire = await Wire.start({ 'big.shaft': TEN, 'spec.shaft': `import "big"\n${VESSEL}` });
    await wire.open('other.shaft', TEN);
    const started = process.cpuUsage().user;
    await wire.open('unrelated.shaft', SPEC.replace('650 rpm', '650'));
    await wire.settle();
    expect(wire.codes('unrelated.shaft')).toEqual(['units/unit-needed']);
    expect(wire.codes('big.shaft')).toEqual(['text/too-large']);
    expect(wire.codes('other.shaft')).toEqual(['text/too-large']);
    expect(wire.codes('spec.shaft')).toContain('text/import');
    const textDocument = { uri: uriOf('other.shaft') };
    expect(await wire.client.sendRequest(FoldingRangeRequest.type, { textDocument })).toBeNull();
    const position = { line: 3, character: 4 };
    expect(await wire.client.sendRequest(HoverRequest.type, { textDocument, position })).toBeNull();
    expect(wire.logged).toEqual([]);
    // Reading both took forty seconds; this is far below a tenth of it on any machine.
    expect((process.cpuUsage().user - started) / 1e6).toBeLessThan(15);
  });

  it('is read as soon as it is small enough', async () => {
    wire = await Wire.start();
    await wire.open('a.shaft', `${SPEC}//${'x'.repeat(LARGEST_SPEC)}`);
    await wire.settle();
    expect(wire.codes('a.shaft')).toEqual(['text/too-large']);
    await wire.type('a.shaft', SPEC);
    await wire.settle();
    expect(wire.codes('a.shaft')).toEqual([]);
  });
});
