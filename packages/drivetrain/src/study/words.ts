import { formatValue, percent } from '@tailshaft/mechanics';
import type { Candidate, RankColumn, StudyResult } from './result.js';
import { failedByAll } from './set-aside.js';

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
  return words.endsWith('margin') ? percent(value.si) : formatValue(value);
}

/** `propeller/tip-clearance of Port`. */
export function limitWords({ limit }: Candidate, ranking: readonly RankColumn[]): string {
  if (!limit) return '';
  const line = limit.subject.split('.').slice(1).join('.');
  const where = `${limit.rule}${line ? ` of ${line}` : ''}`;
  // Where the margin is a column of its own it is not said twice.
  return ranking.some(one => one.words === LEAST_MARGIN) ? where : `${percent(limit.margin)} ${where}`;
}

export const LEAST_MARGIN = 'least margin';

/** `700 candidates judged, 12 combinations that are not possible`. */
export function judgedWords({ judged, apart, combinations, stoppedAt }: StudyResult): string {
  const number = (count: number) => count.toLocaleString('en');
  const left = apart > 0 ? `, ${number(apart)} combinations that are not possible` : '';
  return stoppedAt === undefined
    ? `${number(judged)} candidates judged${left}`
    : `stopped after ${number(stoppedAt)} of ${number(combinations)} combinations: ${number(judged)} candidates judged${left}`;
}

/** `No candidate holds.`; of a search that was stopped, nothing is said of those that it did not come to. */
export function noneHoldsWords({ stoppedAt }: StudyResult): string {
  return stoppedAt === undefined ? 'No candidate holds.' : 'None of those judged holds.';
}

/** `51 hold`, `3 cannot tell`, `6,246 fail`. */
export function outcomeCounts({ holds, unknown, failed }: StudyResult) {
  const of = (count: number, one: string, many = one) =>
    `${count.toLocaleString('en')} ${count === 1 ? one : many}`;
  return {
    hold: of(holds.length, 'holds', 'hold'),
    unknown: of(unknown.length, 'cannot tell'),
    fail: of(failed, 'fails', 'fail'),
  };
}

/** `interface/freewheel (freewheel rule of gear Hazel-40); ...`: the checks that cannot tell, each with what it lacks. */
export function lackingWords({ lacking }: StudyResult): string {
  return lacking
    .map(({ rule, data }) => (data.length > 0 ? `${rule} (${data.join('; ')})` : rule))
    .join(', ');
}

/** `Not known for some candidates: mass (mass of gear Alder-63).`: the rankings that are not known, with what they lack. */
export function unrankedWords({ unranked }: StudyResult): string | undefined {
  if (unranked.length === 0) return undefined;
  const each = unranked.map(({ ranking, data }) => {
    const told = data.slice(0, TOLD).join('; ');
    return told ? `${ranking} (${told}${data.length > TOLD ? '; ...' : ''})` : ranking;
  });
  return `Not known for some candidates: ${each.join(', ')}.`;
}

/** Of the reasons why a ranking is not known, which may be sentences. */
const TOLD = 2;

/** `Every candidate fails shafting/span-guide: ...`, where there is such a check; what else rules out is then hidden. */
export function failedByAllWords(result: StudyResult): string | undefined {
  const rules = failedByAll(result);
  if (rules.length === 0) return undefined;
  const [them, they, it] = rules.length === 1 ? ['it', 'it', 'depends'] : ['them', 'they', 'depend'];
  const hidden = result.without ? '' : ' What else would rule candidates out may not be counted.';
  return `Every candidate fails ${rules.join(', ')}: put ${them} right in the arrangement first, vary what ${they} ${it} on, or hold fewer checks.${hidden}`;
}

/** `Without interface/torsional-statement, which every candidate fails: 12 hold, none cannot tell, 204 fail.` */
export function withoutWords({ setAside = [], holds, unknown, failed }: StudyResult): string {
  return `Without ${setAside.join(', ')}, which every candidate fails: ${holds.length} hold, ${unknown.length} cannot tell, ${failed} fail.`;
}

/** How the candidates are ordered, and what the star beside one means. */
export function rankingWords({ ranking }: StudyResult): string {
  const order = ranking.map(({ words, best }) => `${words} (${best} first)`).join(', then ');
  return ranking.length > 1 ? `${order}; * beaten by no other in all of them` : order;
}
