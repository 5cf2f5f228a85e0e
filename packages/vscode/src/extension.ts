import * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { clientOptions, startClient } from './client.js';
import { registerTasks } from './commands/tasks.js';
import { registerFeatures } from './features.js';
import { LANGUAGE } from './session.js';

/** Desktop: the server is a Node process. */
export function activate(context: vscode.ExtensionContext): void {
  const module = context.asAbsolutePath('dist/server-node.js');
  const env = { TAILSHAFT_CACHE: vscode.Uri.joinPath(context.globalStorageUri, 'code').fsPath };
  const session = startClient(
    context,
    () =>
      new LanguageClient(
        LANGUAGE,
        'Tailshaft',
        {
          run: { module, transport: TransportKind.ipc, options: { env } },
          debug: { module, transport: TransportKind.ipc, options: { execArgv: ['--inspect=6013'] } },
        },
        clientOptions(),
      ),
  );
  registerFeatures(context, session);
  // A Node host beside the files has git wherever the editor's own extension for it is there, in a browser window too.
  const hasGit = vscode.extensions.getExtension('vscode.git') !== undefined;
  void vscode.commands.executeCommand('setContext', 'tailshaft.hasGit', hasGit);
  context.subscriptions.push(registerTasks());
}
