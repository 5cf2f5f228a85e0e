import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { DiskFiles } from '../disk/diskFiles.js';
import { HeaderGuard } from './headerGuard.js';
import type { ServerContext, TailshaftServices } from './services.js';
import { startServer } from './start.js';

/** The server as a process of its own, over stdio or the channel that its arguments name. */
export function startNodeServer(
  about: Pick<ServerContext, 'version' | 'pages' | 'asksForPages'> = {},
): TailshaftServices {
  const connection = process.argv.includes('--stdio')
    ? createConnection(ProposedFeatures.all, guardedInput(), process.stdout)
    : createConnection(ProposedFeatures.all);
  return startServer({
    connection,
    fileSystemProvider: () => new DiskFiles(),
    ...about,
  });
}

/** Standard input without messages that nobody could find the end of. Standard output belongs to the protocol alone. */
function guardedInput(): NodeJS.ReadableStream {
  for (const method of ['log', 'info', 'debug'] as const) console[method] = console.error;
  const guard = new HeaderGuard(message => console.error(message));
  process.stdin.on('close', () => guard.end());
  return process.stdin.pipe(guard);
}
