import { given, totalMass, type Value } from '@tailshaft/mechanics';
import type { LineAnalysis } from '../analysis/line.js';
import { propellerMass } from '../analysis/propulsion/weight.js';
import { runningProfile } from '../analysis/running-profile.js';
import type { Ranking, ShaftLine, Study } from '../model/vessel.js';
import { NAMED_QUANTITIES, type NamedQuantity, together } from '../rules/trace/quantities/index.js';
import { OWN_RANKINGS, rankingProblem } from './rankable.js';
import type { Limit, RankColumn } from './result.js';

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
  return { words: quantity, best, of: OWN[quantity]?.(best) ?? efficiencyOf(best) };
}

/** How each of them is worked out, beside the efficiency of the propeller. */
const OWN: Readonly<Record<string, (best: RankColumn['best']) => Ranked['of']>> = {
  mass: () => massOf,
  'fuel per year': () => fuelBy('perYear'),
  'fuel per mile': () => fuelBy('perMile'),
};

function fuelBy(what: 'perYear' | 'perMile'): Ranked['of'] {
  return (lines, analysisOf) => {
    const [first] = lines;
    return first && runningProfile(lines, analysisOf(first).vessel, analysisOf)?.[what];
  };
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
