import { NodeFileSystem } from 'langium/node';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import type { TailshaftServices } from './services.js';
import { startServer } from './start.js';

/** The server as a process of its own, over stdio or the channel that its arguments name. */
export function startNodeServer(version?: string): TailshaftServices {
  const connection = createConnection(ProposedFeatures.all);
  return startServer({ connection, ...NodeFileSystem, ...(version ? { version } : {}) });
}
