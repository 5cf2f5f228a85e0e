import type { Catalogue } from '../model/catalogue.js';
import { recorded } from '../model/reads.js';
import type { Vessel } from '../model/vessel.js';
import { RULES } from '../rules/index.js';
import type { AcceptancePolicy } from './acceptance-policy.js';
import { isDisputed, isUncovered } from './all-together.js';
import { type Check, checksOf, concluded, judgeVessel, saidBy } from './judge.js';
import type { Resting } from './settle.js';
import type { Verdict } from './verdict.js';

/** A vessel as it stands, beside which others are judged that differ from it in some arrangements only. */
export interface Standing {
  readonly vessel: Vessel;
  readonly catalogue: Catalogue;
  readonly today: string;
  readonly policy?: AcceptancePolicy;
}

type Said = ReadonlyMap<string, readonly Resting[]>;

/** What was said of each arrangement as it stands, once somebody asked. */
const STANDING = new WeakMap<Vessel, Map<string, Said>>();

/**
 * The verdicts on a vessel of which the named arrangements are as they stand, and nothing that they rest on is another: what
 * was said of these is said of it too. No figure is worked out that would put a failure right.
 */
export function judgeBeside(
  vessel: Vessel,
  { vessel: before, catalogue, today, policy }: Standing,
  same: ReadonlySet<string>,
): Verdict[] {
  const whole = () => judgeVessel(vessel, catalogue, today, RULES, policy);
  // What the checks do not cover, and what contradicts, is told by all facts together.
  if (isUncovered(vessel) || isUncovered(before)) return whole();
  const all: Resting[] = [];
  const count = new Map<string, number>();
  for (const check of plainChecks(vessel, catalogue, today)) {
    const name = arrangementOf(check, vessel);
    const key = keyOf(check, count);
    const had =
      name !== undefined && same.has(name) ? saidOf(before, name, catalogue, today).get(key) : undefined;
    const said = had ?? saidBy(check);
    if (isDisputed(said)) return whole();
    all.push(...said);
  }
  return concluded(all, vessel, today, RULES, policy);
}

function saidOf(vessel: Vessel, name: string, catalogue: Catalogue, today: string): Said {
  const known = STANDING.get(vessel) ?? new Map<string, Said>();
  STANDING.set(vessel, known);
  const had = known.get(name);
  if (had) return had;
  const said = new Map<string, readonly Resting[]>();
  const count = new Map<string, number>();
  for (const check of plainChecks(vessel, catalogue, today)) {
    const key = keyOf(check, count);
    if (arrangementOf(check, vessel) === name) said.set(key, saidBy(check).map(withoutReads));
  }
  known.set(name, said);
  return said;
}

function plainChecks(vessel: Vessel, catalogue: Catalogue, today: string): Check[] {
  return checksOf(vessel, catalogue, today, RULES).map(({ at, ...check }) => ({
    ...check,
    at: { subject: at.subject, place: at.place },
  }));
}

/** The arrangement that a check is of, or of whose line. */
function arrangementOf({ rule, at }: Check, vessel: Vessel): string | undefined {
  if (rule.scope !== 'line' && rule.scope !== 'arrangement') return undefined;
  return vessel.arrangements.find(one => at.subject === one.name || at.subject.startsWith(`${one.name}.`))
    ?.name;
}

/** The same for the same check of two vessels; of several of one rule and subject, in their order. */
function keyOf({ rule, at }: Check, count: Map<string, number>): string {
  const key = `${rule.id} ${at.subject}`;
  const nr = (count.get(key) ?? 0) + 1;
  count.set(key, nr);
  return `${key} ${nr}`;
}

/** Facts of the vessel as it stands are none of another: only a contradiction would ask for them. */
function withoutReads(resting: Resting): Resting {
  return { ...resting, reads: NOTHING_READ };
}

const NOTHING_READ = recorded(() => undefined).reads;
