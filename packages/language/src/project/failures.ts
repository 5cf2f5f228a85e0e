import { byGravity, type Verdict } from '@tailshaft/drivetrain';
import type { Finding } from './finding.js';
import type { JudgedVessel } from './project.js';

/** One cause of failure in words, with how many more checks fail for it. */
export interface Failure {
  readonly verdict: Verdict;
  readonly message: string;
  readonly others: number;
}

/** What fails of a vessel, or of the catalogue entries of its file, each cause once and the gravest first. */
export function failuresOf(findings: readonly Finding[], judged: JudgedVessel): Failure[] {
  return findings
    .flatMap(({ verdict, vessel, message, folded = [] }): Failure[] =>
      verdict?.outcome === 'fails' && (!vessel || vessel.vessel === judged.vessel)
        ? [{ verdict, message, others: folded.length }]
        : [],
    )
    .sort((one, other) => byGravity(one.verdict, other.verdict));
}
