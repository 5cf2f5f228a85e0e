import * as vscode from 'vscode';
import type { MarkNote, OtherTexts } from '../requests.js';
import type { Session } from '../session.js';
import { specOf } from './compare.js';
import { repositoryOf, textsAt } from './git-texts.js';

/** A spec whose changes since a revision are marked, with its texts of that time. */
interface Marked {
  readonly revision: string;
  readonly before: OtherTexts;
  notes: readonly MarkNote[];
}

/** Marks in the text on the lines whose consequence moved against a git revision, with what moved on hover. */
export function registerMarks(session: Session): vscode.Disposable {
  const marked = new Map<string, Marked>();
  const looks = {
    worse: look('editorError.foreground'),
    better: look('editorInfo.foreground'),
    moved: look('editorWarning.foreground'),
  };
  const paint = () => {
    for (const editor of vscode.window.visibleTextEditors) {
      const notes = marked.get(editor.document.uri.toString())?.notes ?? [];
      for (const gravity of ['worse', 'better', 'moved'] as const)
        editor.setDecorations(
          looks[gravity],
          notes.filter(one => one.gravity === gravity).map(one => decoration(editor.document, one)),
        );
    }
  };
  const renew = async (uri: string) => {
    const one = marked.get(uri);
    if (!one) return;
    const notes = await session.request('tailshaft/marks', { textDocument: { uri }, before: one.before });
    // It may have been cleared, or marked against another revision, meanwhile.
    if (!notes || marked.get(uri) !== one) return;
    one.notes = notes;
    paint();
  };
  const decoration = (document: vscode.TextDocument, { line, words }: MarkNote): vscode.DecorationOptions => {
    const hover = new vscode.MarkdownString();
    const since = marked.get(document.uri.toString())?.revision ?? '';
    hover.appendText(vscode.l10n.t('Since {0}:', since));
    for (const one of words) hover.appendMarkdown('\n\n- ').appendText(one);
    const last = Math.min(line, document.lineCount - 1);
    return { range: document.lineAt(last).range, hoverMessage: hover };
  };
  return vscode.Disposable.from(
    ...Object.values(looks),
    session.onChecked(uri => void renew(uri)),
    vscode.window.onDidChangeVisibleTextEditors(paint),
    vscode.workspace.onDidCloseTextDocument(({ uri }) => marked.delete(uri.toString())),
    vscode.commands.registerCommand('tailshaft.markChanges', async (given?: unknown) => {
      const spec = specOf(given);
      if (!spec) return;
      const repository = await repositoryOf(spec);
      if (!repository) {
        void vscode.window.showInformationMessage(
          vscode.l10n.t('This file is in no git repository that the editor has open.'),
        );
        return;
      }
      const revision = await vscode.window.showInputBox({
        prompt: vscode.l10n.t('Mark what moved since which revision? A branch, a tag, a commit, or HEAD~1.'),
        value: marked.get(spec.toString())?.revision ?? 'HEAD',
      });
      if (!revision) return;
      const before = await textsAt(session, repository, revision, spec);
      if (!before) {
        void vscode.window.showWarningMessage(vscode.l10n.t('This file does not exist at {0}.', revision));
        return;
      }
      marked.set(spec.toString(), { revision, before, notes: [] });
      await vscode.window.showTextDocument(spec, { preview: false });
      await renew(spec.toString());
    }),
    vscode.commands.registerCommand('tailshaft.clearMarks', () => {
      marked.clear();
      paint();
    }),
  );
}

function look(colour: string): vscode.TextEditorDecorationType {
  return vscode.window.createTextEditorDecorationType({
    isWholeLine: true,
    borderStyle: 'solid',
    borderWidth: '0 0 0 3px',
    borderColor: new vscode.ThemeColor(colour),
    overviewRulerColor: new vscode.ThemeColor(colour),
    overviewRulerLane: vscode.OverviewRulerLane.Left,
  });
}
