import { given, totalMass, type Value } from '@tailshaft/mechanics';
import type { LineAnalysis } from '../analysis/line.js';
import { propellerMass } from '../analysis/propulsion/weight.js';
import { runningProfile } from '../analysis/running-profile.js';
import { shaftMass } from '../analysis/shaft-twist.js';
import { heavyParts } from '../analysis/weights.js';
import { Needs } from '../judge/needs.js';
import type { Missing } from '../judge/verdict.js';
import { home, nameOf } from '../model/part.js';
import type { Propeller } from '../model/shafting.js';
import type { Ranking, ShaftLine, Study } from '../model/vessel.js';
import { NAMED_QUANTITIES, type NamedQuantity, together } from '../rules/trace/quantities/index.js';
import { OWN_RANKINGS, rankingProblem } from './rankable.js';
import type { Limit, RankColumn } from './result.js';

/** What a ranking comes to; or what it waits for, in words. */
export type Rank = Value | { readonly lacking: readonly string[] };

/** One ranking that can be worked out. */
export interface Ranked extends RankColumn {
  readonly of: (lines: readonly ShaftLine[], analysisOf: (line: ShaftLine) => LineAnalysis) => Rank;
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
  if (quantity === 'least margin') return { words: quantity, best, of: () => NOTHING, fromLimit: true };
  return { words: quantity, best, of: OWN[quantity]?.(best) ?? efficiencyOf(best) };
}

const NOTHING: Rank = { lacking: [] };

/** How each of them is worked out, beside the efficiency of the propeller. */
const OWN: Readonly<Record<string, (best: RankColumn['best']) => Ranked['of']>> = {
  mass: () => massOf,
  'fuel per year': () => fuelBy('perYear'),
  'fuel per mile': () => fuelBy('perMile'),
};

function fuelBy(what: 'perYear' | 'perMile'): Ranked['of'] {
  return (lines, analysisOf) => {
    const [first] = lines;
    const profile = first && runningProfile(lines, analysisOf(first).vessel, analysisOf);
    if (!profile) return { lacking: ['hours at speeds in "duty"'] };
    return profile[what] ?? { lacking: profile.runs.flatMap(one => one.why ?? []) };
  };
}

function ofNamed(
  named: NamedQuantity,
  condition: string | undefined,
  best: RankColumn['best'],
): Ranked['of'] {
  return (lines, analysisOf) => {
    const found = lines.map(line => named.of(analysisOf(line), condition, named.dimensions[0]!));
    const values = found.flatMap(one => one.value ?? []);
    const lacking = found.flatMap(one => (one.value ? [] : wantingIn(one)));
    if (values.length < lines.length) return { lacking };
    return (named.over === 'line' ? worst(values, best) : together(named, values)) ?? NOTHING;
  };
}

/** What keeps a figure from being worked out: what is missing for it, or why the methods do not apply. */
function wantingIn({ missing, refusal }: { missing: readonly Missing[]; refusal?: string }): string[] {
  return missing.length > 0 || !refusal ? missing.map(one => one.what) : [refusal.replace(/\.$/, '')];
}

function efficiencyOf(best: RankColumn['best']): Ranked['of'] {
  return (lines, analysisOf) => {
    const found = lines.map(line => analysisOf(line).propulsion);
    const values = found.flatMap(one => one?.value?.rated.efficiency ?? []);
    if (values.length < lines.length)
      return { lacking: found.flatMap(one => (one && !one.value ? wantingIn(one) : [])) };
    return worst(values, best) ?? NOTHING;
  };
}

/** A line is no better than its vessel: of several, the one that is worst counts. */
function worst(values: readonly Value[], best: RankColumn['best']): Value | undefined {
  const [first, ...rest] = values;
  const than = (a: Value, b: Value) => (best === 'highest' ? b.si < a.si : b.si > a.si);
  return rest.reduce((a, b) => (a && than(a, b) ? b : a), first);
}

function massOf(lines: readonly ShaftLine[]): Rank {
  const needs = new Needs();
  const masses = lines.flatMap(line => [
    ...heavyParts(line).map(part =>
      needs.fact(part.mass, { what: `mass of ${nameOf(part)}`, host: home(part), property: 'mass' }),
    ),
    ...line.shafts.map(one => shaftMass(one, needs)),
    ...(line.propeller ? [massOfPropeller(line.propeller, needs)] : []),
  ]);
  const known = masses.flatMap(one => one ?? []);
  return known.length === masses.length ? totalMass(known) : { lacking: needs.missing.map(one => one.what) };
}

function massOfPropeller(propeller: Propeller, needs: Needs): Value<'mass'> | undefined {
  return (
    propellerMass(propeller)?.value ??
    needs.miss({ what: `mass of ${nameOf(propeller)}`, host: propeller.origin, property: 'mass' })
  );
}

/** A least margin as a value that can be ranked and told. */
export function limitValue({ margin, rule }: Limit): Value<'ratio'> {
  return given('least margin', 'm', 'ratio', margin, { assumed: rule, unit: '%' });
}
