import { type Candidate, combinationsOf, type StudyResult, searched } from '@tailshaft/drivetrain';
import { formatValue, percent } from '@tailshaft/mechanics';
import type { LangiumDocument } from 'langium';
import { textEditsForSpelled } from '../edit/model-edits.js';
import type { FileCheck, Project } from '../project/project.js';
import type { StudyReading } from '../reading/vessel.js';
import type { ReadyStudy } from '../study/case.js';
import type { Offer, TextOf } from './offer.js';

/** More candidates than can be judged while somebody waits for a menu; the command line searches the others. */
const MOST_AT_ONCE = 200;
const OFFERED = 3;

const results = new WeakMap<ReadyStudy, StudyResult>();
const ready = new WeakMap<
  StudyReading,
  { readonly check: FileCheck; readonly study: ReadyStudy | undefined }
>();

/** The best candidates of the study at an offset, each with what writes it into its arrangement. */
export function studyCandidates(
  project: Project,
  document: LangiumDocument,
  offset: number,
  textOf: TextOf,
): Offer[] {
  const check = project.check(document);
  for (const vessel of check.vessels) {
    const reading = vessel.reading.studies.find(({ place }) => offset >= place.start && offset <= place.end);
    if (!reading) continue;
    const had = ready.get(reading);
    const study = had?.check === check ? had.study : project.studyOf(document, vessel, reading);
    ready.set(reading, { check, study });
    if (!study || combinationsOf(study.dimensions) > MOST_AT_ONCE) return [];
    const result = results.get(study) ?? searched(study);
    results.set(study, result);
    return result.holds.slice(0, OFFERED).map((one, at) => ({
      title: `Write candidate ${at + 1} of study ${study.study.name} into ${study.arrangement}: ${wordsOf(result, one)}`,
      kind: 'refactor.rewrite',
      edits: textEditsForSpelled(study.editsFor(one.choice), textOf),
    }));
  }
  return [];
}

function wordsOf({ dimensions, ranking }: StudyResult, { choice, ranks, limit }: Candidate): string {
  const options = dimensions.flatMap(({ words, options }, at) =>
    options.length > 1 ? [`${words} ${options[choice[at]!]}`] : [],
  );
  const figures = ranking.flatMap(({ words }, at) =>
    ranks[at] && words !== LEAST_MARGIN ? [`${words} ${formatValue(ranks[at])}`] : [],
  );
  const least = limit ? [`least margin ${percent(limit.margin)}, ${limit.rule}`] : [];
  return `${options.join(', ')} (${[...figures, ...least].join('; ')})`;
}

const LEAST_MARGIN = 'least margin';
