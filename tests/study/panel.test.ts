import type { TailshaftServices } from '@tailshaft/language/server';
import { expect, it } from 'vitest';
import type { TextDocumentEdit } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { Specs } from '../../packages/language/test/edit/specs.js';
import { candidateAnswer, studiesAnswer } from '../../packages/vscode/src/server/studies.js';
import { exampleWithStudy } from '../support/study.js';

const SPEC = exampleWithStudy(
  'pilot-cutter/ternhaven.shaft',
  'study wheel of proposed { vary propeller pitch 33 in, 34 in, 35 in  rank by speed at full power }',
);

async function opened(text: string) {
  const { document, core } = await Specs.read({ 'ternhaven.shaft': text });
  const services = { project: core.language.project, shared: core.shared } as unknown as TailshaftServices;
  return { document, services, about: { textDocument: { uri: document.uri.toString() } } };
}

it('shows the studies of a vessel, and writes the candidate that is pressed as the text offers it now', async () => {
  const { document, services, about } = await opened(SPEC);
  const html = (await studiesAnswer(services, document, about))!.html;
  const acts = [...html.matchAll(/data-act="([^"]*)"/g)].map(one =>
    JSON.parse(one[1]!.replaceAll('&quot;', '"')),
  );
  expect(acts[0]).toEqual({ study: 'wheel', arrangement: 'proposed', options: ['35 in'] });
  const answer = await candidateAnswer(services, document, { ...about, candidate: acts[0] });
  const edits = (answer!.edit.documentChanges as TextDocumentEdit[]).flatMap(one => one.edits);
  const after = TextDocument.applyEdits(document.textDocument, edits as never);
  expect(after).toContain('        pitch 35 in\n');
  expect(after).not.toContain('        pitch 34 in\n');
});

it('writes no candidate that the study offers no longer', async () => {
  const { document, services, about } = await opened(SPEC.replace('33 in, 34 in, 35 in', '33 in, 34 in'));
  const candidate = { study: 'wheel', arrangement: 'proposed', options: ['35 in'] };
  expect(await candidateAnswer(services, document, { ...about, candidate })).toBeNull();
  const other = { ...candidate, arrangement: 'existing', options: ['34 in'] };
  expect(await candidateAnswer(services, document, { ...about, candidate: other })).toBeNull();
});
