import * as vscode from 'vscode';
import { once } from '../once.js';
import { LANGUAGE, type Session } from '../session.js';
import { keepSheet, type Picture } from './keep-sheet.js';
import type { FromPanel, Painted, PanelState, Spot, ToPanel } from './messages.js';
import { panelPage } from './panel-page.js';
import { goToPlace } from './places.js';
import { writeCandidate } from './write-candidate.js';

/** Milliseconds of rest before the studies are searched. */
const STUDIES_REST = 600;

/** The sheet of one spec, beside its text and live. */
export class SheetPanel {
  private state: PanelState;
  private readonly own: vscode.Disposable[] = [];
  private readonly waiting = new Map<number, (painted: Painted) => void>();
  private turn = 0;
  private resting: ReturnType<typeof setTimeout> | undefined;
  private painting = 0;
  private ready = false;
  private copiesPictures = false;

  constructor(
    private readonly panel: vscode.WebviewPanel,
    extension: vscode.Uri,
    private readonly session: Session,
    state: PanelState,
  ) {
    this.state = state;
    panel.iconPath = {
      light: vscode.Uri.joinPath(extension, 'media/file-light.svg'),
      dark: vscode.Uri.joinPath(extension, 'media/file-dark.svg'),
    };
    const render = once(() => void this.render(), 30);
    this.own.push(
      panel.webview.onDidReceiveMessage((message: FromPanel) => this.receive(message)),
      session.onChecked(uri => {
        if (uri === this.state.uri) render();
      }),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => this.tellCursor(textEditor)),
      panel.onDidDispose(() => {
        clearTimeout(this.resting);
        for (const one of this.own) one.dispose();
        for (const done of this.waiting.values()) done({});
      }),
    );
    panel.webview.html = panelPage(panel.webview, extension);
  }

  get uri(): string {
    return this.state.uri;
  }

  onDidDispose(action: () => void): void {
    this.own.push(this.panel.onDidDispose(action));
  }

  /** Brings it to the front; with another choice when one is given. */
  reveal(choice?: Pick<PanelState, 'vessel' | 'choice'>): void {
    this.panel.reveal(undefined, true);
    if (choice) {
      this.state = { ...this.state, ...choice, choice: { ...this.state.choice, ...choice.choice } };
      void this.render();
    }
  }

  private async receive(message: FromPanel): Promise<void> {
    switch (message.type) {
      case 'ready':
        this.ready = true;
        this.copiesPictures = message.copiesPictures;
        if (message.state?.uri === this.state.uri)
          this.state = {
            ...message.state,
            ...this.state,
            choice: { ...message.state.choice, ...this.state.choice },
          };
        return this.render();
      case 'choose':
        this.state = message.state;
        return this.render();
      case 'go':
        return goToPlace(message.place);
      case 'rule':
        return void vscode.commands.executeCommand('tailshaft.explainRule', message.id);
      case 'act':
        return writeCandidate(this.session, this.state, message.act);
      case 'keep':
        return keepSheet(this.session, this.state, {
          copiesPictures: this.copiesPictures,
          paint: picture => this.paint(picture),
        });
      case 'painted':
        this.waiting.get(message.id)?.(message);
        this.waiting.delete(message.id);
    }
  }

  private async render(): Promise<void> {
    if (!this.ready) return;
    const turn = ++this.turn;
    const { uri, vessel, choice } = this.state;
    const answer = await this.session.request('tailshaft/sheet', {
      textDocument: { uri },
      ...(vessel ? { vessel } : {}),
      choice,
    });
    if (turn !== this.turn) return;
    if (!answer) {
      const words = vscode.l10n.t('This file holds no vessel, so there is no sheet to show.');
      return this.send({ type: 'nothing', words });
    }
    this.panel.title = vscode.l10n.t('Sheet of {0}', answer.vessel);
    this.send({ type: 'sheet', answer, state: this.state });
    this.renderStudies(answer.studies > 0, turn);
    const editor = vscode.window.visibleTextEditors.find(one => one.document.uri.toString() === uri);
    if (editor) this.tellCursor(editor);
  }

  /** Studies take a while, so that they wait until nobody types, and an answer that came too late is not shown. */
  private renderStudies(any: boolean, turn: number): void {
    clearTimeout(this.resting);
    if (!any) {
      this.send({ type: 'studies', html: '', words: '' });
      return;
    }
    this.send({ type: 'studies', words: vscode.l10n.t('Searching the studies …') });
    this.resting = setTimeout(async () => {
      const { uri, vessel } = this.state;
      const answer = await this.session.request('tailshaft/studies', {
        textDocument: { uri },
        ...(vessel ? { vessel } : {}),
      });
      if (turn === this.turn && answer) this.send({ type: 'studies', html: answer.html, words: '' });
    }, STUDIES_REST);
  }

  private tellCursor(editor: vscode.TextEditor): void {
    if (editor.document.languageId !== LANGUAGE) return;
    const { line, character } = editor.selection.active;
    const spot: Spot = { uri: editor.document.uri.toString(), line, character };
    this.send({ type: 'cursor', spot });
  }

  /** Only a browser turns SVG into PNG: the panel is one. To copy, it must have the focus. */
  private paint(picture: Picture): Promise<Painted> {
    const id = ++this.painting;
    if (picture.copy) this.panel.reveal();
    return new Promise(resolve => {
      this.waiting.set(id, resolve);
      this.send({ type: 'paint', id, ...picture });
    });
  }

  private send(message: ToPanel): void {
    void this.panel.webview.postMessage(message);
  }
}
