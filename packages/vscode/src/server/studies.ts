import { asked, type CandidateChoice, type TailshaftServices } from '@tailshaft/language/server';
import { studiesPanel } from '@tailshaft/sheet';
import type { LangiumDocument } from 'langium';
import type { AboutFile, Requests } from '../requests.js';
import { chosen } from './sheet.js';

type About = AboutFile & { readonly vessel?: string };

/** The studies of a vessel as a page; nothing once the text is another. */
export async function studiesAnswer(
  { project }: TailshaftServices,
  document: LangiumDocument,
  { vessel }: About,
): Promise<Requests['tailshaft/studies'][1]> {
  const judged = chosen(project.check(document), vessel);
  const results = judged && (await (await asked()).studyResults(project, document, judged));
  return results ? { html: studiesPanel(results) } : null;
}

/** What writes a candidate into the text as it is now. */
export async function candidateAnswer(
  services: TailshaftServices,
  document: LangiumDocument,
  { vessel, candidate }: About & { readonly candidate: CandidateChoice },
): Promise<Requests['tailshaft/candidate'][1]> {
  const judged = chosen(services.project.check(document), vessel);
  const edit = judged && (await asked()).candidateEdit(services, document, judged, candidate);
  return edit ? { edit } : null;
}
