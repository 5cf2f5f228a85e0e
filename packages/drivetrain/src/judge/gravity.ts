import type { Severity, Verdict } from './verdict.js';

const SEVERITIES: readonly Severity[] = ['error', 'warning', 'note'];

/**
 * Graver findings first: by severity, what is as found behind what is proposed; then which way the vessel goes, or what
 * keeps that from being told, which no margin measures; then by how far below nil the margin is; then the rest; and last
 * what is required or was tried of the whole, which mostly follows from a part that stands before it.
 */
export function byGravity(one: Weighed, other: Weighed): number {
  return (
    SEVERITIES.indexOf(one.severity) - SEVERITIES.indexOf(other.severity) ||
    Number(one.asFound ?? false) - Number(other.asFound ?? false) ||
    kindOf(one) - kindOf(other) ||
    (one.margin ?? 0) - (other.margin ?? 0)
  );
}

export type Weighed = Pick<Verdict, 'rule' | 'severity' | 'margin' | 'asFound'> &
  Partial<Pick<Verdict, 'explains'>>;

function kindOf({ rule, margin, explains = [] }: Weighed): number {
  if ([rule, ...explains.map(one => one.rule)].some(one => one.startsWith('rotation/'))) return 0;
  if (rule.startsWith('trace/') || rule.startsWith('trial/')) return 3;
  return margin !== undefined && margin < 0 ? 1 : 2;
}
