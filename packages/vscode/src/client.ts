import * as vscode from 'vscode';
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';
import { PAGES } from './commands/rule-pages.js';
import { answerFileRequests } from './file-requests.js';
import { CHECKED, type Requests } from './requests.js';
import { LANGUAGE, type Session } from './session.js';

/** What both hosts tell the server. Specs are read through the editor, so any file system that it can open works. */
export function clientOptions(more: { readonly scripts?: string } = {}): LanguageClientOptions {
  return {
    documentSelector: [{ language: LANGUAGE }],
    synchronize: { configurationSection: LANGUAGE },
    outputChannelName: 'Tailshaft',
    // The code of a finding leads to its page in the extension, unless the settings say where the pages are published.
    initializationOptions: { pages: PAGES, ...more },
  };
}

/** Starts the client and offers the command that starts it anew. */
export function startClient(context: vscode.ExtensionContext, make: () => BaseLanguageClient): Session {
  const checked = new vscode.EventEmitter<string>();
  let client = make();
  let started = begin();
  function begin(): Promise<void> {
    answerFileRequests(client);
    client.onNotification(CHECKED, ({ uri }: { uri: string }) => checked.fire(uri));
    return client.start();
  }
  context.subscriptions.push(
    checked,
    vscode.commands.registerCommand('tailshaft.restartServer', async () => {
      await client.stop();
      client = make();
      started = begin();
      await started;
    }),
    { dispose: () => void client.stop() },
  );
  return {
    onChecked: checked.event,
    async request(name, ...given) {
      try {
        await started;
        const question: unknown = given[0];
        return await (question === undefined
          ? client.sendRequest<Requests[typeof name][1]>(name)
          : client.sendRequest<Requests[typeof name][1]>(name, question));
      } catch (error) {
        client.error(`${name} was not answered.`, error, false);
        return undefined;
      }
    },
  };
}
