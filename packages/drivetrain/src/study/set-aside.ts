import type { StudyCase, StudyResult } from './result.js';

/** Checks that fail in every candidate, whichever is chosen; none where the search was ended early. */
export function failedByAll({ judged, binding, stoppedAt }: StudyResult): string[] {
  // The first candidates share their first options: those that nobody looked at may differ.
  if (stoppedAt !== undefined) return [];
  return binding.flatMap(({ rule, failed }) => (failed === judged ? [rule] : []));
}

/** So often more is set aside, where what was set aside hid what else every candidate fails. */
const MOST_PASSES = 4;

/**
 * Where a study has no candidate because all fail the same checks by the same, the choice has nothing to do with these and is
 * still wanted: it is searched again without them, and what it comes to stands apart in the result, with what was set aside. `again` gives nothing when nobody waits.
 */
export async function withSetAside(
  of: StudyCase,
  result: StudyResult,
  again: (of: StudyCase) => Promise<StudyResult | undefined>,
): Promise<StudyResult> {
  let found = result;
  let setAside: readonly string[] = [];
  for (let pass = 0; pass < MOST_PASSES && isEmpty(found); pass += 1) {
    const failed = failedByAll(found).filter(rule => found.alike.includes(rule));
    if (failed.length === 0) return result;
    setAside = [...setAside, ...failed].sort();
    const next = await again({ ...of, setAside });
    if (!next) return result;
    found = next;
  }
  return found === result || isEmpty(found) ? result : { ...result, without: found };
}

function isEmpty({ holds, unknown }: StudyResult): boolean {
  return holds.length + unknown.length === 0;
}
