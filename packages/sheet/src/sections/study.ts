import {
  type Candidate,
  failedByAllWords,
  judgedWords,
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
import { capital, count } from '@tailshaft/mechanics';
import { type Block, paragraph, section, type Table, table } from '../document/blocks.js';
import { code, quiet, separated, strong, type Text, together, warning } from '../document/text.js';
import { loadLineCharts } from './load-lines.js';
import { studyChart } from './study-chart.js';

/** The studies that were searched; nothing where none was. */
export function studiesSection(results: readonly StudyResult[]): Block | undefined {
  return results.length > 0 ? section('studies', 'Studies', results.map(studySection)) : undefined;
}

/** A study as it was searched: the counts, the best with what limits each, what rules the others out, and a chart. */
export function studySection(result: StudyResult): Block {
  const { study, arrangement, holds, unknown } = result;
  const counts = outcomeCounts(result);
  const show = shownOf(result);
  const unranked = unrankedWords(result);
  return section(`study-of-${study.name}`, `Study ${study.name} of ${arrangement}`, [
    paragraph(
      separated(
        ' ',
        `${capital(judgedWords(result))}: ${counts.hold}, ${counts.unknown}, ${counts.fail}.`,
        holds.length > 0 ? `Ordered by ${rankingWords(result)}.` : warning(noneHoldsWords(result)),
        holds.length > 0 ? undefined : failedByAllWords(result),
      ),
    ),
    studyChart(result),
    loadLineCharts(result),
    holds.length > 0 ? candidates(result, holds.slice(0, show), 'best candidates') : undefined,
    ...unsure(result, unknown.slice(0, show)),
    unranked === undefined ? undefined : paragraph(warning(`? ${unranked}`)),
    bindings(result),
    ...without(result, show),
    paragraph(
      quiet(
        'Each candidate was judged by every check as if it were written in the arrangement. Screening, not certification.',
      ),
    ),
  ]);
}

function candidates(result: StudyResult, shown: readonly Candidate[], what: string): Table {
  const { study, dimensions, ranking, front, arrangement } = result;
  const all = numbered(result);
  const varied = dimensions.flatMap(({ options }, at) => (options.length > 1 ? [at] : []));
  return table(
    `Study ${study.name}: ${what}`,
    [
      { title: 'Nr', numeric: true },
      ...varied.map(at => ({ title: dimensions[at]!.words })),
      ...ranking.map(({ words }) => ({ title: words, numeric: true })),
      { title: 'Limited by', wide: true },
    ],
    shown.map(one => [
      number(result, one, all.indexOf(one) + 1, ranking.length > 1 && front.has(one.index), arrangement),
      ...varied.map(at => together(optionOf(result, one, at))),
      ...ranking.map((column, at) => rankWords(one.ranks[at], column)),
      separated(
        ', ',
        limitWords(one, ranking),
        one.warnings > 0 ? warning(count(one.warnings, 'warning')) : undefined,
      ),
    ]),
  );
}

/** The number of a candidate; pressed, it is written into its arrangement. */
function number(
  result: StudyResult,
  one: Candidate,
  nr: number,
  isFront: boolean,
  arrangement: string,
): Text {
  const options = result.dimensions.map((_, at) => optionOf(result, one, at));
  const act = JSON.stringify({ study: result.study.name, arrangement, options });
  return [{ as: 'act', text: String(nr), act }, isFront ? ' *' : ''];
}

/** What would be chosen once what all candidates fail is put right. */
function without({ without: result }: StudyResult, show: number): Block[] {
  if (!result) return [];
  const { holds, unknown, setAside = [] } = result;
  const all = setAside.join(', ');
  return [
    paragraph(warning(withoutWords(result))),
    ...(holds.length > 0
      ? [
          paragraph(`Ordered by ${rankingWords(result)}.`),
          candidates(result, holds.slice(0, show), `best candidates without ${all}`),
        ]
      : []),
    ...unsure(result, unknown.slice(0, show)),
    ...[bindings(result)].flatMap(one => one ?? []),
  ];
}

/** What cannot be told stands apart, with the checks that lack data. */
function unsure(result: StudyResult, shown: readonly Candidate[]): Block[] {
  if (shown.length === 0) return [];
  return [
    candidates(result, shown, 'candidates apart, because their checks cannot tell'),
    paragraph(
      separated(
        ' ',
        quiet('Checks that lack data:'),
        separated(
          ', ',
          ...result.lacking.map(({ rule, data }) =>
            data.length > 0 ? separated(' ', code(rule), `(${data.join('; ')})`) : code(rule),
          ),
        ),
      ),
    ),
  ];
}

/** Which check binds: how many candidates each rules out, the most first. */
function bindings({ study, binding, setAside }: StudyResult): Block | undefined {
  if (binding.length === 0) return undefined;
  return table(
    `Study ${study.name}: what ${setAside ? 'else ' : ''}rules candidates out; one that has failed skips the checks that depend on everything`,
    [
      { title: 'Check', wide: true },
      { title: 'Fails', numeric: true },
      { title: 'Alone', numeric: true },
    ],
    binding.map(({ rule, failed, alone }, at) => [
      at === 0 ? strong(rule) : rule,
      String(failed),
      String(alone),
    ]),
  );
}
