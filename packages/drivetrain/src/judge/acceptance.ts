import type { Vessel } from '../model/vessel.js';
import type { Verdict } from './verdict.js';

/**
 * Turns failures that the vessel's text accepts into `accepted`. An acceptance never hides anything: the verdict
 * stays in the list with its message. One without a person, or past its date, changes nothing.
 */
export function applyAcceptances(verdicts: readonly Verdict[], vessel: Vessel, today: string): Verdict[] {
  return verdicts.map(verdict => {
    if (verdict.outcome !== 'fails') return verdict;
    const acceptance = vessel.acceptances.find(
      one =>
        one.rule === verdict.rule &&
        covers(one.on, verdict.subject) &&
        one.by !== undefined &&
        one.because !== undefined &&
        (one.until === undefined || one.until >= today),
    );
    if (!acceptance) return verdict;
    const until = acceptance.until ? ` until ${acceptance.until}` : '';
    return {
      ...verdict,
      outcome: 'accepted' as const,
      message: `${verdict.message} Accepted by ${acceptance.by}${until}: ${acceptance.because}`,
    };
  });
}

/** `Port.shaft` covers `proposed.Port.shaft` and `proposed.Port`; a path with the arrangement covers only that one. */
function covers(on: string, subject: string): boolean {
  const wanted = on.split('.');
  const have = subject.split('.');
  const from = have.indexOf(wanted[0]!);
  return (
    from >= 0 &&
    from <= 1 &&
    wanted.slice(0, have.length - from).every((part, index) => part === have[from + index])
  );
}
