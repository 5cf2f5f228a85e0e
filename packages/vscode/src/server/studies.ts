import { resultOf, type StudyResult, search } from '@tailshaft/drivetrain';
import { type JudgedVessel, type Project, type ReadyStudy, textEditsForSpelled } from '@tailshaft/language';
import { type TailshaftServices, textsOf, workspaceEdit } from '@tailshaft/language/server';
import { studiesPanel } from '@tailshaft/sheet';
import type { LangiumDocument } from 'langium';
import type { AboutFile, CandidateChoice, Requests } from '../requests.js';
import { chosen } from './sheet.js';

type About = AboutFile & { readonly vessel?: string };

/** Milliseconds that a search may take for a panel; the command line searches the rest. */
const LONGEST = 4000;
/** Milliseconds between two looks at what else the server is asked. */
const RESTS = 12;

const kept = new WeakMap<ReadyStudy, StudyResult>();
const ready = new WeakMap<JudgedVessel, readonly ReadyStudy[]>();

/** The studies of a vessel, searched for as long as somebody waits; nothing once the text is another. */
export async function studiesAnswer(
  services: TailshaftServices,
  document: LangiumDocument,
  { vessel }: About,
): Promise<Requests['tailshaft/studies'][1]> {
  const { project } = services;
  const check = project.check(document);
  const judged = chosen(check, vessel);
  if (!judged) return null;
  const results: StudyResult[] = [];
  for (const study of studiesOf(project, document, judged)) {
    const result = kept.get(study) ?? (await searched(study, () => project.check(document) === check));
    if (!result) return null;
    kept.set(study, result);
    results.push(result);
  }
  return { html: studiesPanel(results) };
}

/** The edit that writes a candidate, found anew in the text as it is: by its options, whatever their order now. */
export function candidateAnswer(
  services: TailshaftServices,
  document: LangiumDocument,
  { vessel, candidate }: About & { readonly candidate: CandidateChoice },
): Requests['tailshaft/candidate'][1] {
  const { project } = services;
  const judged = chosen(project.check(document), vessel);
  const study = judged && studiesOf(project, document, judged).find(one => isOf(one, candidate));
  const choice = study?.dimensions.map(({ options }, at) => options.indexOf(candidate.options[at]!));
  if (!study || !choice || choice.some(one => one < 0)) return null;
  const { workspace } = services.shared;
  const edits = textEditsForSpelled(study.editsFor(choice), textsOf(workspace.LangiumDocuments));
  return edits.length > 0 ? { edit: workspaceEdit(edits, workspace) } : null;
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

async function searched(study: ReadyStudy, isWanted: () => boolean): Promise<StudyResult | undefined> {
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
