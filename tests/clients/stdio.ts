import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { pathToFileURL } from 'node:url';
import { createMessageConnection, type MessageConnection } from 'vscode-jsonrpc/node';
import type {
  CodeAction,
  Command,
  Diagnostic,
  Hover,
  InitializeResult,
  Position,
  PublishDiagnosticsParams,
  Range,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { serverCommand } from './server-command.js';

export interface StdioClientOptions {
  /** Program and arguments; the built server under this Node when left out. */
  readonly command?: readonly string[];
  readonly cwd?: string;
  /** Milliseconds that a request or a wait may take. */
  readonly limit?: number;
}

/** A bare language client: one server process, its answers, and nothing that an editor would add. */
export class StdioClient {
  readonly connection: MessageConnection;
  readonly process: ChildProcessWithoutNullStreams;
  /** What the server wrote beside the protocol. */
  stderr = '';
  private readonly published = new Map<string, Diagnostic[]>();
  private readonly publishedVersions = new Map<string, number>();
  private readonly versions = new Map<string, number>();
  private readonly listeners = new Set<() => void>();
  private readonly exited: Promise<number | null>;
  private readonly limit: number;

  constructor({ command = serverCommand(), cwd, limit = 30_000 }: StdioClientOptions = {}) {
    const [program, ...given] = command;
    this.limit = limit;
    this.process = spawn(program!, given, cwd === undefined ? {} : { cwd });
    this.exited = new Promise(resolve => {
      this.process.once('exit', code => resolve(code));
      this.process.once('error', () => resolve(null));
    });
    this.process.stderr.setEncoding('utf8').on('data', (text: string) => {
      this.stderr += text;
    });
    this.connection = createMessageConnection(this.process.stdout, this.process.stdin);
    this.connection.onNotification('textDocument/publishDiagnostics', (each: PublishDiagnosticsParams) => {
      this.published.set(each.uri, each.diagnostics);
      if (each.version !== undefined) this.publishedVersions.set(each.uri, each.version);
      for (const listener of this.listeners) listener();
    });
    // Requests that a server may send to any client, answered as an editor without settings would.
    this.connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) =>
      items.map(() => null),
    );
    this.connection.onRequest('client/registerCapability', () => null);
    this.connection.onRequest('window/workDoneProgress/create', () => null);
    this.connection.listen();
  }

  async initialize(folder?: string, capabilities: object = {}, options?: unknown): Promise<InitializeResult> {
    const uri = folder === undefined ? null : pathToFileURL(folder).href;
    const result = await this.request<InitializeResult>('initialize', {
      processId: process.pid,
      rootUri: uri,
      workspaceFolders: uri === null ? null : [{ uri, name: 'workspace' }],
      capabilities,
      initializationOptions: options,
    });
    await this.notify('initialized', {});
    return result;
  }

  open(uri: string, text: string, languageId = 'tailshaft'): Promise<void> {
    this.versions.set(uri, 1);
    return this.notify('textDocument/didOpen', { textDocument: { uri, languageId, version: 1, text } });
  }

  /** Sends the whole new text, or one replaced range when `range` is given. Returns the new version. */
  async change(uri: string, text: string, range?: Range): Promise<number> {
    const version = (this.versions.get(uri) ?? 0) + 1;
    this.versions.set(uri, version);
    const contentChanges = [range ? { range, text } : { text }];
    await this.notify('textDocument/didChange', { textDocument: { uri, version }, contentChanges });
    return version;
  }

  closeDocument(uri: string): Promise<void> {
    return this.notify('textDocument/didClose', { textDocument: { uri } });
  }

  /** The last published findings of the document that are as wanted. Waits for them. */
  waitDiagnostics(
    uri: string,
    wanted: (found: readonly Diagnostic[], version: number | undefined) => boolean = () => true,
  ): Promise<readonly Diagnostic[]> {
    return new Promise((resolve, reject) => {
      const look = () => {
        const found = this.published.get(uri);
        if (!found || !wanted(found, this.publishedVersions.get(uri))) return;
        stop();
        resolve(found);
      };
      const timer = setTimeout(() => {
        stop();
        const seen = JSON.stringify(this.published.get(uri));
        reject(new Error(`No such diagnostics in ${this.limit} ms; last: ${seen}\n${this.stderr}`));
      }, this.limit);
      const stop = () => {
        clearTimeout(timer);
        this.listeners.delete(look);
      };
      this.listeners.add(look);
      look();
    });
  }

  hover(uri: string, position: Position): Promise<Hover | null> {
    return this.request('textDocument/hover', { textDocument: { uri }, position });
  }

  codeAction(
    uri: string,
    range: Range,
    diagnostics: readonly Diagnostic[] = [],
    only?: readonly string[],
  ): Promise<(CodeAction | Command)[] | null> {
    const context = only ? { diagnostics, only } : { diagnostics };
    return this.request('textDocument/codeAction', { textDocument: { uri }, range, context });
  }

  rename(uri: string, position: Position, newName: string): Promise<WorkspaceEdit | null> {
    return this.request('textDocument/rename', { textDocument: { uri }, position, newName });
  }

  formatting(uri: string, options = { tabSize: 2, insertSpaces: true }): Promise<TextEdit[] | null> {
    return this.request('textDocument/formatting', { textDocument: { uri }, options });
  }

  async request<T>(method: string, params?: unknown): Promise<T> {
    let timer: NodeJS.Timeout | undefined;
    const late = new Promise<never>((_, reject) => {
      timer = setTimeout(
        () => reject(new Error(`${method}: no answer in ${this.limit} ms\n${this.stderr}`)),
        this.limit,
      );
    });
    const gone = this.exited.then(code => {
      throw new Error(`${method}: the server is gone (exit ${code})\n${this.stderr}`);
    });
    try {
      return await Promise.race([this.connection.sendRequest<T>(method, params), late, gone]);
    } finally {
      clearTimeout(timer);
    }
  }

  notify(method: string, params?: unknown): Promise<void> {
    return this.connection.sendNotification(method, params);
  }

  /** Ends the session by the book and returns the exit status. */
  async shutdown(): Promise<number | null> {
    await this.request('shutdown');
    await this.notify('exit');
    const code = await this.exited;
    this.connection.dispose();
    return code;
  }

  /** For cleaning up after a test that failed half-way. */
  kill(): void {
    this.connection.dispose();
    this.process.kill('SIGKILL');
  }
}
