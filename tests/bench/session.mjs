import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { createMessageConnection } from 'vscode-jsonrpc/node';

const server =
  process.env.TAILSHAFT_CLI ?? resolve(import.meta.dirname, '../../packages/cli/dist/tailshaft.cjs');

/** One server process that is spoken to over stdio, with a clock. */
export class Session {
  constructor(
    folder,
    peer = { program: [server, 'serve', '--stdio'], language: 'tailshaft', versioned: true },
  ) {
    this.folder = folder;
    this.peer = peer;
    const flags = (process.env.BENCH_NODE_FLAGS ?? '').split(' ').filter(Boolean);
    this.process = spawn(process.execPath, [...flags, ...peer.program]);
    this.process.stderr.on('data', data => process.stderr.write(data));
    // A measurement of a server that is gone would wait for ever.
    this.process.once('exit', code => {
      if (!this.leaving) throw new Error(`The server is gone: exit ${code}`);
    });
    this.connection = createMessageConnection(this.process.stdout, this.process.stdin);
    this.listeners = new Set();
    this.lastMessage = performance.now();
    this.connection.onNotification('textDocument/publishDiagnostics', params => {
      this.lastMessage = performance.now();
      for (const listener of this.listeners) listener(params);
    });
    this.connection.onNotification('window/logMessage', params => console.error(params.message));
    this.connection.listen();
  }

  async initialize() {
    const uri = pathToFileURL(this.folder).href;
    await this.connection.sendRequest('initialize', {
      processId: process.pid,
      rootUri: uri,
      workspaceFolders: [{ uri, name: 'bench' }],
      capabilities: { textDocument: { publishDiagnostics: { versionSupport: true } } },
    });
    void this.connection.sendNotification('initialized', {});
  }

  open(uri, text) {
    const textDocument = { uri, languageId: this.peer.language, version: 1, text };
    void this.connection.sendNotification('textDocument/didOpen', { textDocument });
  }

  diagnosticsOf(uri, version) {
    return new Promise(done => {
      const listener = params => {
        if (params.uri !== uri || (this.peer.versioned && params.version !== version)) return;
        this.listeners.delete(listener);
        done(params.diagnostics);
      };
      this.listeners.add(listener);
    });
  }

  /** Waits until the server has been silent, and idle, for so long. */
  async quiet(milliseconds) {
    let before = this.ticks();
    for (;;) {
      await new Promise(done => setTimeout(done, milliseconds));
      const now = this.ticks();
      if (now - before < 3) return;
      before = now;
    }
  }

  /** Types a digit into a number in the middle of the text and takes it out again, waiting for the diagnostics of each key. */
  async type(uri, text, count, asking) {
    const rows = text.split('\n');
    const wanted = rows.flatMap((row, line) => {
      const found = /\b(?:pitch|diameter)(?: |: ")\d/.exec(row);
      return found ? [{ line, character: found.index + found[0].length }] : [];
    });
    const times = [];
    const work = [];
    let version = 1;
    for (let key = 0; key < count + 10; key++) {
      // Every second key takes out again what the one before it typed.
      const start = wanted[((key - (key % 2)) * 7) % wanted.length];
      const end = { line: start.line, character: start.character + 1 };
      const change =
        key % 2 === 0 ? { range: { start, end: start }, text: '1' } : { range: { start, end }, text: '' };
      version += 1;
      const there = this.diagnosticsOf(uri, version);
      const started = performance.now();
      const before = this.atWork();
      void this.connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [change],
      });
      await there;
      // The first keys warm the machine up.
      if (key >= 10) times.push(performance.now() - started);
      if (key >= 10) work.push(this.atWork() - before);
      if (asking) await this.ask(uri, rows.length);
      await new Promise(done => setTimeout(done, 25));
    }
    return { times, work };
  }

  /** What an editor asks for after a key. */
  async ask(uri, lines) {
    const textDocument = { uri };
    const range = { start: { line: 0, character: 0 }, end: { line: Math.min(60, lines - 1), character: 0 } };
    await Promise.all([
      this.connection.sendRequest('textDocument/semanticTokens/full', { textDocument }),
      this.connection.sendRequest('textDocument/inlayHint', { textDocument, range }),
      this.connection.sendRequest('textDocument/codeLens', { textDocument }),
      this.connection.sendRequest('textDocument/documentSymbol', { textDocument }),
      this.connection.sendRequest('textDocument/foldingRange', { textDocument }),
    ]);
  }

  ticks() {
    try {
      const stat = readFileSync(`/proc/${this.process.pid}/stat`, 'utf8').split(') ')[1].split(' ');
      return Number(stat[11]) + Number(stat[12]);
    } catch {
      return 0;
    }
  }

  /** Milliseconds that the server's own thread has been at work: on a busy machine the clock tells of the others. */
  atWork() {
    try {
      const { pid } = this.process;
      return Number(readFileSync(`/proc/${pid}/task/${pid}/schedstat`, 'utf8').split(' ')[0]) / 1e6;
    } catch {
      return Number.NaN;
    }
  }

  memory() {
    try {
      const status = readFileSync(`/proc/${this.process.pid}/status`, 'utf8');
      return Math.round(Number(/VmRSS:\s+(\d+)/.exec(status)[1]) / 1024);
    } catch {
      return undefined;
    }
  }

  /** Leaves by the book, so that a profiler can write what it saw. */
  async end() {
    this.leaving = true;
    const gone = new Promise(done => this.process.once('exit', done));
    await this.connection.sendRequest('shutdown');
    await this.connection.sendNotification('exit');
    await gone;
    this.connection.dispose();
  }
}
