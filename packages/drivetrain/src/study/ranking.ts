import { given, totalMass, type Value } from '@tailshaft/mechanics';
import type { LineAnalysis } from '../analysis/line.js';
import { propellerMass } from '../analysis/propulsion/weight.js';
import type { Ranking, ShaftLine, Study } from '../model/vessel.js';
import { NAMED_QUANTITIES, type NamedQuantity, together } from '../rules/trace/quantities/index.js';
import type { Limit, RankColumn } from './result.js';

/** A quantity that a study can rank by and no requirement is about. */
interface OwnRanking {
  readonly name: string;
  readonly doc: string;
  readonly better: 'more' | 'less';
}

/** What a study can rank by beside the quantities of requirements. */
export const OWN_RANKINGS: readonly OwnRanking[] = [
  {
    name: 'least margin',
    doc: 'The least margin of all checks that give one, capacity over demand less one.',
    better: 'more',
  },
  {
    name: 'mass',
    doc: 'Engines, motors, gears and transfers by their declared masses, with the propellers, declared or estimated.',
    better: 'less',
  },
  {
    name: 'propeller efficiency',
    doc: 'Open-water efficiency of the propeller at rated shaft speed, by its series.',
    better: 'more',
  },
];

/** One ranking that can be worked out. */
export interface Ranked extends RankColumn {
  readonly of: (
    lines: readonly ShaftLine[],
    analysisOf: (line: ShaftLine) => LineAnalysis,
  ) => Value | undefined;
  /** It is made from the verdicts, and costs nothing. */
  readonly fromLimit?: true;
}

/** The rankings of a study; the least margin where it names none that there is. */
export function rankingsOf({ rank }: Study): readonly Ranked[] {
  const ranked = rank.flatMap(({ value }) => (value && rankedBy(value)) ?? []);
  return ranked.length > 0 ? ranked : [rankedBy({ quantity: 'least margin' })!];
}

/** Why a ranking cannot be worked out; undefined where it can. */
export function rankingProblem({ quantity, condition }: Ranking): string | undefined {
  const own = OWN_RANKINGS.find(one => one.name === quantity);
  if (own) return condition ? `"${quantity}" takes no condition.` : undefined;
  const named = NAMED_QUANTITIES.find(one => one.name === quantity);
  if (!named) {
    const known = [...NAMED_QUANTITIES, ...OWN_RANKINGS].map(one => one.name).join(', ');
    return `"${quantity}" is not a computed quantity: a study ranks by ${known}.`;
  }
  if (condition === undefined || named.conditions.includes(condition)) return undefined;
  const conditions = named.conditions.join(', ');
  return conditions
    ? `${quantity} is computed at ${conditions}, not at "${condition}".`
    : `"${quantity}" takes no condition.`;
}

function rankedBy(ranking: Ranking): Ranked | undefined {
  const { quantity, condition, order } = ranking;
  if (rankingProblem(ranking)) return undefined;
  const named = NAMED_QUANTITIES.find(one => one.name === quantity);
  const better = (named ?? OWN_RANKINGS.find(one => one.name === quantity))!.better;
  const best = order
    ? order === 'highest first'
      ? 'highest'
      : 'lowest'
    : better === 'more'
      ? 'highest'
      : 'lowest';
  if (named) {
    const at = condition ?? named.conditions[0];
    return { words: at ? `${quantity} at ${at}` : quantity, best, of: ofNamed(named, at, best) };
  }
  if (quantity === 'least margin') return { words: quantity, best, of: () => undefined, fromLimit: true };
  return { words: quantity, best, of: quantity === 'mass' ? massOf : efficiencyOf(best) };
}

function ofNamed(
  named: NamedQuantity,
  condition: string | undefined,
  best: RankColumn['best'],
): Ranked['of'] {
  return (lines, analysisOf) => {
    const values = lines.map(line => named.of(analysisOf(line), condition, named.dimensions[0]!).value);
    if (values.some(one => one === undefined)) return undefined;
    return named.over === 'line' ? worst(values as Value[], best) : together(named, values);
  };
}

function efficiencyOf(best: RankColumn['best']): Ranked['of'] {
  return (lines, analysisOf) => {
    const values = lines.map(line => analysisOf(line).propulsion?.value?.rated.efficiency);
    return values.some(one => one === undefined) ? undefined : worst(values as Value[], best);
  };
}

/** A line is no better than its vessel: of several, the one that is worst counts. */
function worst(values: readonly Value[], best: RankColumn['best']): Value | undefined {
  const [first, ...rest] = values;
  const than = (a: Value, b: Value) => (best === 'highest' ? b.si < a.si : b.si > a.si);
  return rest.reduce((a, b) => (a && than(a, b) ? b : a), first);
}

function massOf(lines: readonly ShaftLine[]): Value<'mass'> | undefined {
  const masses = lines.flatMap(line => [
    ...[line.engine, line.motor, line.gear, ...line.transfers].flatMap(part =>
      part ? [part.mass?.value] : [],
    ),
    ...(line.propeller ? [propellerMass(line.propeller)?.value] : []),
  ]);
  return masses.some(one => one === undefined) ? undefined : totalMass(masses as Value<'mass'>[]);
}

/** A least margin as a value that can be ranked and told. */
export function limitValue({ margin, rule }: Limit): Value<'ratio'> {
  return given('least margin', 'm', 'ratio', margin, { assumed: rule, unit: '%' });
}
