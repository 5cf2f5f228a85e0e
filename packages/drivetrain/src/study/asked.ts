import type { Verdict } from '../judge/verdict.js';
import type { Study, Vessel } from '../model/vessel.js';

/** What a study asks of its candidates: which verdicts count, and which of them must hold. */
export interface Asked {
  /** Whether a verdict is about the arrangement that is studied, or about the vessel as a whole. */
  readonly concerns: (verdict: Verdict) => boolean;
  /** Whether a candidate is ruled out where it fails. */
  readonly mustHold: (verdict: Verdict) => boolean;
  /** Whether it counts for nothing in this search. */
  readonly isSetAside: (verdict: Verdict) => boolean;
}

/**
 * What is an error must hold, and what answers a requirement, and what the study names. Other arrangements than the one
 * studied, and failures as found, are no candidate's fault.
 */
export function askedOf(
  { hold }: Study,
  arrangement: string,
  vessel: Vessel,
  setAside: readonly string[] = [],
): Asked {
  const named = new Set(hold.flatMap(one => one.value ?? []));
  const every = named.has('every check');
  const others = vessel.arrangements.map(one => one.path).filter(path => path !== arrangement);
  return {
    concerns: ({ subject, asFound }) =>
      !asFound && (subject === vessel.name || !others.some(path => isOf(subject, path))),
    mustHold: ({ severity, answers, rule }) =>
      !setAside.includes(rule) && (every || severity === 'error' || answers !== undefined || named.has(rule)),
    isSetAside: ({ rule }) => setAside.includes(rule),
  };
}

function isOf(subject: string, path: string): boolean {
  return subject === path || subject.startsWith(`${path}.`);
}

/** Verdicts with those that are told under them. */
export function unfolded(verdicts: readonly Verdict[]): Verdict[] {
  return verdicts.flatMap(one => [one, ...(one.folds ?? [])]);
}
