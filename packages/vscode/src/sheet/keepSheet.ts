import * as vscode from 'vscode';
import type { Session } from '../session.js';
import type { PanelState } from './messages.js';

type Paint = (svg: string, width: number, height: number) => Promise<string | undefined>;

interface Way extends vscode.QuickPickItem {
  readonly form: 'svg' | 'png' | 'html';
  readonly to: 'clipboard' | 'file';
}

/** Copies or saves what the panel shows: the pictures as SVG or PNG, the whole sheet as HTML. */
export async function keepSheet(session: Session, state: PanelState, paint: Paint): Promise<void> {
  const way = await vscode.window.showQuickPick(ways(), { placeHolder: vscode.l10n.t('Copy or save') });
  if (!way) return;
  const answer = await session.request('tailshaft/sheetFile', {
    textDocument: { uri: state.uri },
    ...(state.vessel ? { vessel: state.vessel } : {}),
    choice: state.choice,
    form: way.form === 'html' ? 'html' : 'svg',
  });
  if (!answer) return;
  if (way.to === 'clipboard') {
    await vscode.env.clipboard.writeText(answer.text);
    vscode.window.setStatusBarMessage(vscode.l10n.t('Copied.'), 3000);
    return;
  }
  const base64 =
    way.form === 'png' ? await paint(answer.text, answer.width ?? 800, answer.height ?? 600) : undefined;
  if (way.form === 'png' && base64 === undefined) {
    void vscode.window.showWarningMessage(
      vscode.l10n.t('The picture could not be painted. Save it as SVG instead.'),
    );
    return;
  }
  await save(state, way.form, base64 === undefined ? new TextEncoder().encode(answer.text) : bytesOf(base64));
}

function ways(): Way[] {
  const pictures = vscode.l10n.t('the lines from aft and from above');
  const whole = vscode.l10n.t('the whole sheet with its workings, one page');
  return [
    { label: vscode.l10n.t('Save as PNG'), description: pictures, form: 'png', to: 'file' },
    { label: vscode.l10n.t('Save as SVG'), description: pictures, form: 'svg', to: 'file' },
    { label: vscode.l10n.t('Save as HTML'), description: whole, form: 'html', to: 'file' },
    { label: vscode.l10n.t('Copy as SVG'), description: pictures, form: 'svg', to: 'clipboard' },
    { label: vscode.l10n.t('Copy as HTML'), description: whole, form: 'html', to: 'clipboard' },
  ];
}

async function save({ uri }: PanelState, form: Way['form'], content: Uint8Array): Promise<void> {
  const spec = vscode.Uri.parse(uri);
  const name = `${spec.path
    .split('/')
    .at(-1)!
    .replace(/\.shaft$/, '')}.${form}`;
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
  const beside = spec.scheme === 'untitled' ? folder : vscode.Uri.joinPath(spec, '..');
  const target = await vscode.window.showSaveDialog({
    ...(beside ? { defaultUri: vscode.Uri.joinPath(beside, name) } : {}),
    filters: { [form.toUpperCase()]: [form] },
  });
  if (target) await vscode.workspace.fs.writeFile(target, content);
}

function bytesOf(base64: string): Uint8Array {
  return Uint8Array.from(atob(base64), letter => letter.charCodeAt(0));
}
