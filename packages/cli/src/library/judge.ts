import { policyFrom } from '@tailshaft/drivetrain';
import { createTailshaftCore, findingsOf } from '@tailshaft/language';
import type { URI } from 'langium';
import type { CheckedSpec } from '../specs/specs.js';
import { type Spots, spotIn } from '../specs/spot.js';
import type { Files, Options } from './api.js';
import { MemoryFiles, uriOf } from './memory-files.js';

export interface JudgedText {
  readonly spec: CheckedSpec;
  readonly spots: Spots;
  readonly today: string;
}

/** Judges a text among its files. */
export async function judgeText(text: string, files: Files, options: Options): Promise<JudgedText> {
  const uri = uriOf(options.path ?? 'spec.shaft');
  const today = dayOf(options.today);
  const { shared, language } = createTailshaftCore({
    fileSystemProvider: () => new MemoryFiles({ ...files, [uri.path]: text }),
  });
  const { project } = language;
  project.today = () => today;
  project.policy = policyFrom(options.acceptedBy ?? '', options.acceptedFor ?? '');
  project.roots = [uriOf('/')];
  const documents = shared.workspace.LangiumDocuments;
  const document = shared.workspace.LangiumDocumentFactory.fromString(text, uri);
  documents.addDocument(document);
  await project.load(document);
  const check = project.check(document);
  const spec = { path: pathOf(uri), shown: pathOf(uri), check, findings: findingsOf(check) };
  return { spec, today, spots: { spot: place => spotIn(documents, place, pathOf) } };
}

function pathOf(uri: URI): string {
  return uri.path.slice(1);
}

function dayOf(day: string | undefined): string {
  const value = day ?? new Date().toISOString().slice(0, 10);
  if (!/^\d{4}-\d{2}-\d{2}$/.test(value) || Number.isNaN(Date.parse(value)))
    throw new RangeError(`today is a date such as 2026-03-02, not "${value}"`);
  return value;
}
