import * as vscode from 'vscode';
import { LANGUAGE } from '../session.js';

/** Opens an example repower as a new text, for trying things out: nothing is written anywhere. */
export function registerExample(context: vscode.ExtensionContext): vscode.Disposable {
  return vscode.commands.registerCommand('tailshaft.openExample', async () => {
    const bytes = await vscode.workspace.fs.readFile(
      vscode.Uri.joinPath(context.extensionUri, 'dist/example.shaft'),
    );
    const content = new TextDecoder('utf-8').decode(bytes);
    const document = await vscode.workspace.openTextDocument({ language: LANGUAGE, content });
    await vscode.window.showTextDocument(document, { preview: false });
  });
}
