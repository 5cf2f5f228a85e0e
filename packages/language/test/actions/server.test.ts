import { describe, expect, it } from 'vitest';
import type { CodeAction, Diagnostic } from 'vscode-languageserver';
import { changed, TWIN_LINES } from '../../../drivetrain/src/rules/example-specs.js';
import { uriOf } from '../server/memory-files.js';
import { Testbed } from '../server/testbed.js';

const VESSEL = TWIN_LINES.slice(TWIN_LINES.indexOf('vessel'));
const PARTS = TWIN_LINES.slice(0, TWIN_LINES.indexOf('vessel'));

describe('code actions of the server', () => {
  it('carry the diagnostic that the client shows, and the version of each open text', async () => {
    const bed = new Testbed({ 'parts.shaft': changed(PARTS, ['  housing SAE-3\n', '']) });
    const spec = changed(VESSEL, ['propeller { hand left', 'propeller { hand right']);
    const document = await bed.open(`import "parts"\n${spec}`);
    const diagnostics = document.diagnostics as Diagnostic[];
    const shown = diagnostics.find(one => one.code === 'rotation/propeller-hand')!;
    const actions = (await bed.services.lsp.CodeActionProvider!.getCodeActions(document, {
      textDocument: { uri: document.uri.toString() },
      range: shown.range,
      context: { diagnostics },
    })) as CodeAction[];
    const hand = actions.find(one => one.title.startsWith('Make the propeller of Port left-hand'))!;
    expect(hand.diagnostics).toEqual([shown]);
    expect(hand.edit?.documentChanges).toMatchObject([
      { textDocument: { uri: uriOf('ternhaven.shaft'), version: 1 }, edits: [{ newText: 'left' }] },
    ]);
  });

  it('write into a catalogue that is not open, without a version', async () => {
    const bed = new Testbed({
      'parts.shaft': changed(PARTS, ['  rotation standard viewed from flywheel\n', '']),
    });
    const document = await bed.open(`import "parts"\n${VESSEL}`);
    const actions = (await bed.services.lsp.CodeActionProvider!.getCodeActions(document, {
      textDocument: { uri: document.uri.toString() },
      range: { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } },
      context: { diagnostics: [], only: ['quickfix'] },
    })) as CodeAction[];
    const rotation = actions.find(one => one.title.startsWith('Add rotation as an open question'))!;
    expect(rotation.edit?.documentChanges).toMatchObject([
      {
        textDocument: { uri: uriOf('parts.shaft'), version: null },
        edits: [{ newText: '  rotation unknown\n' }],
      },
    ]);
  });
});
