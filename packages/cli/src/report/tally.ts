import { countsOf, type Verdict } from '@tailshaft/drivetrain';
import type { CheckedSpec } from '../specs/specs.js';
import { isKnown, type Judged } from './judged.js';
import { severityOf } from './severity.js';

/** What a check came to, in numbers. */
export interface Tally {
  files: number;
  vessels: number;
  errors: number;
  warnings: number;
  notes: number;
  /** Checks that wait for data. */
  notChecked: number;
  holds: number;
  /** Of those that hold, the ones on catalogue entries: the line of a vessel does not count them. */
  holdsOnEntries: number;
  /** Checks that fail; several may be one finding. */
  fails: number;
  accepted: number;
  /** Failures of what was found aboard: in no other of these numbers, as nothing else of it is. */
  asFound: number;
  /** Findings of the baseline: told as known, and in no other of these numbers but `fails`. */
  known: number;
  /** The verdict that holds by least. */
  smallest?: Pick<Verdict, 'rule' | 'subject' | 'margin'>;
}

export function emptyTally(): Tally {
  return {
    files: 0,
    vessels: 0,
    errors: 0,
    warnings: 0,
    notes: 0,
    notChecked: 0,
    holds: 0,
    holdsOnEntries: 0,
    fails: 0,
    accepted: 0,
    asFound: 0,
    known: 0,
  };
}

export function addTo(tally: Tally, judged: Judged): void {
  const { spec } = judged;
  tally.files += 1;
  tally.vessels += spec.check.vessels.length;
  for (const finding of spec.findings) {
    if (finding.verdict?.asFound) continue;
    const severity = severityOf(finding);
    if (isKnown(judged, finding)) {
      if (severity !== 'information') tally.known += 1;
      continue;
    }
    if (severity === 'error') tally.errors += 1;
    else if (severity === 'warning') tally.warnings += 1;
    else if (severity === 'note') tally.notes += 1;
  }
  const verdicts = verdictsOf(spec);
  const counts = countsOf(verdicts);
  tally.accepted += counts.accepted;
  tally.notChecked += counts.unknown;
  tally.holds += counts.held;
  tally.holdsOnEntries += countsOf(spec.check.entries.flatMap(one => one.verdicts)).held;
  tally.fails += counts.failed;
  tally.asFound += counts.asFound;
  for (const verdict of verdicts) {
    if (verdict.outcome !== 'holds' || verdict.asFound) continue;
    const { margin, rule, subject } = verdict;
    if (margin !== undefined && margin < (tally.smallest?.margin ?? Number.POSITIVE_INFINITY)) {
      tally.smallest = { margin, rule, subject };
    }
  }
}

/** Adds what other specs came to, which stand behind those that are counted already. */
export function addAll(tally: Tally, { smallest, ...numbers }: Tally): void {
  for (const [name, number] of Object.entries(numbers) as [keyof typeof numbers, number][])
    tally[name] += number;
  const least = tally.smallest?.margin ?? Number.POSITIVE_INFINITY;
  if (smallest?.margin !== undefined && smallest.margin < least) tally.smallest = smallest;
}

/** Every verdict of a file, on its vessels and on its entries. */
export function verdictsOf(spec: CheckedSpec): Verdict[] {
  return [...spec.check.vessels, ...spec.check.entries].flatMap(one => one.verdicts);
}
