import * as vscode from 'vscode';
import { LANGUAGE } from './session.js';

/** The spec that a person looks at. While a sheet has the focus no editor is active: a spec in view is meant then. */
export function specInView(): vscode.TextDocument | undefined {
  const { activeTextEditor, visibleTextEditors } = vscode.window;
  const editors = activeTextEditor ? [activeTextEditor] : visibleTextEditors;
  return editors.find(one => one.document.languageId === LANGUAGE)?.document;
}

let last: vscode.TextDocument | undefined;

/** Remembers which spec was worked on last, for when another page covers it. */
export function followSpecs(): vscode.Disposable {
  const follow = () => {
    last = specInView() ?? last;
  };
  follow();
  return vscode.window.onDidChangeActiveTextEditor(follow);
}

/** The spec in view, or the one worked on last if it is still open. */
export function specAtWork(): vscode.TextDocument | undefined {
  const found = specInView();
  if (found) return found;
  return last && !last.isClosed ? last : undefined;
}
