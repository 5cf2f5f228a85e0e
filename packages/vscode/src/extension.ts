import type * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { clientOptions, LANGUAGE, startClient } from './client.js';

/** Desktop: the server is a Node process. */
export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const module = context.asAbsolutePath('dist/server.cjs');
  await startClient(
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
}
