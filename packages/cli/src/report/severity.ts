import { byGravity, depthOf, type Verdict, type Weighed } from '@tailshaft/drivetrain';
import type { Finding } from '@tailshaft/language';

/** Gravest first. What cannot be told is `information`: it is not a fault, and it has not been checked either. */
export const SEVERITIES = ['error', 'warning', 'note', 'information'] as const;
export type Severity = (typeof SEVERITIES)[number];

export function severityOf(finding: Finding): Severity {
  return finding.severity === 'hint' ? 'note' : finding.severity;
}

/** Whether a finding counts where this severity and all graver ones do. */
export function counts(finding: Finding, from: Severity): boolean {
  return SEVERITIES.indexOf(severityOf(finding)) <= SEVERITIES.indexOf(from);
}

/** What a finding is ordered by. The finding itself would keep its whole vessel in memory. */
export interface Rank {
  readonly severity: Severity;
  readonly verdict?: Weighed;
}

export function rankOf(finding: Finding): Rank {
  const { verdict } = finding;
  return { severity: severityOf(finding), ...(verdict ? { verdict: weightOf(verdict) } : {}) };
}

export function weightOf(verdict: Verdict): Weighed {
  const { rule, severity, asFound, explains } = verdict;
  const depth = depthOf(verdict);
  return {
    rule,
    severity,
    explains,
    ...(depth === undefined ? {} : { depth }),
    ...(asFound === undefined ? {} : { asFound }),
  };
}

/** Gravest first. Texts that cannot be read come before all else of their severity: what they hide is not judged. */
export function gravestFirst(one: Rank, other: Rank): number {
  return (
    SEVERITIES.indexOf(one.severity) - SEVERITIES.indexOf(other.severity) ||
    Number(one.verdict !== undefined) - Number(other.verdict !== undefined) ||
    (one.verdict && other.verdict ? byGravity(one.verdict, other.verdict) : 0)
  );
}
