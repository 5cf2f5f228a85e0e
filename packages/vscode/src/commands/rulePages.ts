import * as vscode from 'vscode';
import { showPage } from '../pages/showPage.js';
import type { Session } from '../session.js';

export const RULE_SCHEME = 'tailshaft-rule';

/** Where the page of a rule opens in the editor. */
export function ruleAddress(id: string): vscode.Uri {
  return vscode.Uri.from({ scheme: RULE_SCHEME, path: `/${id}.md` });
}

/** Pages of rules, and the command that picks one. */
export function registerRulePages(session: Session): vscode.Disposable {
  return vscode.Disposable.from(
    vscode.workspace.registerTextDocumentContentProvider(RULE_SCHEME, {
      async provideTextDocumentContent({ path }) {
        const rule = path.replace(/^\/|\.md$/g, '');
        const page = await session.request('tailshaft/explain', { rule });
        return page?.markdown ?? vscode.l10n.t('There is no rule "{0}".', rule);
      },
    }),
    vscode.commands.registerCommand('tailshaft.explainRule', async (given?: unknown) => {
      const id = typeof given === 'string' ? given : await pickRule(session);
      if (id) await showPage(ruleAddress(id));
    }),
  );
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
