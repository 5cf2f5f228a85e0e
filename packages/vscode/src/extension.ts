import type * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { clientOptions, startClient } from './client.js';
import { registerTasks } from './commands/tasks.js';
import { registerFeatures } from './features.js';
import { LANGUAGE } from './session.js';

/** Desktop: the server is a Node process. */
export function activate(context: vscode.ExtensionContext): void {
  const module = context.asAbsolutePath('dist/server.js');
  const session = startClient(
    context,
    () =>
      new LanguageClient(
        LANGUAGE,
        'Tailshaft',
        {
          run: { module, transport: TransportKind.ipc },
          debug: { module, transport: TransportKind.ipc, options: { execArgv: ['--inspect=6013'] } },
        },
        clientOptions(),
      ),
  );
  registerFeatures(context, session);
  context.subscriptions.push(registerTasks());
}
