import * as vscode from 'vscode';
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';
import { answerFileRequests } from './fileRequests.js';

export const LANGUAGE = 'tailshaft';

/** What both hosts tell the server. Specs are read through the editor, so any file system that it can open works. */
export function clientOptions(): LanguageClientOptions {
  return {
    documentSelector: [{ language: LANGUAGE }],
    synchronize: { configurationSection: LANGUAGE },
    outputChannelName: 'Tailshaft',
  };
}

/** Starts the client and offers the command that starts it anew. */
export async function startClient(
  context: vscode.ExtensionContext,
  make: () => BaseLanguageClient,
): Promise<void> {
  let client = make();
  answerFileRequests(client);
  context.subscriptions.push(
    vscode.commands.registerCommand('tailshaft.restartServer', async () => {
      await client.stop();
      client = make();
      answerFileRequests(client);
      await client.start();
    }),
    { dispose: () => void client.stop() },
  );
  await client.start();
}
