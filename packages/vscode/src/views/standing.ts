import type { OutlineCheck, OutlineNode } from '@tailshaft/language/server';
import * as vscode from 'vscode';

type Counts = OutlineNode['counts'];

/** What fails by its gravity. */
export type Gravity = Pick<OutlineNode, 'errors' | 'warnings'>;

/** How checks stand, in a few words; zeros are left out. These are checks: one of them may give several findings. */
export function standing({ held, failed, unknown, accepted, asFound }: Counts): string {
  const words: string[] = [];
  if (failed > 0) words.push(vscode.l10n.t('{0} failing', failed));
  if (unknown > 0) words.push(vscode.l10n.t('{0} cannot tell', unknown));
  if (accepted > 0) words.push(vscode.l10n.t('{0} accepted', accepted));
  if (asFound > 0) words.push(vscode.l10n.t('{0} failing as found', asFound));
  if (held > 0 || words.length === 0) words.push(vscode.l10n.t('{0} holding', held));
  return words.join(', ');
}

/** The worst of what stands there, as an icon of the editor's own font. */
export function iconName({ failed, unknown }: Counts, { errors, warnings }: Gravity): string {
  if (failed > 0) return errors > 0 ? 'error' : warnings > 0 ? 'warning' : 'info';
  return unknown > 0 ? 'question' : 'pass';
}

const COLOURS: Readonly<Record<string, string>> = {
  error: 'list.errorForeground',
  warning: 'list.warningForeground',
  question: 'list.warningForeground',
  pass: 'testing.iconPassed',
};

export function icon(name: string): vscode.ThemeIcon {
  const colour = COLOURS[name];
  return new vscode.ThemeIcon(name, colour ? new vscode.ThemeColor(colour) : undefined);
}

export function checkIcon({ outcome, severity }: OutlineCheck): vscode.ThemeIcon {
  const names: Readonly<Record<OutlineCheck['outcome'], string>> = {
    fails: severity === 'error' || severity === 'warning' ? severity : 'info',
    'cannot tell': 'question',
    accepted: 'verified',
    holds: 'pass',
    'does not apply': 'dash',
  };
  return icon(names[outcome]);
}
