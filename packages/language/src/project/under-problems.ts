import { byGravity } from '@tailshaft/drivetrain';
import { type Place, placeOf } from '../reading/place.js';
import type { Finding } from './finding.js';

/**
 * What fails on a figure that no such part can have is told under that figure: it is one slip of the pen, and what the
 * checks make of it is no news. Nothing is lost: it stands in `folded`.
 */
export function underProblems(findings: readonly Finding[]): Finding[] {
  const slips = new Map<string, Finding[]>();
  for (const { problem, severity, place } of findings)
    if (problem?.code === 'text/out-of-range' && severity === 'error') slips.set(keyOf(place), []);
  if (slips.size === 0) return [...findings];
  const left = findings.filter(finding => {
    const under = finding.verdict?.outOfRange
      ?.map(fact => slips.get(keyOf(placeOf(fact.origin))))
      .find(one => one !== undefined);
    under?.push(finding);
    return under === undefined;
  });
  return left.map(finding => {
    const under = finding.problem && slips.get(keyOf(finding.place));
    if (!under || under.length === 0) return finding;
    under.sort((one, other) => byGravity(one.verdict!, other.verdict!));
    const folded = under.flatMap(({ folded: own = [], ...one }) => [one, ...own]);
    const related = under.map(({ place, code, message }) => ({
      place,
      message: `Fails for it too, ${code}: ${message}`,
    }));
    return { ...finding, folded, related: [...finding.related, ...related] };
  });
}

function keyOf({ uri, start }: Place): string {
  return `${uri}:${start}`;
}
