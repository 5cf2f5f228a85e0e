/// <reference lib="dom" />
import * as vscode from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { clientOptions, LANGUAGE, startClient } from './client.js';

/** Browser: the server is a web worker. */
export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const script = vscode.Uri.joinPath(context.extensionUri, 'dist/server-web.js').toString(true);
  await startClient(
    context,
    () => new LanguageClient(LANGUAGE, 'Tailshaft', new Worker(script), clientOptions()),
  );
}
