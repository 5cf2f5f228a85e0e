import { percent } from '@tailshaft/mechanics';
import { named } from '@tailshaft/vocabulary';
import type { ModelEdit, Route, ValueChange } from '../judge/route.js';
import type { Verdict } from '../judge/verdict.js';
import type { Catalogue } from '../model/catalogue.js';
import type { Engine } from '../model/engine.js';
import { type Part, statementOf } from '../model/part.js';
import type { ShaftLine } from '../model/vessel.js';
import { findRule } from '../rules/index.js';
import type { Rule } from '../rules/rule.js';
import { type Judgement, lineOf, marginOf, sameCheck } from './judgement.js';
import { otherStated } from './other-stated.js';
import type { OtherStated } from './trial.js';
import { twinsOf } from './twins.js';
import { vesselWith } from './with-fact.js';

/**
 * A bought part is what it is. Where no other one of the catalogue settles a finding, this says which one would: a part like
 * the one in the line, but for what its sheet must state. It is declared as a part to be found, with its source open.
 */
export function wantedParts(verdict: Verdict, judgement: Judgement): Route[] {
  const rule = findRule(verdict.rule);
  const line = lineOf(verdict, judgement.vessel);
  if (!rule || !line || verdict.outcome !== 'fails') return [];
  return line.chain.flatMap(part => {
    if (!part.entry || !isFitted(part) || twinsOf(part, line).some(one => isBefore(one, part, line)))
      return [];
    return otherStated(part, line, judgement.vessel, (others, with_ = []) =>
      sameCheck(verdict, vesselWith(judgement.vessel, line, others), judgement, [
        rule,
        ...with_.flatMap(id => findRule(id) ?? []),
      ]),
    ).map(found => routeFor(found, part, line, rule, judgement));
  });
}

/** Named in this arrangement, or kept as another one fitted it. */
function isFitted(part: Part): boolean {
  const stated = statementOf(part);
  if (stated === 'retained') return part.keptFrom?.part.nameOrigin !== undefined;
  return stated !== 'modified' && part.nameOrigin !== undefined;
}

function routeFor(
  { says, settled, changes, placed }: OtherStated,
  part: Part,
  line: ShaftLine,
  rule: Rule,
  judgement: Judgement,
): Route {
  const entry = part.entry!;
  const name = freeName(entry.name, judgement.catalogue);
  const left = marginOf(settled);
  const margin = left === undefined ? '' : ` (margin ${percent(left)})`;
  const fitted = [part, ...alike(part, line, rule, judgement)];
  return {
    title: `Fit ${part.role === 'engine' ? 'an' : 'a'} ${part.role} like ${entry.name} with ${says}${margin}: to be found, and its data sheet must confirm it`,
    kind: 'changes the design',
    edits: [
      {
        do: 'declare like',
        before: judgement.vessel.origin,
        entry: entry.origin,
        name,
        title: `to be found: like ${entry.name}, with ${says}`,
        changes,
      },
      ...fitted.flatMap(one => fit(one, name, placed)),
    ],
  };
}

/** Its twins in the line, and the same part in the other line of a pair, where the same check fails for it. */
function alike(part: Part, line: ShaftLine, rule: Rule, judgement: Judgement): Part[] {
  const arrangement = judgement.vessel.arrangements.find(one => one.lines.includes(line));
  const twins = twinsOf(part, line).filter(isFitted);
  const inOthers = (arrangement?.lines ?? []).flatMap(other => {
    if (other === line) return [];
    const same = other.chain.filter(
      one => one.role === part.role && one.entry?.name === part.entry!.name && isFitted(one),
    );
    const fails =
      same.length > 0 &&
      sameCheck({ subject: other.path } as Verdict, judgement.vessel, judgement, [rule]).verdict?.outcome ===
        'fails';
    return fails ? same : [];
  });
  return [...twins, ...inOthers];
}

function isBefore(one: Part, other: Part, { chain }: ShaftLine): boolean {
  return chain.indexOf(one) < chain.indexOf(other);
}

function fit(part: Part, name: string, rating: string | undefined): ModelEdit[] {
  const kept = statementOf(part) === 'retained' ? part.keptFrom!.part : part;
  const at = (kept as Engine).ratedAt;
  const changes: ValueChange[] = [
    { at: kept.nameOrigin!, value: named(name) },
    ...(rating !== undefined && at ? [{ at: at.origin, value: named(rating) }] : []),
  ];
  return kept === part
    ? changes.map(one => ({ do: 'replace', ...one }))
    : [{ do: 'fit anew', at: part.origin, like: kept.origin, changes }];
}

function freeName(name: string, catalogue: Catalogue): string {
  const taken = new Set(
    Object.values(catalogue).flatMap((entries: readonly { readonly name: string }[]) =>
      entries.map(one => one.name),
    ),
  );
  const wanted = `${name}-wanted`;
  if (!taken.has(wanted)) return wanted;
  let nr = 2;
  while (taken.has(`${wanted}-${nr}`)) nr += 1;
  return `${wanted}-${nr}`;
}
