import * as vscode from 'vscode';
import type { Example } from '../commands/example.js';
import type { Session } from '../session.js';
import { specAtWork } from '../spec-in-view.js';
import { keepPagesIn } from './keep-sheet.js';
import type { PanelState } from './messages.js';
import { SheetPanel } from './sheet-panel.js';

const KIND = 'tailshaft.sheet';

/** The commands that open sheets, one panel for each spec, and panels that come back when the editor starts anew. */
export function registerSheet(
  { extensionUri, globalStorageUri }: vscode.ExtensionContext,
  session: Session,
  example: Example,
): vscode.Disposable {
  // From the walkthrough no spec may be open yet: it is about the example then.
  const specOrExample = async (given: unknown): Promise<vscode.Uri> => {
    if (given instanceof vscode.Uri) return given;
    return specAtWork()?.uri ?? (await example.show()).document.uri;
  };
  keepPagesIn(globalStorageUri);
  const panels = new Map<string, SheetPanel>();
  const options = () => ({
    enableScripts: true,
    localResourceRoots: [vscode.Uri.joinPath(extensionUri, 'dist')],
  });
  const adopt = (panel: vscode.WebviewPanel, state: PanelState) => {
    const made = new SheetPanel(panel, extensionUri, session, state);
    panels.set(made.uri, made);
    made.onDidDispose(() => panels.delete(made.uri));
  };
  const show = (uri: string, choice: Pick<PanelState, 'vessel' | 'choice'>) => {
    const had = panels.get(uri);
    if (had) return had.reveal(choice);
    const place = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
    const panel = vscode.window.createWebviewPanel(KIND, vscode.l10n.t('Drivetrain sheet'), place, {
      ...options(),
      enableFindWidget: true,
    });
    return adopt(panel, { uri, ...choice });
  };
  return vscode.Disposable.from(
    vscode.commands.registerCommand(
      'tailshaft.showSheet',
      async (given?: unknown, vessel?: string, path?: string) => {
        const uri = typeof given === 'string' ? given : (await specOrExample(given)).toString();
        show(uri, { vessel, choice: choiceOf(path) });
      },
    ),
    vscode.commands.registerCommand('tailshaft.compareArrangements', async (given?: unknown) => {
      const spec = await specOrExample(given);
      const outline = await session.request('tailshaft/outline', { textDocument: { uri: spec.toString() } });
      const vessel = outline?.vessels.find(one => one.children.length > 1);
      if (!vessel) {
        void vscode.window.showInformationMessage(
          vscode.l10n.t('Two arrangements are needed to compare: as found, and proposed.'),
        );
        return;
      }
      const names = vessel.children.map(one => one.name);
      show(spec.toString(), {
        vessel: vessel.name,
        choice: { arrangement: names.at(-1), beside: names.at(-2), line: undefined },
      });
    }),
    vscode.window.registerWebviewPanelSerializer(KIND, {
      async deserializeWebviewPanel(panel: vscode.WebviewPanel, state: PanelState | undefined) {
        if (!state) return panel.dispose();
        panel.webview.options = options();
        adopt(panel, state);
      },
    }),
  );
}

/** `proposed.Port`: an arrangement, and one line of it. */
function choiceOf(path: string | undefined): PanelState['choice'] {
  if (!path) return {};
  const dot = path.indexOf('.');
  return dot < 0
    ? { arrangement: path, line: undefined }
    : { arrangement: path.slice(0, dot), line: path.slice(dot + 1) };
}
