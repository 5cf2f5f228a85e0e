import { checksOf, concluded, saidBy } from '../judge/judge.js';
import { leftOpen } from '../judge/left-open.js';
import type { Verdict } from '../judge/verdict.js';
import type { Catalogue } from '../model/catalogue.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import type { Rule } from '../rules/rule.js';

/** A vessel as it was judged. */
export interface Judgement {
  readonly vessel: Vessel;
  readonly catalogue: Catalogue;
  readonly today: string;
}

/** The line that a verdict is about, or whose part it is about. */
export function lineOf({ subject }: Verdict, { arrangements }: Vessel): ShaftLine | undefined {
  return arrangements
    .flatMap(one => one.lines)
    .find(one => subject === one.path || subject.startsWith(`${one.path}.`));
}

/** What became of a failing check. */
export interface Tried {
  /** It holds, waits for no more than it waited for before, or finds nothing any more. */
  readonly settles: boolean;
  /** The worst that it then says; nothing where it speaks of mistakes only. */
  readonly verdict?: Verdict;
}

/** The margin that a trial leaves, for a title; of what is open there is none. */
export function marginOf({ verdict }: Tried): number | undefined {
  return verdict?.outcome === 'holds' ? verdict.margin : undefined;
}

/** What these rules say of the same subject, with the vessel as it would be. */
export function sameCheck(
  verdict: Verdict,
  vessel: Vessel,
  { catalogue, today }: Judgement,
  rules: readonly Rule[],
): Tried {
  const { subject } = verdict;
  const line = lineOf(verdict, vessel);
  // What a rule says of other lines is not asked.
  const checks = checksOf(vessel, catalogue, today, rules).filter(
    ({ rule, at }) => rule.scope !== 'line' || !line || at.subject === line.path,
  );
  // No figure is sought that would put right what is only tried. Of a line in its modes each mode is judged.
  const all = checks.flatMap(({ at, ...check }) =>
    saidBy({ ...check, at: { subject: at.subject, place: at.place } }),
  );
  const said = concluded(all, vessel, today, rules).filter(one => one.subject === subject);
  const worst =
    said.find(one => one.outcome === 'fails') ?? said.find(one => one.outcome !== 'holds') ?? said[0];
  if (!worst) return { settles: true };
  const settles = said.every(one => one.outcome === 'holds' || (isOpen(one) && leftOpen(verdict, one)));
  return { settles, verdict: worst };
}

const isOpen = ({ outcome }: Verdict) => outcome === 'cannot tell';
