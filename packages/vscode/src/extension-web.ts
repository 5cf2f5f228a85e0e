/// <reference lib="dom" />
import * as vscode from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { clientOptions, startClient } from './client.js';
import { registerFeatures } from './features.js';
import { LANGUAGE } from './session.js';

/** Browser: the server is a web worker. */
export function activate(context: vscode.ExtensionContext): void {
  const scripts = vscode.Uri.joinPath(context.extensionUri, 'dist/').toString(true);
  const session = startClient(
    context,
    () =>
      new LanguageClient(
        LANGUAGE,
        'Tailshaft',
        new Worker(`${scripts}server.js`),
        clientOptions({ scripts }),
      ),
  );
  registerFeatures(context, session);
}
