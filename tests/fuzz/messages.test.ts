import { PassThrough } from 'node:stream';
import { EmptyFileSystemProvider } from 'langium';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver/node';
import { HeaderGuard } from '../../packages/language/src/server/header-guard.js';
import { startServer } from '../../packages/language/src/server/start.js';
import { randomFrom } from '../../packages/language/test/server/random.js';
import { CATALOGUE, VESSEL } from '../../packages/language/test/server/specs.js';
import { times } from '../support/share.js';

/* Messages that no client should send: whatever comes, the server answers the next good one. MESSAGES=50000 for more. */
const RUNS = Number(process.env.MESSAGES ?? times(600, 10_000));
const STEP = 200;
const SEEDS = Array.from({ length: Math.ceil(RUNS / STEP) }, (_, at) => at + 1);

const URI = 'file:///yard/fuzz.shaft';
const TEXT = `${CATALOGUE}\n${VESSEL}`;
const at = { textDocument: { uri: URI }, position: { line: 5, character: 4 } };
const whole = { start: { line: 0, character: 0 }, end: { line: 90, character: 0 } };

/** What a client may send of each kind: the fuzz begins with these. */
const GOOD: readonly (readonly [method: string, params: unknown])[] = [
  ['textDocument/hover', at],
  ['textDocument/completion', at],
  ['textDocument/definition', at],
  ['textDocument/references', { ...at, context: { includeDeclaration: true } }],
  ['textDocument/rename', { ...at, newName: 'Other-1' }],
  ['textDocument/prepareRename', at],
  ['textDocument/codeAction', { textDocument: { uri: URI }, range: whole, context: { diagnostics: [] } }],
  ['textDocument/formatting', { textDocument: { uri: URI }, options: { tabSize: 2, insertSpaces: true } }],
  ['textDocument/foldingRange', { textDocument: { uri: URI } }],
  ['textDocument/selectionRange', { textDocument: { uri: URI }, positions: [at.position] }],
  ['textDocument/inlayHint', { textDocument: { uri: URI }, range: whole }],
  ['textDocument/semanticTokens/full', { textDocument: { uri: URI } }],
  ['textDocument/codeLens', { textDocument: { uri: URI } }],
  ['workspace/symbol', { query: 'a' }],
  ['tailshaft/outline', { textDocument: { uri: URI } }],
];
const TOLD: readonly (readonly [method: string, params: unknown])[] = [
  [
    'textDocument/didChange',
    { textDocument: { uri: URI, version: 3 }, contentChanges: [{ range: whole, text: 'gear G {' }] },
  ],
  [
    'textDocument/didOpen',
    {
      textDocument: {
        uri: 'file:///yard/other.shaft',
        languageId: 'tailshaft',
        version: 1,
        text: 'vessel V { }',
      },
    },
  ],
  ['textDocument/didClose', { textDocument: { uri: 'file:///yard/other.shaft' } }],
  ['workspace/didChangeWatchedFiles', { changes: [{ uri: URI, type: 2 }] }],
  ['workspace/didChangeConfiguration', { settings: { tailshaft: {} } }],
  ['$/cancelRequest', { id: 7 }],
  ['$/setTrace', { value: 'off' }],
];
const ODD = [
  null,
  -1,
  1e308,
  0.5,
  '',
  'x'.repeat(70_000),
  [],
  {},
  true,
  'file:///%zz',
  '\u0000',
  [[[[]]]],
  { uri: 5 },
];

let guard: HeaderGuard;
let answers: Map<unknown, unknown>;
let wake: () => void = () => {};
const refused: string[] = [];

