import { uncoveredIn } from '../analysis/uncovered.js';
import type { Catalogue } from '../model/catalogue.js';
import type { Gathered } from '../model/gathered.js';
import { recorded, touching } from '../model/reads.js';
import type { Vessel } from '../model/vessel.js';
import { RULES } from '../rules/index.js';
import type { AcceptancePolicy } from './acceptance-policy.js';
import { changedFacts } from './changed-facts.js';
import { type Check, checksOf, concluded, saidBy } from './judge.js';
import { type Outline, outlineOf, whenLookedAt } from './put-off.js';
import type { Resting } from './settle.js';
import type { Verdict } from './verdict.js';

/** What a vessel was judged by: whatever is other makes every verdict another one. */
export interface JudgedBy {
  readonly catalogue: Catalogue;
  readonly today: string;
  readonly policy?: AcceptancePolicy;
}

/** A judged vessel with what is needed to judge it again when some of its facts are other. */
export interface Judgement {
  readonly vessel: Vessel;
  readonly by: JudgedBy;
  readonly verdicts: readonly Verdict[];
  readonly checks: readonly Kept[];
}

/** What one check looked at, and what it came to where it may be put off. */
interface Kept {
  readonly touched: Gathered<number>;
  /** Undefined where anything was said that others go by, or that somebody is shown. Worked out when it is asked for. */
  readonly outlines: () => readonly Outline[] | undefined;
}

/**
 * The verdicts on a vessel, as `judgeVessel` gives them. A check that looked at nothing that is other than in the judgement
 * before, and of which everything held, holds again: it is run when somebody looks at what it says. All others are run.
 */
export function judgeAgain(vessel: Vessel, by: JudgedBy, before?: Judgement): Judgement {
  const { catalogue, today, policy } = by;
  const all = checksOf(vessel, catalogue, today, RULES);
  const usual = !goesByAll(vessel);
  const changed = usual && before && isSame(before.by, by) ? changedFacts(before.vessel, vessel) : undefined;
  const isOther = changed && isOtherIn(changed);
  const kept = all.map((check, at) => (isOther ? stillHolds(check, before!.checks[at], isOther) : undefined));
  const checks: Kept[] = [];
  const said = all.map((check, at) => {
    const old = kept[at];
    if (old) {
      checks.push(old);
      return putOff(check, old);
    }
    const { value, touched } = touching(() => saidBy(check));
    const verdicts = value.map(one => one.verdict);
    checks.push({ touched, outlines: once(() => outlinesOf(verdicts)) });
    return value;
  });
  // What one verdict does to others goes by the facts that each rests on: those of a check that was put off are not known.
  const spoken = kept.some(Boolean) && isDisputed(said) ? all.map(saidBy) : said;
  return { vessel, by, checks, verdicts: concluded(spoken.flat(), vessel, today, RULES, policy) };
}

function isSame(one: JudgedBy, other: JudgedBy): boolean {
  return one.catalogue === other.catalogue && one.today === other.today && one.policy === other.policy;
}

/** Whether any of these facts was looked at. Checks share most of what they looked at, so that it is asked once for all. */
function isOtherIn(changed: ReadonlySet<number>): (touched: Gathered<number>) => boolean {
  const known = new Map<Gathered<number>, boolean>();
  return touched => touched.has(one => changed.has(one), known);
}

/** Units are judged by lists of the whole text, which are others with every key. */
function stillHolds(
  { rule }: Check,
  kept: Kept | undefined,
  isOther: (touched: Gathered<number>) => boolean,
): Kept | undefined {
  if (!kept || rule.scope === 'units' || isOther(kept.touched)) return undefined;
  return kept.outlines() && kept;
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function putOff(check: Check, { outlines }: Kept): Resting[] {
  let said: readonly Resting[] | undefined;
  return outlines()!.map((outline, at) => {
    const say = () => {
      said ??= saidBy(check);
      return said[at]!.verdict;
    };
    return { rule: check.rule, reads: NOTHING_READ, verdict: whenLookedAt(outline, say) };
  });
}

const NOTHING_READ = recorded(() => undefined).reads;

/** Undefined where anything is said that others go by, or that somebody is shown: findings, and answers to requirements. */
function outlinesOf(verdicts: readonly Verdict[]): readonly Outline[] | undefined {
  const holds = verdicts.every(
    ({ outcome, answers }) => (outcome === 'holds' || outcome === 'does not apply') && answers === undefined,
  );
  return holds ? verdicts.map(outlineOf) : undefined;
}

/** Whether a practice weighs verdicts otherwise, or the checks do not cover a line: that goes by what each rests on. */
function goesByAll({ arrangements, practice }: Vessel): boolean {
  return (
    practice !== undefined ||
    arrangements.some(({ lines }) => lines.some(line => line.modes || uncoveredIn(line).length > 0))
  );
}

/** Whether facts contradict each other, or are outweighed. */
function isDisputed(said: readonly (readonly Resting[])[]): boolean {
  return said.some(all =>
    all.some(
      ({ verdict }) =>
        verdict.outcome === 'fails' && (verdict.disputes !== undefined || verdict.outweighs !== undefined),
    ),
  );
}
