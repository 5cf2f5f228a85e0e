import * as vscode from 'vscode';
import { LANGUAGE } from './session.js';

/** The spec that a person looks at. While a sheet has the focus no editor is active: a spec in view is meant then. */
export function specInView(): vscode.TextDocument | undefined {
  const { activeTextEditor, visibleTextEditors } = vscode.window;
  const editors = activeTextEditor ? [activeTextEditor] : visibleTextEditors;
  return editors.find(one => one.document.languageId === LANGUAGE)?.document;
}
