import {
  consequenceOf,
  createTailshaftCore,
  cures,
  type Finding,
  findingsOf,
  type Judge,
  type Offer,
  questions,
} from '@tailshaft/language';
import { EmptyFileSystem, URI } from 'langium';
import { TODAY } from '../support/check.js';

const core = createTailshaftCore(EmptyFileSystem);
core.language.project.today = () => TODAY;
let count = 0;

/** A finding with everything that is offered for it. */
export interface Offered {
  readonly finding: Finding;
  readonly cures: readonly Offer[];
  readonly questions: readonly Offer[];
}

/** All findings of a text that imports nothing, each with its offers. */
export async function offeredFor(text: string): Promise<readonly Offered[]> {
  const uri = URI.parse(`memory:///fixes-${++count}.shaft`);
  const { LangiumDocumentFactory, LangiumDocuments } = core.shared.workspace;
  const document = LangiumDocumentFactory.fromString(text, uri);
  LangiumDocuments.addDocument(document);
  const { project } = core.language;
  await project.load(document);
  const textOf = () => text;
  const judge: Judge = edits => consequenceOf(project, document, edits, textOf);
  const offered = findingsOf(project.check(document)).map(finding => ({
    finding,
    cures: cures(finding, textOf, judge),
    questions: questions(finding, textOf, judge),
  }));
  LangiumDocuments.deleteDocument(uri);
  return offered;
}
