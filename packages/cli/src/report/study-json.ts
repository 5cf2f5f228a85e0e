import type { Candidate, StudyResult } from '@tailshaft/drivetrain';
import { numbered, optionOf, rankWords, shownOf } from '@tailshaft/drivetrain';
import type { Value } from '@tailshaft/mechanics';
import { VERSION } from '../version.js';
import type { SearchedStudy } from './study-words.js';

/** Grows by one when a reader of the old form would misread the new one. */
export const FORM = 1;

/** Studies as the schema `study.schema.json` has them. */
export function studiesJson(studies: readonly SearchedStudy[], most?: number) {
  return {
    form: FORM,
    program: 'tailshaft',
    version: VERSION,
    studies: studies.map(one => studyJson(one, most ?? shownOf(one.result))),
    caution: 'Screening, not certification: write the chosen candidate into its arrangement and check it.',
  };
}

function studyJson({ vessel, result, seconds }: SearchedStudy, most: number) {
  const { study, arrangement, dimensions, ranking, combinations, judged, apart, stoppedAt } = result;
  return {
    vessel,
    study: study.name,
    arrangement,
    seconds,
    combinations,
    judged,
    apart,
    ...(stoppedAt === undefined ? {} : { stoppedAt }),
    held: result.holds.length,
    unknown: result.unknown.length,
    failed: result.failed,
    dimensions,
    ranking,
    best: result.holds.slice(0, most).map(one => candidateJson(result, one)),
    cannotTell: result.unknown.slice(0, most).map(one => candidateJson(result, one)),
    nonDominated: result.holds
      .filter(one => result.front.has(one.index))
      .map(one => candidateJson(result, one)),
    binding: result.binding,
    lacking: result.lacking,
    ...(result.unranked.length > 0 ? { unranked: result.unranked } : {}),
    ...(result.without ? { without: withoutJson(result.without, most) } : {}),
  };
}

function withoutJson(result: StudyResult, most: number) {
  const { setAside = [], holds, unknown, failed, binding, lacking } = result;
  return {
    checks: setAside,
    held: holds.length,
    unknown: unknown.length,
    failed,
    best: holds.slice(0, most).map(one => candidateJson(result, one)),
    cannotTell: unknown.slice(0, most).map(one => candidateJson(result, one)),
    binding,
    lacking,
  };
}

function candidateJson(result: StudyResult, one: Candidate) {
  const { dimensions, ranking, front } = result;
  return {
    number: numbered(result).indexOf(one) + 1,
    outcome: one.outcome,
    choice: Object.fromEntries(dimensions.map(({ words }, at) => [words, optionOf(result, one, at)])),
    ranks: ranking.map((column, at) => ({
      words: column.words,
      ...(one.ranks[at] ? { value: valueJson(one.ranks[at]), said: rankWords(one.ranks[at], column) } : {}),
    })),
    ...(one.limit ? { limit: one.limit } : {}),
    warnings: one.warnings,
    cannotTell: one.unknown,
    nonDominated: front.has(one.index),
  };
}

function valueJson({ si, dimension }: Value) {
  return { si, dimension };
}
