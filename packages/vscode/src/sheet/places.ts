import * as vscode from 'vscode';

/** Shows the text that a place of the sheet stands for: `line,character,line,character,…@address`. */
export async function goToPlace(place: string): Promise<void> {
  const at = place.indexOf('@');
  const numbers = place.slice(0, at).split(',').map(Number);
  if (at < 0 || numbers.length < 4 || !numbers.every(one => Number.isInteger(one) && one >= 0)) return;
  const [startLine, startCharacter, endLine, endCharacter] = numbers as [number, number, number, number];
  const uri = vscode.Uri.parse(place.slice(at + 1));
  const open = vscode.window.visibleTextEditors.find(one => one.document.uri.toString() === uri.toString());
  await vscode.window.showTextDocument(uri, {
    viewColumn: open?.viewColumn ?? vscode.ViewColumn.One,
    selection: new vscode.Range(startLine, startCharacter, endLine, endCharacter),
  });
}
