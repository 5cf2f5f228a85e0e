import { setInterruptionPeriod } from 'langium';
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
  ProposedFeatures,
} from 'vscode-languageserver/browser';
import { ClientFileSystem } from './client-file-system.js';
import type { ServerContext, TailshaftServices } from './services.js';
import { startServer } from './start.js';

/** The server in a web worker; the files of the workspace are asked of the client. */
export function startBrowserServer(
  scope: DedicatedWorkerScope,
  about: Pick<ServerContext, 'version' | 'asksForPages'> = {},
): TailshaftServices {
  const reader = new BrowserMessageReader(scope as never);
  const writer = new BrowserMessageWriter(scope as never);
  const connection = createConnection(ProposedFeatures.all, reader, writer);
  // Nested timers of a browser wait 4 ms each: yield less often than a process would.
  setInterruptionPeriod(50);
  return startServer({
    connection,
    fileSystemProvider: () => new ClientFileSystem(connection),
    ...about,
  });
}

/** `self` of a worker, without the types of the browser. */
export interface DedicatedWorkerScope {
  postMessage(message: unknown): void;
}
