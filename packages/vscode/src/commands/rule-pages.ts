import * as vscode from 'vscode';
import { showPage } from '../pages/show-page.js';
import type { Session } from '../session.js';

const RULE_SCHEME = 'tailshaft-rule';

/** Where the pages of the findings open in the editor: the code of a finding and `.md` come behind. */
export const PAGES = `${RULE_SCHEME}:/packages/drivetrain/manual/`;

/** Pages of rules, and the command that picks one. They lie in one file of the extension, in the tree of their links. */
export function registerRulePages(context: vscode.ExtensionContext, session: Session): vscode.Disposable {
  let pages: Promise<Readonly<Record<string, string>>> | undefined;
  return vscode.Disposable.from(
    vscode.workspace.registerTextDocumentContentProvider(RULE_SCHEME, {
      async provideTextDocumentContent({ path }) {
        pages ??= readPages(context.extensionUri);
        const page = (await pages)[path.slice(1)];
        return page ?? vscode.l10n.t('There is no page "{0}".', path);
      },
    }),
    vscode.commands.registerCommand('tailshaft.explainRule', async (given?: unknown) => {
      const id = typeof given === 'string' ? given : await pickRule(session);
      if (!id) return;
      // Links of pages give a path from the root of them all.
      const isPath = /\.(?:md|shaft)$/.test(id);
      await showPage(
        isPath
          ? vscode.Uri.from({ scheme: RULE_SCHEME, path: `/${id}` })
          : vscode.Uri.parse(`${PAGES}${id}.md`),
      );
    }),
  );
}

/** The page of a rule as text. */
export async function rulePage(id: string): Promise<string> {
  return (await vscode.workspace.openTextDocument(vscode.Uri.parse(`${PAGES}${id}.md`))).getText();
}

async function readPages(extension: vscode.Uri): Promise<Readonly<Record<string, string>>> {
  const bytes = await vscode.workspace.fs.readFile(vscode.Uri.joinPath(extension, 'dist/manual.json'));
  return JSON.parse(new TextDecoder().decode(bytes)) as Record<string, string>;
}

/** The rule of the finding at the cursor stands first. */
async function pickRule(session: Session): Promise<string | undefined> {
  const rules = (await session.request('tailshaft/rules')) ?? [];
  const here = rulesAtCursor();
  const sorted = [...rules].sort((one, other) => Number(here.has(other.id)) - Number(here.has(one.id)));
  const picked = await vscode.window.showQuickPick(
    sorted.map(({ id, title, severity }) => ({ label: id, description: severity, detail: title })),
    { placeHolder: vscode.l10n.t('Which rule?'), matchOnDetail: true, ignoreFocusOut: true },
  );
  return picked?.label;
}

function rulesAtCursor(): Set<string> {
  const editor = vscode.window.activeTextEditor;
  if (!editor) return new Set();
  const found = vscode.languages
    .getDiagnostics(editor.document.uri)
    .filter(one => one.range.intersection(editor.selection) !== undefined);
  return new Set(found.map(({ code }) => String(typeof code === 'object' ? code.value : code)));
}
