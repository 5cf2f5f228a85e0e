import * as vscode from 'vscode';
import type { Session } from '../session.js';
import type { Painted, PanelState } from './messages.js';

export interface Picture {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /** Into the clipboard, rather than back as bytes. */
  readonly copy: boolean;
}

/** What a panel does with pictures, being a browser. */
interface Painter {
  readonly copiesPictures: boolean;
  paint(picture: Picture): Promise<Painted>;
}

interface Way extends vscode.QuickPickItem {
  readonly form: 'svg' | 'png' | 'html';
  readonly to: 'clipboard' | 'file' | 'printer';
  /** The charts instead of the lines. */
  readonly charts?: boolean;
}

/** Copies or saves what the panel shows: the pictures as SVG or PNG, the whole sheet as HTML. */
export async function keepSheet(session: Session, state: PanelState, painter: Painter): Promise<void> {
  const way = await vscode.window.showQuickPick(ways(painter.copiesPictures), {
    placeHolder: vscode.l10n.t('Copy or save'),
    matchOnDescription: true,
  });
  if (way) await keep(session, state, painter, way);
}

async function keep(session: Session, state: PanelState, painter: Painter, way: Way): Promise<void> {
  const answer = await session.request('tailshaft/sheetFile', {
    textDocument: { uri: state.uri },
    ...(state.vessel ? { vessel: state.vessel } : {}),
    choice: state.choice,
    form: way.form === 'html' ? 'html' : way.charts ? 'charts' : 'svg',
  });
  if (!answer) {
    if (way.charts)
      void vscode.window.showInformationMessage(vscode.l10n.t('There is no chart to keep yet.'));
    return;
  }
  const { text, width = 800, height = 600 } = answer;
  if (way.to === 'printer') return print(state, text);
  if (way.form !== 'png') {
    if (way.to === 'file') return save(state, way.form, new TextEncoder().encode(text));
    await vscode.env.clipboard.writeText(text);
    return copied();
  }
  const { copied: isCopied, base64 } = await painter.paint({
    svg: text,
    width,
    height,
    copy: way.to === 'clipboard',
  });
  if (base64 !== undefined) return save(state, 'png', bytesOf(base64));
  if (isCopied) return copied();
  const refused =
    way.to === 'clipboard'
      ? vscode.l10n.t('The picture could not be copied to the clipboard.')
      : vscode.l10n.t('The picture could not be drawn.');
  const instead: Way = way.to === 'clipboard' ? { ...way, to: 'file' } : { ...way, form: 'svg' };
  const offer = instead.form === 'png' ? vscode.l10n.t('Save as PNG') : vscode.l10n.t('Save as SVG');
  const answered = await vscode.window.showWarningMessage(refused, offer);
  if (answered === offer) await keep(session, state, painter, instead);
}

function copied(): void {
  vscode.window.setStatusBarMessage(vscode.l10n.t('Copied.'), 3000);
}

function ways(copiesPictures: boolean): Way[] {
  const pictures = vscode.l10n.t('the lines from aft and from above');
  const charts = vscode.l10n.t('power and torque, speed, criticals');
  const whole = vscode.l10n.t('the whole sheet with its workings, one page');
  const way = (label: string, description: string, form: Way['form'], to: Way['to']): Way => ({
    label,
    description,
    form,
    to,
  });
  return [
    way(vscode.l10n.t('Save as PNG'), pictures, 'png', 'file'),
    way(vscode.l10n.t('Save as SVG'), pictures, 'svg', 'file'),
    way(vscode.l10n.t('Save as HTML'), whole, 'html', 'file'),
    way(vscode.l10n.t('Print, or save as PDF'), whole, 'html', 'printer'),
    { ...way(vscode.l10n.t('Save charts as PNG'), charts, 'png', 'file'), charts: true },
    { ...way(vscode.l10n.t('Save charts as SVG'), charts, 'svg', 'file'), charts: true },
    ...(copiesPictures ? [way(vscode.l10n.t('Copy as PNG'), pictures, 'png', 'clipboard')] : []),
    ...(copiesPictures
      ? [{ ...way(vscode.l10n.t('Copy charts as PNG'), charts, 'png', 'clipboard'), charts: true }]
      : []),
    way(vscode.l10n.t('Copy as SVG'), pictures, 'svg', 'clipboard'),
    way(vscode.l10n.t('Copy as HTML'), whole, 'html', 'clipboard'),
  ];
}

/**
 * A page that a browser prints, or keeps as PDF: a view of the editor may not print. Where the browser is not on the
 * machine that the files are on, the page is saved instead.
 */
async function print(state: PanelState, html: string): Promise<void> {
  const isHere = vscode.env.uiKind === vscode.UIKind.Desktop && vscode.env.remoteName === undefined;
  const folder = keptIn();
  if (!isHere || folder?.scheme !== 'file') {
    await save(state, 'html', new TextEncoder().encode(html));
    void vscode.window.showInformationMessage(
      vscode.l10n.t('Open the saved page in a browser, and print it from there or keep it as PDF.'),
    );
    return;
  }
  await vscode.workspace.fs.createDirectory(folder);
  const page = vscode.Uri.joinPath(folder, 'sheet.html');
  await vscode.workspace.fs.writeFile(page, new TextEncoder().encode(html));
  await vscode.env.openExternal(page);
}

let storage: vscode.Uri | undefined;
const keptIn = () => storage;

/** Where a page for the printer may lie: a folder of this extension's own. */
export function keepPagesIn(folder: vscode.Uri): void {
  storage = folder;
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
