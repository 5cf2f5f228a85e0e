import type { Verdict } from '@tailshaft/drivetrain';
import {
  applyEdits,
  createTailshaftCore,
  type FileCheck,
  type JudgedVessel,
  type ReadyStudy,
  textEditsForSpelled,
} from '@tailshaft/language';
import { EmptyFileSystem, URI } from 'langium';
import { TODAY } from './check.js';
import { joinedExample } from './examples.js';

const core = createTailshaftCore(EmptyFileSystem);
core.language.project.today = () => TODAY;
let count = 0;

export interface StudiedText {
  readonly text: string;
  readonly check: FileCheck;
  readonly vessel: JudgedVessel;
  readonly studies: readonly ReadyStudy[];
  /** The text with a candidate written into it. */
  readonly withCandidate: (study: ReadyStudy, choice: readonly number[]) => string;
}

/** Reads a spec that imports nothing, and makes its studies ready. */
export async function studied(text: string): Promise<StudiedText> {
  const uri = URI.parse(`memory:///study-${++count}.shaft`);
  const { LangiumDocumentFactory, LangiumDocuments } = core.shared.workspace;
  const document = LangiumDocumentFactory.fromString(text, uri);
  LangiumDocuments.addDocument(document);
  await core.language.project.load(document);
  const check = core.language.project.check(document);
  const vessel = check.vessels[0]!;
  const studies = vessel.reading.studies.flatMap(
    one => core.language.project.studyOf(document, vessel, one) ?? [],
  );
  LangiumDocuments.deleteDocument(uri);
  return {
    text,
    check,
    vessel,
    studies,
    withCandidate: (study, choice) =>
      applyEdits(
        text,
        textEditsForSpelled(study.editsFor(choice), () => text),
      ),
  };
}

/** An example with its whole catalogue in one text, and with another study in the place of its own. */
export function exampleWithStudy(path: string, study: string): string {
  const spec = joinedExample(path).replace(
    /^ {2}(?:\/\/\/[^\n]*\n {2})?study [^\n]*\{\n(?: {4}[^\n]*\n)* {2}\}\n/gm,
    '',
  );
  const end = spec.lastIndexOf('}');
  return `${spec.slice(0, end)}\n  ${study}\n}\n`;
}

/** What is told of a vessel, wherever it stands in the text. */
export function told(verdicts: readonly Verdict[]): string[] {
  return verdicts
    .map(
      one => `${one.rule} ${one.subject} ${one.outcome} ${one.severity} ${one.margin ?? ''} ${one.message}`,
    )
    .sort();
}
