import { count } from '@tailshaft/mechanics';
import type { Verdict } from './verdict.js';

/** How checks stand, in numbers. Every count that anybody is shown is one of these, of verdicts, by this function. */
export interface Counts {
  readonly held: number;
  readonly failed: number;
  readonly unknown: number;
  readonly accepted: number;
  /** Failures of what is there already, before anything is changed: told apart, not counted as failed. */
  readonly asFound: number;
}

/** Nothing of what is as found is in the other numbers, unless nothing else is asked about. */
export function countsOf(verdicts: readonly Verdict[]): Counts {
  const proposed = verdicts.filter(one => !one.asFound);
  const counted = proposed.length > 0 ? proposed : verdicts;
  const of = (outcome: Verdict['outcome'], some = counted) =>
    some.filter(one => one.outcome === outcome).length;
  return {
    held: of('holds'),
    failed: of('fails', proposed),
    unknown: of('cannot tell'),
    accepted: of('accepted'),
    asFound: of(
      'fails',
      verdicts.filter(one => one.asFound),
    ),
  };
}

/** `12 hold, 1 fails, 2 cannot tell`. */
export function countWords({ held, failed, unknown, accepted, asFound }: Counts): string {
  const words = [count(held, 'holds', 'hold'), count(failed, 'fails', 'fail'), `${unknown} cannot tell`];
  if (accepted > 0) words.push(`${accepted} accepted`);
  if (asFound > 0) words.push(`${count(asFound, 'fails', 'fail')} as found`);
  return words.join(', ');
}