beforeAll(async () => {
  answers = new Map();
  guard = new HeaderGuard(message => refused.push(message));
  const [up, down] = [new PassThrough(), new PassThrough()];
  guard.pipe(up);
  startServer({
    connection: createConnection(new StreamMessageReader(up), new StreamMessageWriter(down)),
    fileSystemProvider: () => new EmptyFileSystemProvider(),
  });
  new StreamMessageReader(down).listen(message => {
    const { id, ...rest } = message as { id?: unknown; method?: string };
    // What the server asks of a client, such as its settings, is not answered: it must live with that too.
    if (id !== undefined && rest.method === undefined) answers.set(id, rest);
    wake();
  });
  send({ id: 'hello', method: 'initialize', params: { processId: null, rootUri: null, capabilities: {} } });
  await answerTo('hello');
  send({ method: 'initialized', params: {} });
});
afterAll(() => {
  guard.end();
});

describe('messages that are wrong in their head, their text or their shape', () => {
  it.each(SEEDS)('leave the server answering: seed %i', { timeout: 120_000 }, async seed => {
    const random = randomFrom(seed * 6007);
    for (let count = 0; count < STEP; count++) guard.write(wrongMessage(random));
    const id = `seed ${seed}`;
    send({
      method: 'textDocument/didOpen',
      params: { textDocument: { uri: URI, languageId: 'tailshaft', version: 1, text: TEXT } },
    });
    send({ id, method: 'textDocument/hover', params: at });
    const answer = (await answerTo(id)) as { result?: { contents: { value: string } } };
    expect(JSON.stringify(answer), id).toContain('cylinders');
    answers.clear();
  });
});

function wrongMessage(random: (below: number) => number): Buffer {
  const one = <T>(of: readonly T[]): T => of[random(of.length)]!;
  const [method, params] = random(3) === 0 ? one(TOLD) : one(GOOD);
  const isTold = TOLD.some(each => each[0] === method);
  const message: Record<string, unknown> = {
    jsonrpc: '2.0',
    ...(isTold ? {} : { id: random(9) === 0 ? one(ODD) : `r${random(1e9)}` }),
    method,
    params: random(4) === 0 ? params : withOdd(params, random),
  };
  // Some would end the session rightly, or open and close the file that is asked about.
  if (random(12) === 0) message.method = one(['textDocument/nothing', '', 5, null, '$/x']);
  if (random(20) === 0) delete message.jsonrpc;
  const json =
    random(15) === 0 ? JSON.stringify(one([message, [message], 7, 'text', null])) : JSON.stringify(message);
  const body = random(6) === 0 ? damaged(json, random) : json;
  const length = Buffer.byteLength(body);
  const head = one([
    ...Array.from({ length: 12 }, () => `Content-Length: ${length}\r\n\r\n`),
    `content-length: ${length}\r\nContent-Type: application/vscode-jsonrpc; charset=utf-8\r\n\r\n`,
    `Content-Length: -${length}\r\n\r\n`,
    'Content-Length: 99999999999\r\n\r\n',
    'Content-Type: text\r\n\r\n',
    '',
  ]);
  return Buffer.from(head + body);
}

/** Somewhere in it another value, or one left out. */
function withOdd(value: unknown, random: (below: number) => number): unknown {
  if (typeof value !== 'object' || value === null || random(5) === 0) return ODD[random(ODD.length)];
  const keys = Object.keys(value);
  const key = keys[random(keys.length)]!;
  const copy = structuredClone(value) as Record<string, unknown>;
  if (random(4) === 0) delete copy[key];
  else copy[key] = withOdd(copy[key], random);
  return copy;
}

/** Of the same length, so that the next message begins where its head says. */
function damaged(json: string, random: (below: number) => number): string {
  const letters = [...json];
  for (let count = 1 + random(4); count > 0; count--)
    letters[random(letters.length)] = '{}[]",:\\x'[random(9)]!;
  return letters.join('');
}

function send(message: object): void {
  const body = JSON.stringify({ jsonrpc: '2.0', ...message });
  guard.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
}

async function answerTo(id: string): Promise<unknown> {
  while (!answers.has(id))
    await new Promise<void>(resolve => {
      wake = resolve;
    });
  return answers.get(id);
}
