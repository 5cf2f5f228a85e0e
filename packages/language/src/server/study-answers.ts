import {
  resultOf,
  type StudyCase,
  type StudyResult,
  search,
  withLoadLines,
  withSetAside,
} from '@tailshaft/drivetrain';
import type { LangiumDocument } from 'langium';
import type { WorkspaceEdit } from 'vscode-languageserver';
import { textsOf, workspaceEdit } from '../actions/workspace-edit.js';
import { textEditsForSpelled } from '../edit/model-edits.js';
import type { JudgedVessel, Project } from '../project/project.js';
import type { ReadyStudy } from '../study/case.js';
import type { TailshaftServices } from './services.js';

/** A candidate by the options that it is made of. */
export interface CandidateChoice {
  readonly study: string;
  readonly arrangement: string;
  readonly options: readonly string[];
}

/** Milliseconds that a search may take for a panel; the command line searches the rest. */
const LONGEST = 4000;
/** Milliseconds between two looks at what else the server is asked. */
const RESTS = 12;

const kept = new WeakMap<ReadyStudy, StudyResult>();
const ready = new WeakMap<JudgedVessel, readonly ReadyStudy[]>();

/** The studies of a vessel, searched for as long as somebody waits; nothing once the text is another. */
export async function studyResults(
  project: Project,
  document: LangiumDocument,
  judged: JudgedVessel,
): Promise<readonly StudyResult[] | undefined> {
  const check = project.check(document);
  const results: StudyResult[] = [];
  for (const study of studiesOf(project, document, judged)) {
    const isWanted = () => project.check(document) === check;
    const result = kept.get(study) ?? (await searchedWhole(study, isWanted));
    if (!result) return undefined;
    kept.set(study, result);
    results.push(result);
  }
  return results;
}

/** The edit that writes a candidate, found anew in the text as it is: by its options, whatever their order now. */
export function candidateEdit(
  { project, shared: { workspace } }: TailshaftServices,
  document: LangiumDocument,
  judged: JudgedVessel,
  candidate: CandidateChoice,
): WorkspaceEdit | undefined {
  const study = studiesOf(project, document, judged).find(one => isOf(one, candidate));
  const choice = study?.dimensions.map(({ options }, at) => options.indexOf(candidate.options[at]!));
  if (!study || !choice || choice.some(one => one < 0)) return undefined;
  const edits = textEditsForSpelled(study.editsFor(choice), textsOf(workspace.LangiumDocuments));
  return edits.length > 0 ? workspaceEdit(edits, workspace) : undefined;
}

function isOf({ study, arrangement, dimensions }: ReadyStudy, wanted: CandidateChoice): boolean {
  return (
    study.name === wanted.study &&
    arrangement === wanted.arrangement &&
    dimensions.length === wanted.options.length
  );
}

function studiesOf(project: Project, document: LangiumDocument, judged: JudgedVessel): readonly ReadyStudy[] {
  const had = ready.get(judged);
  if (had) return had;
  const made = judged.reading.studies.flatMap(one => project.studyOf(document, judged, one) ?? []);
  ready.set(judged, made);
  return made;
}

async function searchedWhole(study: ReadyStudy, isWanted: () => boolean): Promise<StudyResult | undefined> {
  const result = await searched(study, isWanted);
  const whole = result && (await withSetAside(study, result, of => searched(of, isWanted)));
  return whole && isWanted() ? withLoadLines(study, whole) : undefined;
}

async function searched(study: StudyCase, isWanted: () => boolean): Promise<StudyResult | undefined> {
  const began = performance.now();
  let rested = began;
  const steps = search(study);
  let step = steps.next();
  while (!step.done) {
    const now = performance.now();
    if (now - rested > RESTS) {
      await new Promise(resolve => setTimeout(resolve, 0));
      if (!isWanted()) return undefined;
      rested = performance.now();
    }
    step = steps.next(now - began > LONGEST);
  }
  return resultOf(study, [step.value]);
}
