import { setFlagsFromString } from 'node:v8';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { DiskFiles } from '../disk/disk-files.js';
import { HeaderGuard } from './header-guard.js';
import type { ServerContext, TailshaftServices } from './services.js';
import { startServer } from './start.js';
import { wholeWorkspace } from './workspace/whole-workspace.js';

/** The server as a process of its own, over stdio or the channel that its arguments name. */
export function startNodeServer(
  about: Pick<ServerContext, 'version' | 'pages' | 'asksForPages'> = {},
): TailshaftServices {
  const connection = process.argv.includes('--stdio')
    ? createConnection(ProposedFeatures.all, guardedInput(), process.stdout)
    : createConnection(ProposedFeatures.all);
  const services = startServer({
    connection,
    fileSystemProvider: () => new DiskFiles(),
    ...about,
  });
  spareMemory(services);
  return services;
}

/**
 * What reading a workspace leaves behind is collected early, so that a server does not keep three times what it needs for
 * the rest of its day; then the usual rhythm returns, since collecting often would make keys wait.
 */
function spareMemory(services: TailshaftServices): void {
  setFlagsFromString('--heap-growing-percent=40');
  const usual = () => setFlagsFromString('--heap-growing-percent=0');
  wholeWorkspace(services).then(usual, usual);
}

/** Standard input without messages that nobody could find the end of. Standard output belongs to the protocol alone. */
function guardedInput(): NodeJS.ReadableStream {
  for (const method of ['log', 'info', 'debug'] as const) console[method] = console.error;
  const guard = new HeaderGuard(message => console.error(message));
  process.stdin.on('close', () => guard.end());
  return process.stdin.pipe(guard);
}
