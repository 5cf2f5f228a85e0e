import { PassThrough } from 'node:stream';
import {
  type ClientCapabilities,
  createConnection,
  createProtocolConnection,
  DidChangeTextDocumentNotification,
  DidChangeWatchedFilesNotification,
  DidCloseTextDocumentNotification,
  DidOpenTextDocumentNotification,
  type FileChangeType,
  InitializeRequest,
  type InitializeResult,
  LogMessageNotification,
  type ProtocolConnection,
  PublishDiagnosticsNotification,
  type PublishDiagnosticsParams,
  RegistrationRequest,
  ShutdownRequest,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import type { TailshaftServices } from '../../src/server/services.js';
import { startServer } from '../../src/server/start.js';
import { FOLDER, MemoryFiles, uriOf } from './memory-files.js';

/** A client and a server that talk over streams, as two processes would. */
export class Wire {
  readonly client: ProtocolConnection;
  readonly services: TailshaftServices;
  readonly published: PublishDiagnosticsParams[] = [];
  readonly logged: string[] = [];
  readonly registered: { method: string; registerOptions?: unknown }[] = [];
  readonly files: MemoryFiles;
  hello!: InitializeResult;
  private versions = new Map<string, number>();

  private constructor(files: Readonly<Record<string, string>>) {
    this.files = new MemoryFiles(files);
    const [up, down] = [new PassThrough(), new PassThrough()];
    const connection = createConnection(new StreamMessageReader(up), new StreamMessageWriter(down));
    this.services = startServer({ connection, fileSystemProvider: () => this.files, version: '1.2.3' });
    this.services.project.today = () => '2026-06-01';
    this.client = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
    this.client.onNotification(
      PublishDiagnosticsNotification.type,
      params => void this.published.push(params),
    );
    this.client.onNotification(LogMessageNotification.type, ({ message }) => void this.logged.push(message));
    this.client.onRequest(RegistrationRequest.type, ({ registrations }) => {
      this.registered.push(...registrations);
    });
    this.client.listen();
  }

  static async start(
    files: Readonly<Record<string, string>> = {},
    capabilities: ClientCapabilities = {},
    options: { folders?: boolean; settings?: unknown; delay?: number; given?: unknown } = {},
  ): Promise<Wire> {
    const wire = new Wire(files);
    wire.files.delay = options.delay ?? 0;
    wire.client.onRequest('workspace/configuration', () => [options.settings ?? null]);
    wire.hello = await wire.client.sendRequest(InitializeRequest.type, {
      processId: null,
      rootUri: null,
      capabilities,
      ...(options.given ? { initializationOptions: options.given } : {}),
      workspaceFolders: options.folders === false ? null : [{ uri: FOLDER, name: 'yard' }],
    });
    await wire.client.sendNotification('initialized', {});
    return wire;
  }

  async open(path: string, text: string): Promise<void> {
    this.versions.set(path, 1);
    await this.client.sendNotification(DidOpenTextDocumentNotification.type, {
      textDocument: { uri: uriOf(path), languageId: 'tailshaft', version: 1, text },
    });
  }

  async type(path: string, text: string): Promise<number> {
    const version = this.versions.get(path)! + 1;
    this.versions.set(path, version);
    await this.client.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: { uri: uriOf(path), version },
      contentChanges: [{ text }],
    });
    return version;
  }

  async close(path: string): Promise<void> {
    await this.client.sendNotification(DidCloseTextDocumentNotification.type, {
      textDocument: { uri: uriOf(path) },
    });
  }

  async fileChanged(path: string, type: FileChangeType): Promise<void> {
    await this.client.sendNotification(DidChangeWatchedFilesNotification.type, {
      changes: [{ uri: uriOf(path), type }],
    });
  }

  /** Waits until the server has nothing left to do, and gives what it published meanwhile. */
  async quiet(): Promise<PublishDiagnosticsParams[]> {
    const from = this.published.length;
    await this.settle();
    return this.published.slice(from);
  }

  async settle(): Promise<void> {
    for (let round = 0; round < 3; round++) {
      await this.delivered();
      await new Promise(resolve => setTimeout(resolve, 15));
      await this.services.queue.idle();
    }
    await this.delivered();
  }

  /** Messages are kept in order: once this is answered, the server has all before it, and what it sent before is here. */
  private async delivered(): Promise<void> {
    await this.client.sendRequest('test/nothing').catch(() => undefined);
  }

  /** The diagnostics last published for a file, as `code` list. */
  codes(path: string): string[] | undefined {
    const last = this.published.findLast(one => one.uri === uriOf(path));
    return last?.diagnostics.map(one => String(one.code));
  }

  async stop(): Promise<void> {
    await this.client.sendRequest(ShutdownRequest.type);
    this.client.dispose();
  }
}
