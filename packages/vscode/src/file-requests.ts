import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { rulePage } from './commands/rule-pages.js';

/**
 * A server in a web worker has no disk: it asks the editor, which knows every file system that is mounted.
 * Answers are plain data; what is not there is answered with null.
 */
export function answerFileRequests(client: BaseLanguageClient): void {
  client.onRequest('tailshaft/fs/stat', async ({ uri }: { uri: string }) => {
    try {
      const stat = await vscode.workspace.fs.stat(vscode.Uri.parse(uri));
      return {
        isFile: (stat.type & vscode.FileType.File) !== 0,
        isDirectory: (stat.type & vscode.FileType.Directory) !== 0,
      };
    } catch {
      return null;
    }
  });
  client.onRequest('tailshaft/fs/readFile', async ({ uri }: { uri: string }) => {
    try {
      const bytes = await vscode.workspace.fs.readFile(vscode.Uri.parse(uri));
      return { text: new TextDecoder('utf-8').decode(bytes) };
    } catch {
      return null;
    }
  });
  // The server carries no texts of the rules: they are read from their pages when somebody asks.
  client.onRequest('tailshaft/page', async ({ code }: { code: string }) => ({ text: await rulePage(code) }));
  client.onRequest('tailshaft/fs/readDirectory', async ({ uri }: { uri: string }) => {
    try {
      const listed = await vscode.workspace.fs.readDirectory(vscode.Uri.parse(uri));
      const entries = listed.map(([name, type]) => ({
        name,
        isFile: (type & vscode.FileType.File) !== 0,
        isDirectory: (type & vscode.FileType.Directory) !== 0,
      }));
      return { entries };
    } catch {
      return null;
    }
  });
}
