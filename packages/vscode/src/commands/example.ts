import type { Hand } from '@tailshaft/drivetrain';
import * as vscode from 'vscode';
import { LANGUAGE } from '../session.js';

const MISTAKE = 'rotation/propeller-hand';

/** The example repower as a text to try things out on: nothing is written anywhere. */
export class Example {
  private shown: vscode.TextDocument | undefined;

  constructor(private readonly extensionUri: vscode.Uri) {}

  /** The example that was opened, or a new one. */
  async document(): Promise<vscode.TextDocument> {
    if (this.shown && !this.shown.isClosed) return this.shown;
    const bytes = await vscode.workspace.fs.readFile(
      vscode.Uri.joinPath(this.extensionUri, 'dist/example.shaft'),
    );
    const content = new TextDecoder('utf-8').decode(bytes);
    this.shown = await vscode.workspace.openTextDocument({ language: LANGUAGE, content });
    return this.shown;
  }

  async show(): Promise<vscode.TextEditor> {
    return vscode.window.showTextDocument(await this.document(), { preview: false });
  }

  /** Turns the hand of a propeller round, as the walkthrough tells, and opens the list of ways out there. */
  async makeMistake(): Promise<void> {
    const editor = await this.show();
    const { document } = editor;
    const found = /arrangement proposed[\s\S]*?\bhand (left|right)\b/.exec(document.getText());
    if (!found) return;
    const [all, hand] = [found[0]!, found[1] as Hand];
    const end = found.index + all.length;
    const range = new vscode.Range(document.positionAt(end - hand.length), document.positionAt(end));
    const other: Hand = hand === 'left' ? 'right' : 'left';
    if (!isFound(document)) await editor.edit(edit => edit.replace(range, other));
    editor.selection = new vscode.Selection(range.start, range.start);
    editor.revealRange(range, vscode.TextEditorRevealType.InCenter);
    await finding(document);
    // The ways out are worked out the first time they are asked for: the list opens when they are there.
    await vscode.commands.executeCommand('vscode.executeCodeActionProvider', document.uri, range);
    await vscode.window.showTextDocument(document, { preview: false, selection: editor.selection });
    await vscode.commands.executeCommand('editor.action.quickFix');
  }
}

export function registerExample(example: Example): vscode.Disposable {
  return vscode.Disposable.from(
    vscode.commands.registerCommand('tailshaft.openExample', () => example.show()),
    vscode.commands.registerCommand('tailshaft.makeMistake', () => example.makeMistake()),
  );
}

function isFound({ uri }: vscode.TextDocument): boolean {
  return vscode.languages
    .getDiagnostics(uri)
    .some(({ code }) => (typeof code === 'object' ? code.value : code) === MISTAKE);
}

/** Waits for the finding, but not for ever: the list of ways out is opened either way. */
function finding(document: vscode.TextDocument): Promise<void> {
  return new Promise(resolve => {
    const look = () => {
      if (isFound(document)) done();
    };
    const listener = vscode.languages.onDidChangeDiagnostics(look);
    const limit = setTimeout(() => done(), 10_000);
    function done() {
      listener.dispose();
      clearTimeout(limit);
      resolve();
    }
    look();
  });
}
