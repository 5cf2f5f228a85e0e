import * as vscode from 'vscode';

export const PAGE_VIEW = 'tailshaft.page';

/** Opens a page for reading, in the column that pages stand in already, or beside the text. */
export async function showPage(page: vscode.Uri): Promise<void> {
  const column = columnOfPages() ?? vscode.ViewColumn.Beside;
  await vscode.commands.executeCommand('vscode.openWith', page, PAGE_VIEW, {
    viewColumn: column,
    preview: true,
  });
}

function columnOfPages(): vscode.ViewColumn | undefined {
  const isPage = ({ input }: vscode.Tab) =>
    input instanceof vscode.TabInputCustom && input.viewType === PAGE_VIEW;
  return vscode.window.tabGroups.all.find(group => group.tabs.some(isPage))?.viewColumn;
}
