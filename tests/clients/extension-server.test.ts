import { type ChildProcess, fork } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');
const examples = join(root, 'examples');
const uri = (path: string) => pathToFileURL(join(examples, path)).href;
const spec = 'pilot-cutter/ternhaven.shaft';
const read = (path: string) => readFileSync(join(examples, path), 'utf8');

/** The server of the extension as the desktop editor starts it: a process with a channel. */
describe('the built server of the extension', () => {
  let server: ChildProcess;
  let last = 0;
  const waiting = new Map<number, (message: { result?: unknown; error?: unknown }) => void>();

  const tell = (method: string, params: unknown) => server.send({ jsonrpc: '2.0', method, params });
  const ask = (method: string, params?: unknown) =>
    new Promise<unknown>((resolve, reject) => {
      const id = ++last;
      waiting.set(id, ({ result, error }) =>
        error ? reject(new Error(JSON.stringify(error))) : resolve(result),
      );
      server.send({ jsonrpc: '2.0', id, method, ...(params === undefined ? {} : { params }) });
    });

  beforeAll(async () => {
    server = fork(join(root, 'packages/vscode/dist/server.js'), ['--node-ipc'], { silent: true });
    server.on('message', (message: { id?: number; method?: string }) => {
      if (message.id !== undefined && message.method === undefined)
        waiting.get(message.id)?.(message as never);
    });
    await ask('initialize', { processId: process.pid, rootUri: uri(''), capabilities: {} });
    tell('initialized', {});
    const text = read(spec).replace('ratio 2.04:1', 'ratio 2.52:1');
    expect(text).not.toBe(read(spec));
    tell('textDocument/didOpen', {
      textDocument: { uri: uri(spec), languageId: 'tailshaft', version: 1, text },
    });
  });
  afterAll(() => server?.kill());

  it('compares with texts of another time, apart from the files on disk', async () => {
    const paths = ['catalogue', 'pilot-cutter'].flatMap(folder =>
      readdirSync(join(examples, folder)).map(name => `${folder}/${name}`),
    );
    const texts = Object.fromEntries(paths.map(path => [uri(path), read(path)]));
    const textDocument = { uri: uri(spec) };
    const { markdown } = (await ask('tailshaft/compare', {
      textDocument,
      before: { uri: uri(spec), texts },
    })) as {
      markdown: string;
    };
    // 2.04:1 and 2.52:1 by name: the exact ratios of the catalogue are compared.
    expect(markdown).toMatch(/\| ratio ahead \| [^|]*Port[^|]* \| 2\.043:1 \| 2\.519:1 \|/);
    expect(markdown).toContain('certifies nothing');
  });

  it('marks the lines whose consequence moved since texts of another time', async () => {
    const paths = ['catalogue', 'pilot-cutter'].flatMap(folder =>
      readdirSync(join(examples, folder)).map(name => `${folder}/${name}`),
    );
    const texts = Object.fromEntries(paths.map(path => [uri(path), read(path)]));
    const marks = (await ask('tailshaft/marks', {
      textDocument: { uri: uri(spec) },
      before: { uri: uri(spec), texts },
    })) as { line: number; gravity: string; words: string[] }[];
    const now = read(spec).replace('ratio 2.04:1', 'ratio 2.52:1').split('\n');
    const changed = now.flatMap((line, at) => (line.includes('ratio 2.52:1') ? [at] : []));
    expect(marks.map(one => one.line)).toEqual(expect.arrayContaining(changed));
    expect(new Set(marks.map(one => one.line)).size).toBe(marks.length);
    expect(marks.every(one => one.words.length > 0)).toBe(true);
  });

  it('names what a text of another time imports, so that it can be had of that time', async () => {
    const wanted = (texts: Record<string, string>) => ask('tailshaft/wanted', { uri: uri(spec), texts });
    const own = { [uri(spec)]: read(spec) };
    expect(await wanted(own)).toContain(uri('catalogue'));
    const elsewhere = { [uri(spec)]: read(spec).replace('../catalogue', '../parts/engines') };
    const asked = (await wanted(elsewhere)) as string[];
    expect(asked).toContain(uri('parts/engines.shaft'));
    expect(asked).not.toContain(uri('catalogue'));
  });

  it('draws the sheet and says what there is to choose from', async () => {
    const sheet = (await ask('tailshaft/sheet', { textDocument: { uri: uri(spec) }, choice: {} })) as {
      html: string;
      choices: { lines: string[] };
    };
    expect(sheet.html).toContain('<svg');
    expect(sheet.choices.lines).toEqual(['Port', 'Starboard']);
  });

  it('answers nothing about a file that is not there, and lives on', async () => {
    expect(await ask('tailshaft/sheet', { textDocument: { uri: uri('gone.shaft') }, choice: {} })).toBeNull();
    expect(((await ask('tailshaft/rules')) as unknown[]).length).toBeGreaterThan(20);
  });
});
