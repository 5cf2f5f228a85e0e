import type { Outcome, Severity, Verdict } from './verdict.js';

const SEVERITIES: readonly Severity[] = ['error', 'warning', 'note'];

/**
 * Graver findings first: by severity, what is as found behind what is proposed; then which way the vessel goes, or what
 * keeps that from being told, which no margin measures; then by how far below nil the margin is, or what is held against a
 * limit lies over it; then the rest; and last what is required or was tried of the whole, which mostly follows from a part that stands before it.
 */
export function byGravity(one: Weighed, other: Weighed): number {
  return (
    SEVERITIES.indexOf(one.severity) - SEVERITIES.indexOf(other.severity) ||
    Number(one.asFound ?? false) - Number(other.asFound ?? false) ||
    kindOf(one) - kindOf(other) ||
    (depthOf(one) ?? 0) - (depthOf(other) ?? 0)
  );
}

const OUTCOMES: readonly Outcome[] = ['fails', 'cannot tell', 'accepted', 'holds', 'does not apply'];

/** What asks for attention stands first, and of what fails or is accepted the graver; else in the order of the rules. */
export function worstFirst(verdicts: readonly Verdict[]): Verdict[] {
  return OUTCOMES.flatMap(outcome => {
    const all = verdicts.filter(one => one.outcome === outcome);
    return outcome === 'fails' || outcome === 'accepted' ? all.sort(byGravity) : all;
  });
}

export type Weighed = Pick<Verdict, 'rule' | 'severity' | 'margin' | 'asFound'> &
  Partial<Pick<Verdict, 'explains' | 'over' | 'balance'>> & {
    /** How far below nil it is, where that is worked out already. */
    readonly depth?: number;
  };

function kindOf(verdict: Weighed): number {
  const { rule, explains = [] } = verdict;
  if ([rule, ...explains.map(one => one.rule)].some(one => one.startsWith('rotation/'))) return 0;
  if (rule.startsWith('trace/') || rule.startsWith('trial/')) return 3;
  return (depthOf(verdict) ?? 0) < 0 ? 1 : 2;
}

/** Capacity over demand less one. A tolerance that is overstepped, as often as it may be, says nothing of the kind. */
export function depthOf({ margin, over, balance, depth }: Weighed): number | undefined {
  if (depth !== undefined || margin !== undefined) return depth ?? margin;
  return over !== undefined && balance && 'more' in balance ? 1 / over - 1 : undefined;
}
