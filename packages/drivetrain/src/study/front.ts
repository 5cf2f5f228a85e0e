import type { Candidate, RankColumn } from './result.js';

/** Whether one candidate comes before another; what cannot be told comes last. */
export function compareBy(ranking: readonly RankColumn[]): (one: Candidate, other: Candidate) => number {
  return (one, other) => {
    for (const [at, { best }] of ranking.entries()) {
      const [a, b] = [one.ranks[at]?.si, other.ranks[at]?.si];
      if (a === b) continue;
      if (a === undefined) return 1;
      if (b === undefined) return -1;
      return best === 'highest' ? b - a : a - b;
    }
    return one.index - other.index;
  };
}

/** The candidates that no other one equals in all rankings and beats in one. Those that lack a figure are not among them. */
export function frontOf(
  candidates: readonly Candidate[],
  ranking: readonly RankColumn[],
): ReadonlySet<number> {
  const whole = candidates.filter(one => ranking.every((_, at) => one.ranks[at] !== undefined));
  const front: Candidate[] = [];
  // In the order of the first ranking nothing that comes later beats what comes before.
  for (const one of [...whole].sort(compareBy(ranking)))
    if (!front.some(other => beats(other, one, ranking))) front.push(one);
  return new Set(front.map(one => one.index));
}

function beats(one: Candidate, other: Candidate, ranking: readonly RankColumn[]): boolean {
  const signs = ranking.map(({ best }, at) => {
    const difference = one.ranks[at]!.si - other.ranks[at]!.si;
    return best === 'highest' ? difference : -difference;
  });
  return signs.every(sign => sign >= 0) && signs.some(sign => sign > 0);
}
