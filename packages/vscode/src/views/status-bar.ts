import type { OutlineNode } from '@tailshaft/language/server';
import * as vscode from 'vscode';
import { once } from '../once.js';
import { LANGUAGE, type Session } from '../session.js';
import { specInView } from '../spec-in-view.js';
import { type Gravity, iconName, standing } from './standing.js';

/** How the checks of the spec in the active editor stand; a click opens its sheet. */
export function registerStatusBar(session: Session): vscode.Disposable {
  const item = vscode.window.createStatusBarItem('tailshaft.standing', vscode.StatusBarAlignment.Left, 10);
  item.name = vscode.l10n.t('Drivetrain checks');
  let shown = 0;
  const update = async () => {
    const turn = ++shown;
    const document = specInView();
    const enabled = vscode.workspace.getConfiguration(LANGUAGE).get('statusBar.show', true);
    if (!document || !enabled) return item.hide();
    if (isElsewhere(document.uri)) return showUnjudged(item);
    const outline = await session.request('tailshaft/outline', {
      textDocument: { uri: document.uri.toString() },
    });
    if (turn !== shown) return undefined;
    if (!outline || outline.vessels.length === 0) return item.hide();
    const counts = sum(outline.vessels);
    const gravity = gravest(outline.vessels);
    item.text = `$(${iconName(counts, gravity)}) ${standing(counts)}`;
    item.tooltip = tooltip(outline.vessels);
    item.command = {
      command: 'tailshaft.showSheet',
      title: vscode.l10n.t('Show the sheet'),
      arguments: [document.uri.toString()],
    };
    item.accessibilityInformation = { label: vscode.l10n.t('Drivetrain checks: {0}', standing(counts)) };
    item.backgroundColor =
      gravity.errors > 0 ? new vscode.ThemeColor('statusBarItem.errorBackground') : undefined;
    return item.show();
  };
  const soon = once(() => void update(), 50);
  void update();
  return vscode.Disposable.from(
    item,
    session.onChecked(uri => {
      if (uri === specInView()?.uri.toString()) soon();
    }),
    vscode.window.onDidChangeActiveTextEditor(soon),
    vscode.workspace.onDidChangeConfiguration(change => {
      if (change.affectsConfiguration(LANGUAGE)) soon();
    }),
  );
}

/** The old side of a comparison, or a file of another folder: shown, but no text of the workspace. */
function isElsewhere(uri: vscode.Uri): boolean {
  const { workspaceFolders, getWorkspaceFolder } = vscode.workspace;
  return uri.scheme !== 'untitled' && (workspaceFolders?.length ?? 0) > 0 && !getWorkspaceFolder(uri);
}

/** Says that nothing was judged, since silence would look like a spec without findings. */
function showUnjudged(item: vscode.StatusBarItem): void {
  item.text = `$(circle-slash) ${vscode.l10n.t('Not judged')}`;
  item.tooltip = vscode.l10n.t(
    'Only files of the open folder are judged: this one belongs to another folder or an earlier revision.',
  );
  item.command = undefined;
  item.accessibilityInformation = { label: vscode.l10n.t('Drivetrain checks: not judged') };
  item.backgroundColor = undefined;
  item.show();
}

function sum(vessels: readonly OutlineNode[]): OutlineNode['counts'] {
  const total = { held: 0, failed: 0, unknown: 0, accepted: 0, asFound: 0 };
  for (const { counts } of vessels)
    for (const key of Object.keys(total) as (keyof typeof total)[]) total[key] += counts[key];
  return total;
}

function gravest(vessels: readonly OutlineNode[]): Gravity {
  return {
    errors: vessels.reduce((sum, one) => sum + one.errors, 0),
    warnings: vessels.reduce((sum, one) => sum + one.warnings, 0),
  };
}

/** What is worst, then every line with its own standing. */
function tooltip(vessels: readonly OutlineNode[]): vscode.MarkdownString {
  const text = new vscode.MarkdownString('', true);
  for (const vessel of vessels) {
    text
      .appendMarkdown('**')
      .appendText(vessel.title ?? vessel.name)
      .appendMarkdown('**\n\n');
    if (vessel.worst) text.appendText(vessel.worst).appendMarkdown('\n\n');
    text.appendText(vscode.l10n.t('Checks: {0}', standing(vessel.counts))).appendMarkdown('\n\n');
    for (const arrangement of vessel.children)
      for (const line of arrangement.children)
        text
          .appendMarkdown(`- $(${iconName(line.counts, line)}) `)
          .appendText(`${arrangement.name}, ${line.name}: ${standing(line.counts)}`)
          .appendMarkdown('\n');
    text.appendMarkdown('\n');
  }
  return text;
}
