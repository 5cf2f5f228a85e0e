import { listed } from '@tailshaft/mechanics';
import type { Fact } from '../model/fact.js';
import { isJudged, missingFact, type Resting, wordsOf } from './settle.js';
import type { Severity, Verdict } from './verdict.js';

/** The facts that contradict each other, as the failing verdicts say. */
export function disputedBy(all: readonly Resting[]): ReadonlySet<Fact<unknown>> {
  return new Set(all.flatMap(({ verdict }) => disputesOf(verdict)));
}

/** The facts that what happened to their part outweighs, as the failing verdicts say. */
function outweighedBy(all: readonly Resting[]): ReadonlySet<Fact<unknown>> {
  return new Set(all.flatMap(({ verdict }) => outweighsOf(verdict)));
}

/** A verdict as it stands while some of the facts that it rests on contradict others: it cannot be told. */
export function whileDisputed(
  { verdict, reads, rule }: Resting,
  disputed: ReadonlySet<Fact<unknown>>,
): Verdict {
  if (disputed.size === 0 || verdict.disputes || !isJudged(verdict)) return verdict;
  // What is said of the evidence or the words stands whether or not they are true.
  if (rule.judgesEvidence) return verdict;
  const at = [...reads.facts].filter(one => disputed.has(one));
  if (at.length === 0) return verdict;
  return {
    ...verdict,
    outcome: 'cannot tell',
    message: `${verdict.message} This rests on ${listed(at.map(wordsOf))}, which another statement contradicts: no verdict until that is settled.`,
    missing: at.map(missingFact),
    disputed: at,
  };
}

/** What would hold on the sizes of a part to which something happened cannot be told; what fails fails all the more. */
function whileOutweighed(
  verdict: Verdict,
  { reads, rule }: Resting,
  outweighed: ReadonlySet<Fact<unknown>>,
): Verdict {
  if (outweighed.size === 0 || verdict.outcome !== 'holds' || rule.judgesEvidence) return verdict;
  const at = [...reads.facts].filter(one => outweighed.has(one));
  if (at.length === 0) return verdict;
  return {
    ...verdict,
    outcome: 'cannot tell',
    message: `${verdict.message} This applies to a sound part: ${listed(at.map(wordsOf))} was not made good after what happened to it.`,
    missing: at.map(missingFact),
  };
}

/** What each of some verdicts comes to while facts contradict, or are outweighed by what happened to their part. */
export function standingOf(all: readonly Resting[]): (one: Resting) => Verdict {
  const [disputed, outweighed] = [disputedBy(all), outweighedBy(all)];
  return one => whileOutweighed(whileDisputed(one, disputed), one, outweighed);
}

/**
 * Every verdict while facts contradict, or are outweighed by what happened to their part: what waits for it is told under
 * the failure that says so, once.
 */
export function underTheirDispute(all: readonly Resting[], disputed: ReadonlySet<Fact<unknown>>): Verdict[] {
  const outweighed = outweighedBy(all);
  const told = all.map(one => whileOutweighed(whileDisputed(one, disputed), one, outweighed));
  return told.map(verdict => {
    const facts = new Set([...disputesOf(verdict), ...outweighsOf(verdict)]);
    if (facts.size === 0) return verdict;
    const waiting = all.filter(
      (one, at) => told[at] !== one.verdict && [...one.reads.facts].some(fact => facts.has(fact)),
    );
    const explains = waiting
      .map(one => ({ rule: one.verdict.rule, subject: one.verdict.subject }))
      .filter(({ rule, subject }) => rule !== verdict.rule || subject !== verdict.subject);
    const severity = gravest([verdict, ...waiting.map(one => one.verdict)]);
    return { ...verdict, severity, explains: [...verdict.explains, ...explains] };
  });
}

const WEIGHTS: readonly Severity[] = ['note', 'warning', 'error'];

/**
 * A contradiction weighs what the gravest failure weighs that it keeps from being told: nobody is rid of a failure by
 * writing another figure beside the one that it rests on.
 */
function gravest(verdicts: readonly Verdict[]): Severity {
  const failing = verdicts.filter(one => one.outcome === 'fails').map(one => WEIGHTS.indexOf(one.severity));
  return WEIGHTS[Math.max(...failing)]!;
}

function disputesOf({ outcome, disputes = [] }: Verdict): readonly Fact<unknown>[] {
  return outcome === 'fails' ? disputes : [];
}

function outweighsOf({ outcome, outweighs = [] }: Verdict): readonly Fact<unknown>[] {
  return outcome === 'fails' ? outweighs : [];
}
