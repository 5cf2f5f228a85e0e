import { uncoveredIn } from '../analysis/uncovered.js';
import type { Catalogue } from '../model/catalogue.js';
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
  readonly touched: ReadonlySet<number>;
  readonly outlines: readonly Outline[] | undefined;
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
  const kept = all.map((check, at) => (changed ? stillHolds(check, before!.checks[at], changed) : undefined));
  const checks: Kept[] = [];
  const said = all.map((check, at) => {
    const old = kept[at];
    if (old) {
      checks.push(old);
      return putOff(check, old);
    }
    const { value, touched } = touching(() => saidBy(check));
    checks.push({ touched, outlines: outlinesOf(value) });
    return value;
  });
  // What one verdict does to others goes by the facts that each rests on: those of a check that was put off are not known.
  const spoken = kept.some(Boolean) && isDisputed(said) ? all.map(saidBy) : said;
  return { vessel, by, checks, verdicts: concluded(spoken.flat(), vessel, today, RULES, policy) };
}

function isSame(one: JudgedBy, other: JudgedBy): boolean {
  return one.catalogue === other.catalogue && one.today === other.today && one.policy === other.policy;
}

/** Units are judged by lists of the whole text, which are others with every key. */
function stillHolds({ rule }: Check, kept: Kept | undefined, changed: ReadonlySet<number>): Kept | undefined {
  if (!kept?.outlines || rule.scope === 'units') return undefined;
  for (const fact of changed) if (kept.touched.has(fact)) return undefined;
  return kept;
}

function putOff(check: Check, { outlines }: Kept): Resting[] {
  let said: readonly Resting[] | undefined;
  return outlines!.map((outline, at) => {
    const say = () => {
      said ??= saidBy(check);
      return said[at]!.verdict;
    };
    return { rule: check.rule, reads: NOTHING_READ, verdict: whenLookedAt(outline, say) };
  });
}

const NOTHING_READ = recorded(() => undefined).reads;

/** Undefined where anything is said that others go by, or that somebody is shown: findings, and answers to requirements. */
function outlinesOf(said: readonly Resting[]): readonly Outline[] | undefined {
  const holds = said.every(
    ({ verdict }) =>
      (verdict.outcome === 'holds' || verdict.outcome === 'does not apply') && verdict.answers === undefined,
  );
  if (!holds) return undefined;
  return said.map(({ verdict }) => outlineOf(verdict));
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
