import type { CancellationToken } from 'vscode-languageserver';
import type { TailshaftServices } from '../services.js';
import type { WorkspaceScan } from './scan.js';

/**
 * Resolves when every spec of the workspace has been found and read, also those that nobody opened: for questions whose
 * answer would be wrong if one were left out. A client that takes its question back is not kept waiting.
 */
export async function wholeWorkspace(
  { shared, queue }: TailshaftServices,
  token?: CancellationToken,
): Promise<void> {
  const scan = shared.workspace.WorkspaceManager as WorkspaceScan;
  const read = async () => {
    await scan.ready;
    await scan.found();
    await queue.idle();
  };
  if (!token) return read();
  await Promise.race([read(), cancelled(token)]);
}

/** Whether all of it has been read by now: for offers that may be left out, but must not be wrong. */
export function isWholeWorkspaceRead({ shared, queue }: TailshaftServices): boolean {
  return !(shared.workspace.WorkspaceManager as WorkspaceScan).searching && !queue.readsOn;
}

function cancelled(token: CancellationToken): Promise<void> {
  if (token.isCancellationRequested) return Promise.resolve();
  return new Promise(done => {
    token.onCancellationRequested(() => done());
  });
}
