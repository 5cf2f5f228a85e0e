import type { Severity, Verdict } from './verdict.js';

const SEVERITIES: readonly Severity[] = ['error', 'warning', 'note'];

/**
 * Graver findings first: by severity, what is as found behind what is proposed; then which way the vessel goes, which no
 * margin measures; then by how far below nil the margin is; then the rest.
 */
export function byGravity(one: Weighed, other: Weighed): number {
  return (
    SEVERITIES.indexOf(one.severity) - SEVERITIES.indexOf(other.severity) ||
    Number(one.asFound ?? false) - Number(other.asFound ?? false) ||
    kindOf(one) - kindOf(other) ||
    (one.margin ?? 0) - (other.margin ?? 0)
  );
}

export type Weighed = Pick<Verdict, 'rule' | 'severity' | 'margin' | 'asFound'>;

function kindOf({ rule, margin }: Weighed): number {
  if (rule.startsWith('rotation/')) return 0;
  return margin !== undefined && margin < 0 ? 1 : 2;
}
