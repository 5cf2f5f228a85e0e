import type { Finding } from './finding.js';

/** What a person, and an editor, can still look through in one file. */
const MOST_FINDINGS = 1000;

const RANK = { error: 0, warning: 1, information: 2, hint: 3 } as const;

/**
 * The gravest findings of a file in their order, when there are more than anybody reads: the last one then says how many
 * were left out, as gravely as the gravest of these, so that a file is never taken for better than it is.
 */
export function mostFindings(all: readonly Finding[], uri: string, most = MOST_FINDINGS): Finding[] {
  if (all.length <= most) return [...all];
  const byRank = all.map((_, at) => at).sort((a, b) => rank(all[a]!) - rank(all[b]!) || a - b);
  const kept = new Set(byRank.slice(0, most - 1));
  const gravest = all[byRank[most - 1]!]!;
  const left = all.length - kept.size;
  return [
    ...all.filter((_, at) => kept.has(at)),
    {
      code: 'text/too-many',
      severity: gravest.severity,
      place: { ...gravest.place, uri },
      message: `${left} more findings of this file are not shown; the ${kept.size} most serious are. Correct these first.`,
      related: [],
    },
  ];
}

function rank({ severity }: Finding): number {
  return RANK[severity];
}
