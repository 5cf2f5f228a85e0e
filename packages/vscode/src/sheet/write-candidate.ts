import type { CandidateChoice } from '@tailshaft/language/server';
import * as vscode from 'vscode';
import type { Session } from '../session.js';
import type { PanelState } from './messages.js';

/** Writes the candidate that was pressed into its arrangement, as one edit that can be taken back. */
export async function writeCandidate(
  session: Session,
  { uri, vessel }: PanelState,
  act: string,
): Promise<void> {
  const candidate = JSON.parse(act) as CandidateChoice;
  const answer = await session.request('tailshaft/candidate', {
    textDocument: { uri },
    ...(vessel ? { vessel } : {}),
    candidate,
  });
  const edit = new vscode.WorkspaceEdit();
  for (const change of answer?.edit.documentChanges ?? []) {
    if (!('textDocument' in change)) continue;
    const target = vscode.Uri.parse(change.textDocument.uri);
    for (const one of change.edits) {
      if (!('newText' in one)) continue;
      const { start, end } = one.range;
      edit.replace(
        target,
        new vscode.Range(start.line, start.character, end.line, end.character),
        one.newText,
      );
    }
  }
  const done = edit.size > 0 && (await vscode.workspace.applyEdit(edit));
  if (done)
    vscode.window.setStatusBarMessage(
      vscode.l10n.t('Candidate of study {0} written into {1}.', candidate.study, candidate.arrangement),
      4000,
    );
  else
    void vscode.window.showInformationMessage(
      vscode.l10n.t('The text changed, and the study no longer offers this candidate.'),
    );
}
