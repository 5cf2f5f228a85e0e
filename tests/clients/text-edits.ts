import type { Position, TextEdit, WorkspaceEdit } from 'vscode-languageserver-protocol';

/** The text after the edits, which by the protocol all refer to the text before and do not overlap. */
export function applyEdits(text: string, edits: readonly TextEdit[]): string {
  return edits
    .map((edit, order) => ({
      from: offsetAt(text, edit.range.start),
      to: offsetAt(text, edit.range.end),
      order,
      edit,
    }))
    .sort((a, b) => b.from - a.from || b.order - a.order)
    .reduce((done, { from, to, edit }) => done.slice(0, from) + edit.newText + done.slice(to), text);
}

/** Edits that a workspace edit holds for one document, in either of its two forms. */
export function editsFor(uri: string, edit: WorkspaceEdit | null | undefined): TextEdit[] {
  const versioned = edit?.documentChanges?.flatMap(each =>
    'textDocument' in each && each.textDocument.uri === uri ? (each.edits as TextEdit[]) : [],
  );
  return versioned ?? edit?.changes?.[uri] ?? [];
}

export function positionAt(text: string, offset: number): Position {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length - 1, character: before.at(-1)!.length };
}

export function offsetAt(text: string, { line, character }: Position): number {
  let start = 0;
  for (let passed = 0; passed < line; passed++) {
    const end = text.indexOf('\n', start);
    if (end < 0) return text.length;
    start = end + 1;
  }
  return Math.min(start + character, text.length);
}
