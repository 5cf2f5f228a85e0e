import { checksOf, concluded } from '../judge/judge.js';
import { settled } from '../judge/settle.js';
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

/** The worst that these rules say of the same subject, with the vessel as it would be. */
export function sameCheck(
  verdict: Verdict,
  vessel: Vessel,
  { catalogue, today }: Judgement,
  rules: readonly Rule[],
): Verdict | undefined {
  const { subject } = verdict;
  const line = lineOf(verdict, vessel);
  // What a rule says of other lines is not asked.
  const checks = checksOf(vessel, catalogue, today, rules).filter(
    ({ rule, at }) => rule.scope !== 'line' || !line || at.subject === line.path,
  );
  // No figure is sought that would put right what is only tried.
  const all = checks.flatMap(({ rule, at: { subject: of, place }, run }) =>
    settled(rule, { subject: of, place }, run),
  );
  const said = concluded(all, vessel, today, rules).filter(one => one.subject === subject);
  return said.find(one => one.outcome !== 'holds') ?? said[0];
}
