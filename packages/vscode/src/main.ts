import type * as vscode from 'vscode';

/**
 * One file for both hosts, as the server is one: how the server is started is all that differs, and shows when it runs. The
 * other way is never evaluated.
 */
export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const { activate } =
    typeof process === 'object' && typeof process.versions?.node === 'string'
      ? await import('./extension.js')
      : await import('./extension-web.js');
  activate(context);
}
