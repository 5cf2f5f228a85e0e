import * as vscode from 'vscode';

/** Opens a page for reading; as text where this editor has no preview of Markdown. */
export async function showMarkdown(page: vscode.Uri): Promise<void> {
  try {
    await vscode.commands.executeCommand('markdown.showPreviewToSide', page);
  } catch {
    await vscode.window.showTextDocument(page, { viewColumn: vscode.ViewColumn.Beside, preview: true });
  }
}
