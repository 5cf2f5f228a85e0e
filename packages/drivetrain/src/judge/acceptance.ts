import { aside } from '../model/reads.js';
import type { Acceptance, Vessel } from '../model/vessel.js';
import { noLongerNeeded, notCompetent, PAPER_ACCEPTANCE, wrongWith } from '../rules/paper/acceptance.js';
import { type AcceptancePolicy, USUAL_POLICY, unfitFor } from './acceptance-policy.js';
import type { Verdict } from './verdict.js';

/**
 * Turns failures that the vessel's text accepts into `accepted`. An acceptance never hides anything: the verdict
 * stays in the list with its message. One without a person, or past its date, changes nothing; one of which everything
 * that it covers holds is told to be no longer needed.
 */
export function applyAcceptances(
  verdicts: readonly Verdict[],
  vessel: Vessel,
  today: string,
  policy: AcceptancePolicy = USUAL_POLICY,
  ofPractice?: AcceptancePolicy,
): Verdict[] {
  const unfit = new Map<Acceptance, string>();
  const judged = verdicts.map(verdict => {
    if (verdict.outcome !== 'fails') return verdict;
    const acceptance = vessel.acceptances.find(one => {
      if (!accepts(one, verdict) || isOfAnother(one, verdict, vessel) || wrongWith(one, today).length > 0)
        return false;
      // Both must be met: neither the workspace nor the practice gives what the other withholds.
      const why =
        unfitFor(one, verdict, policy, today) ?? (ofPractice && unfitFor(one, verdict, ofPractice, today));
      if (why) unfit.set(one, why);
      return why === undefined;
    });
    if (!acceptance) return verdict;
    const until = acceptance.until ? ` until ${acceptance.until}` : '';
    return {
      ...verdict,
      outcome: 'accepted' as const,
      acceptance,
      message: `${verdict.message} Accepted by ${acceptance.by}${until}: ${acceptance.because}`,
    };
  });
  return withCounts(judged).map(verdict => {
    const own =
      verdict.rule === PAPER_ACCEPTANCE && vessel.acceptances.find(one => one.origin === verdict.place);
    if (!own) return verdict;
    const why = unfit.get(own);
    if (why && (verdict.outcome === 'holds' || verdict.severity === 'warning'))
      return notCompetent(vessel.name, own, why);
    const held = verdict.outcome === 'holds' && heldWithout(own, verdicts);
    return held ? noLongerNeeded(vessel.name, own, held) : verdict;
  });
}

/** Whether the acceptance names one part and what fails stands at another one of its kind. */
function isOfAnother({ on }: Acceptance, { place, subject }: Verdict, vessel: Vessel): boolean {
  const lines = vessel.arrangements.flatMap(one => one.lines);
  const line = lines.find(one => subject === one.path || subject.startsWith(`${one.path}.`));
  const name = on.split('.').at(-1)!;
  const meant = line?.chain.filter(one => one.role === name || one.entry?.name === name) ?? [];
  const others = line?.chain.filter(one => !meant.includes(one) && meant[0]?.role === one.role) ?? [];
  return others.some(one => standsAt(one, place)) && !meant.some(one => standsAt(one, place));
}

/** Whether this is the place of a part, of one of its facts, or of a block of it. */
function standsAt(part: object, place: Verdict['place']): boolean {
  return aside(() =>
    Object.entries(part).some(([field, value]) => {
      if (value === place) return field === 'origin' || field === 'nameOrigin';
      if (typeof value !== 'object' || value === null || field === 'keptFrom' || field === 'entry')
        return false;
      return (Array.isArray(value) || 'origin' in value) && standsAt(value, place);
    }),
  );
}

/** An acceptance that covers several failures says how many: a line may have two parts that go by one name. */
function withCounts(verdicts: readonly Verdict[]): Verdict[] {
  const counts = new Map<string, number>();
  const key = ({ acceptance, subject }: Verdict) =>
    acceptance && `${acceptance.rule} ${acceptance.on} ${subject}`;
  for (const one of verdicts) {
    const of = key(one);
    if (of) counts.set(of, (counts.get(of) ?? 0) + 1);
  }
  return verdicts.map(one => {
    const count = counts.get(key(one) ?? '') ?? 0;
    return count > 1
      ? { ...one, message: `${one.message} This acceptance covers ${count} failures of the check there.` }
      : one;
  });
}

/** A verdict that holds where the acceptance covers a failure, if all that it covers hold. */
function heldWithout(acceptance: Acceptance, verdicts: readonly Verdict[]): Verdict | undefined {
  // What is told under another finding is not settled either.
  const all = verdicts.flatMap(one => [one, ...(one.folds ?? [])]);
  const covered = all.filter(one => accepts(acceptance, one) && one.outcome !== 'does not apply');
  return covered.length > 0 && covered.every(one => one.outcome === 'holds') ? covered[0] : undefined;
}

function accepts(acceptance: Acceptance, verdict: Verdict): boolean {
  // What was found aboard needs nobody's leave, unless it is named.
  if (verdict.asFound && acceptance.on.split('.')[0] !== verdict.subject.split('.')[0]) return false;
  return acceptance.rule === verdict.rule && covers(acceptance.on, verdict.subject);
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
