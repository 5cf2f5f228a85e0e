import {
  type Candidate,
  failedByAllWords,
  judgedWords,
  lackingWords,
  limitWords,
  noneHoldsWords,
  numbered,
  optionOf,
  outcomeCounts,
  rankingWords,
  rankWords,
  type StudyResult,
  shownOf,
  unrankedWords,
  withoutWords,
} from '@tailshaft/drivetrain';
import { count } from '@tailshaft/mechanics';
import type { Io } from '../terminal/io.js';
import { type Cell, table, wrapped } from '../terminal/layout.js';
import type { SearchedStudy } from './study-words.js';

/** A study as a person reads it: the counts, the best, and what rules the others out. */
export function studyText(io: Io, { vessel, result, seconds }: SearchedStudy, most?: number): string {
  const { study, arrangement, holds, unknown } = result;
  const counts = outcomeCounts(result);
  const { paint } = io;
  const show = most ?? shownOf(result);
  const head = `${vessel}, study ${study.name} of ${arrangement}`;
  const parts = [
    `${paint.strong(head)}: ${judgedWords(result)} in ${seconds.toFixed(1)} s`,
    `  ${[paint.good(counts.hold), paint.open(counts.unknown), paint.error(counts.fail)].join(', ')}`,
    '',
    holds.length > 0
      ? wrapped(
          `${paint.strong(`The best ${Math.min(show, holds.length)}`)} by ${rankingWords(result)}`,
          io.width,
        )
      : [paint.error(noneHoldsWords(result)), wrapped(failedByAllWords(result) ?? '', io.width)]
          .filter(Boolean)
          .join('\n'),
    ...(holds.length > 0 ? [candidates(io, result, holds.slice(0, show))] : []),
    ...unsure(io, result, show),
    ...unranked(io, result),
    ...bindings(io, result),
    ...without(io, result, show),
    '',
    wrapped(holds.length + unknown.length > 0 || result.without ? `${CAUTION} ${WRITE}` : CAUTION, io.width),
  ];
  return parts.join('\n');
}

const CAUTION =
  'Screening, not certification: each candidate was judged by every check as if it were written in the arrangement.';
const WRITE = 'Write the chosen one with --write and check it.';

function candidates({ paint }: Io, result: StudyResult, shown: readonly Candidate[]): string {
  const { dimensions, ranking, front } = result;
  const all = numbered(result);
  const varied = dimensions.flatMap(({ options }, at) => (options.length > 1 ? [at] : []));
  const quiet = (text: string): Cell => ({ text, paint: paint.quiet });
  const rows: Cell[][] = [
    [
      { ...quiet('nr'), right: true },
      quiet(''),
      ...varied.map(at => quiet(dimensions[at]!.words)),
      ...ranking.map(({ words }) => ({ ...quiet(words), right: true })),
      quiet('limit'),
    ],
    ...shown.map(one => [
      { text: String(all.indexOf(one) + 1), right: true },
      { text: ranking.length > 1 && front.has(one.index) ? '*' : '' },
      ...varied.map(at => ({ text: optionOf(result, one, at) })),
      ...ranking.map((column, at) => ({ text: rankWords(one.ranks[at], column), right: true })),
      {
        text: [limitWords(one, ranking), one.warnings > 0 ? count(one.warnings, 'warning') : '']
          .filter(Boolean)
          .join(', '),
      },
    ]),
  ];
  return table(rows, '  ');
}

/** What would be chosen once what all candidates fail is put right. */
function without(io: Io, { without: result }: StudyResult, show: number): string[] {
  if (!result) return [];
  const { holds } = result;
  return [
    '',
    wrapped(io.paint.strong(withoutWords(result)), io.width),
    ...(holds.length > 0
      ? [
          wrapped(`The best ${Math.min(show, holds.length)} by ${rankingWords(result)}`, io.width),
          candidates(io, result, holds.slice(0, show)),
        ]
      : []),
    ...unsure(io, result, show),
    ...unranked(io, result),
    ...bindings(io, result),
  ];
}

/** What cannot be told stands apart, with the checks that lack data. */
function unsure(io: Io, result: StudyResult, show: number): string[] {
  const { unknown } = result;
  if (unknown.length === 0) return [];
  return [
    '',
    `${io.paint.open('Apart, because their checks cannot tell')}: ${count(unknown.length, 'candidate')}`,
    candidates(io, result, unknown.slice(0, show)),
    wrapped(`Checks that lack data: ${lackingWords(result)}`, io.width, '  '),
  ];
}

function unranked({ width }: Io, result: StudyResult): string[] {
  const words = unrankedWords(result);
  return words ? [wrapped(words, width, '  ')] : [];
}

function bindings({ paint, width }: Io, { binding, setAside }: StudyResult): string[] {
  if (binding.length === 0) return [];
  const quiet = (text: string, right = false): Cell => ({ text, paint: paint.quiet, right });
  return [
    '',
    wrapped(
      `${paint.strong(`What ${setAside ? 'else ' : ''}rules candidates out`)}; a failed candidate skips the checks that depend on everything`,
      width,
    ),
    table(
      [
        [quiet('check'), quiet('fails', true), quiet('alone', true)],
        ...binding.map(({ rule, failed, alone }) => [
          { text: rule },
          { text: String(failed), right: true },
          { text: String(alone), right: true },
        ]),
      ],
      '  ',
    ),
  ];
}
