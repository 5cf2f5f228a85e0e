import * as vscode from 'vscode';
import { showPage } from '../pages/show-page.js';
import type { CompareQuestion } from '../requests.js';
import type { Session } from '../session.js';
import { specAtWork } from '../spec-in-view.js';
import { repositoryOf, textsAt } from './git-texts.js';

const SCHEME = 'tailshaft-comparison';

/** Comparisons by consequence: with another file, and with another git revision. */
export function registerComparisons(session: Session): vscode.Disposable {
  const pages = new Map<string, string>();
  const changed = new vscode.EventEmitter<vscode.Uri>();
  const show = async (spec: vscode.Uri, label: string, before: CompareQuestion['before']) => {
    const answer = await session.request('tailshaft/compare', {
      textDocument: { uri: spec.toString() },
      before,
    });
    if (!answer) {
      void vscode.window.showWarningMessage(
        vscode.l10n.t('The comparison could not be made; the output says why.'),
      );
      return;
    }
    const name = spec.path.split('/').at(-1)!;
    const page = vscode.Uri.from({ scheme: SCHEME, path: `/${label.replace(/[/\\]/g, '-')} → ${name}.md` });
    pages.set(page.path, `# ${label} → ${name}\n\n${answer.markdown}`);
    changed.fire(page);
    await showPage(page);
  };
  return vscode.Disposable.from(
    changed,
    vscode.workspace.registerTextDocumentContentProvider(SCHEME, {
      onDidChange: changed.event,
      provideTextDocumentContent: ({ path }) => pages.get(path) ?? '',
    }),
    vscode.commands.registerCommand('tailshaft.compareWithFile', async (given?: unknown) => {
      const spec = specOf(given);
      if (!spec) return;
      const other = await pickFile(session, spec);
      if (other)
        await show(spec, vscode.workspace.asRelativePath(other), { textDocument: { uri: other.toString() } });
    }),
    vscode.commands.registerCommand('tailshaft.compareWithRevision', async (given?: unknown) => {
      const spec = specOf(given);
      if (!spec) return;
      const repository = await repositoryOf(spec);
      if (!repository) {
        void vscode.window.showInformationMessage(
          vscode.l10n.t('This file is not in a git repository that the editor has open.'),
        );
        return;
      }
      const revision = await vscode.window.showInputBox({
        prompt: vscode.l10n.t('Compare with which revision? A branch, a tag, a commit, or HEAD~1.'),
        value: 'HEAD',
      });
      if (!revision) return;
      const before = await textsAt(session, repository, revision, spec);
      if (!before) {
        void vscode.window.showWarningMessage(vscode.l10n.t('This file does not exist at {0}.', revision));
        return;
      }
      await show(spec, revision, before);
    }),
  );
}

/** The spec that a command is about: what was clicked in the Explorer, or what is being edited. */
export function specOf(given: unknown): vscode.Uri | undefined {
  if (given instanceof vscode.Uri) return given;
  const found = specAtWork();
  if (found) return found.uri;
  void vscode.window.showInformationMessage(vscode.l10n.t('Open a drivetrain spec (a .shaft file) first.'));
  return undefined;
}

/** Only files with vessels can be compared; the server knows them on every file system. */
async function pickFile(session: Session, spec: vscode.Uri): Promise<vscode.Uri | undefined> {
  const outlines = (await session.request('tailshaft/vessels', { all: true })) ?? [];
  const picked = await vscode.window.showQuickPick(
    outlines
      .map(({ uri, vessels }) => ({
        label: vscode.workspace.asRelativePath(vscode.Uri.parse(uri)),
        description: vessels.map(one => one.name).join(', '),
        uri: vscode.Uri.parse(uri),
      }))
      .filter(one => one.uri.toString() !== spec.toString()),
    { placeHolder: vscode.l10n.t('The spec as it was before'), matchOnDescription: true },
  );
  return picked?.uri;
}
