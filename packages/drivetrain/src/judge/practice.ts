import type { Practice, Vessel } from '../model/vessel.js';
import { type AcceptancePolicy, rolesFrom } from './acceptance-policy.js';
import type { Severity, Verdict } from './verdict.js';

const SEVERITIES: readonly Severity[] = ['note', 'warning', 'error'];
const DAY = 86_400;

/** Who may accept what in the practice of a vessel, and for how long. */
export function practicePolicy({ practice }: Vessel): AcceptancePolicy | undefined {
  if (!practice) return undefined;
  const { acceptances = [], longestAcceptance } = practice.facts;
  const roles = rolesFrom(
    acceptances
      .map(({ rules, by }) => `${rules.includes('/') ? rules : `${rules}/`} ${by?.value ?? 'nobody'}`)
      .join(';'),
  );
  const seconds = longestAcceptance?.value?.si;
  return { roles, ...(seconds === undefined ? {} : { longestDays: Math.ceil(seconds / DAY) }) };
}

/** The verdict as grave as the practice has it, which never makes it lighter. */
export function asGraveAs(practice: Practice | undefined, verdict: Verdict): Verdict {
  const weights = (practice?.facts.gravities ?? [])
    .filter(one => verdict.rule.startsWith(one.rules))
    .flatMap(one => one.weight?.value ?? []);
  const rank = Math.max(...[verdict.severity, ...weights].map(one => SEVERITIES.indexOf(one)));
  return rank === SEVERITIES.indexOf(verdict.severity)
    ? verdict
    : { ...verdict, severity: SEVERITIES[rank]! };
}
