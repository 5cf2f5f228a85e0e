import { type Candidate, LEAST_MARGIN, type StudyResult } from '@tailshaft/drivetrain';
import { fromSI, naturalUnit } from '@tailshaft/mechanics';
import type { Figure } from '../document/blocks.js';
import { chart, type Series, type XY } from '../drawing/chart.js';

/** More points than this hide each other. */
const MOST_POINTS = 300;

/**
 * The least margin of each candidate over what it is ranked by; where it is ranked by nothing else, the best least margin for
 * each value of what varies most.
 */
export function studyChart(result: StudyResult): Figure | undefined {
  return overRanking(result) ?? overOptions(result);
}

function overRanking(result: StudyResult): Figure | undefined {
  const { study, ranking, holds, unknown, front, arrangement } = result;
  const at = ranking.findIndex(one => one.words !== LEAST_MARGIN);
  const words = ranking[at]?.words;
  const first = [...holds, ...unknown].find(one => one.ranks[at])?.ranks[at];
  if (words === undefined || !first) return undefined;
  const unit = first.dimension === 'ratio' || first.dimension === 'number' ? undefined : naturalUnit(first);
  const points = (all: readonly Candidate[]): XY[] =>
    all.flatMap(({ ranks, limit }): XY[] => {
      const value = ranks[at];
      return value && limit ? [[unit ? fromSI(value.si, unit) : value.si, 100 * limit.margin]] : [];
    });
  const isFront = (one: Candidate) => ranking.length > 1 && front.has(one.index);
  const series: Series[] = [
    { name: 'beaten by no other', kind: 'marks', points: points(holds.filter(isFront)) },
    {
      name: 'others that hold',
      kind: 'rings',
      points: points(holds.filter(one => !isFront(one)).slice(0, MOST_POINTS)),
    },
    { name: 'cannot tell', kind: 'crosses', points: points(unknown.slice(0, MOST_POINTS)) },
  ];
  const drawn = series.filter(one => one.points.length > 0);
  if (drawn.length === 0) return undefined;
  const some = [holds, unknown].some(all => all.length > MOST_POINTS)
    ? `, the best ${MOST_POINTS} of a kind`
    : '';
  return {
    block: 'figure',
    svg: chart({
      id: `study-${study.name}`,
      title: `Study ${study.name} of ${arrangement}: least margin over ${words}`,
      xTitle: `${words}${unit ? `, ${unit.symbol}` : ''}`,
      yTitle: 'least margin, %',
      series: drawn,
      tight: true,
    }),
    caption: `Each candidate that does not fail${some}: what it comes to, and the least margin of all its checks.`,
  };
}

/** The best margin that is left for each value of one thing that varies, where its values are numbers. */
function overOptions(result: StudyResult): Figure | undefined {
  const { study, dimensions, holds, arrangement } = result;
  const numeric = dimensions
    .map(({ words, options }, at) => ({ words, at, numbers: options.map(one => Number.parseFloat(one)) }))
    .filter(one => one.numbers.length > 1 && one.numbers.every(Number.isFinite))
    .sort((a, b) => b.numbers.length - a.numbers.length)[0];
  if (!numeric) return undefined;
  const points = numeric.numbers.flatMap((number, option): XY[] => {
    const margins = holds.flatMap(({ choice, limit }) =>
      choice[numeric.at] === option && limit ? [limit.margin] : [],
    );
    return margins.length > 0 ? [[number, 100 * Math.max(...margins)]] : [];
  });
  if (points.length < 2) return undefined;
  const unit = dimensions[numeric.at]!.options[0]!.replace(/^[\d.\s/]+/, '');
  return {
    block: 'figure',
    svg: chart({
      id: `study-${study.name}`,
      title: `Study ${study.name} of ${arrangement}: least margin over ${numeric.words}`,
      xTitle: `${numeric.words}${unit ? `, ${unit}` : ''}`,
      yTitle: 'best least margin, %',
      series: [
        { name: 'best candidate that holds', kind: 'solid', points },
        { name: 'values of the study', kind: 'rings', points },
      ],
      tight: true,
    }),
    caption: `The best least margin of the candidates that hold, for each ${numeric.words}.`,
  };
}
