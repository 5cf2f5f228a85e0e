import type { Candidate, RankColumn, StudyResult } from '@tailshaft/drivetrain';
import { formatValue } from '@tailshaft/mechanics';
import { percentWords } from './tally.js';

/** A study that was searched, with the vessel that it stands in. */
export interface SearchedStudy {
  readonly vessel: string;
  readonly result: StudyResult;
  /** Seconds that it took. */
  readonly seconds: number;
}

/** The candidates by their numbers: those that hold, and behind them those that cannot be told. */
export function numbered({ holds, unknown }: StudyResult): readonly Candidate[] {
  return [...holds, ...unknown];
}

/** How many of the best the study wants to be shown. */
export function shownOf({ study }: StudyResult): number {
  return study.show?.value?.si ?? USUAL_SHOWN;
}

const USUAL_SHOWN = 10;

/** The option of one dimension. */
export function optionOf({ dimensions }: StudyResult, { choice }: Candidate, at: number): string {
  return dimensions[at]!.options[choice[at]!]!;
}

export function rankWords(value: Candidate['ranks'][number], { words }: RankColumn): string {
  if (!value) return 'not known';
  return words.endsWith('margin') ? percentWords(value.si) : formatValue(value);
}

/** `propeller/tip-clearance of Port`. */
export function limitWords({ limit }: Candidate, ranking: readonly RankColumn[]): string {
  if (!limit) return '';
  const line = limit.subject.split('.').slice(1).join('.');
  const where = `${limit.rule}${line ? ` of ${line}` : ''}`;
  // Where the margin is a column of its own it is not said twice.
  return ranking.some(one => one.words === 'least margin') ? where : `${percentWords(limit.margin)} ${where}`;
}

/** `700 candidates, 12 combinations left out`. */
export function countWords({ judged, apart, combinations, stoppedAt }: StudyResult): string {
  const number = (count: number) => count.toLocaleString('en');
  const left = apart > 0 ? `, ${number(apart)} combinations that are not possible` : '';
  return stoppedAt === undefined
    ? `${number(judged)} candidates judged${left}`
    : `stopped after ${number(stoppedAt)} of ${number(combinations)} combinations: ${number(judged)} candidates judged${left}`;
}
