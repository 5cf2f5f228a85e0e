import type { Ranking } from '../model/vessel.js';
import { NAMED_QUANTITIES } from '../rules/trace/quantities/index.js';

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
    doc: 'Engines, motors, gears and transfers by their declared masses, shafts by their sizes and density, and the propellers, declared or estimated.',
    better: 'less',
  },
  {
    name: 'fuel per year',
    doc: 'Fuel of all engines over a year of the running profile in "duty".',
    better: 'less',
  },
  {
    name: 'fuel per mile',
    doc: 'Fuel of all engines for each nautical mile, over the running profile in "duty": with one speed in it, at that speed.',
    better: 'less',
  },
  {
    name: 'propeller efficiency',
    doc: 'Open-water efficiency of the propeller at rated shaft speed, by its series.',
    better: 'more',
  },
];

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
