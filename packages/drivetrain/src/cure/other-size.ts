import type { Value } from '@tailshaft/mechanics';
import { percent } from '../analysis/telling.js';
import { judgeVessel } from '../judge/judge.js';
import type { ModelEdit, Route } from '../judge/route.js';
import type { Verdict } from '../judge/verdict.js';
import { declareFact, homeOfFact } from '../model/declared-fact.js';
import type { Fact } from '../model/fact.js';
import type { Part } from '../model/part.js';
import type { ShaftLine } from '../model/vessel.js';
import { findRule } from '../rules/index.js';
import { type Judgement, lineOf } from './judgement.js';
import { KNOBS, type Knob } from './knobs.js';
import { type Size, sizeBeyond } from './sizes.js';
import { replacementFor } from './statement.js';
import { vesselWith } from './with-fact.js';

/** A size of a part that somebody chose, and could choose otherwise. */
interface Chosen {
  readonly part: Part;
  readonly knob: Knob;
  readonly fact: Fact<Value>;
}

/**
 * Other sizes that settle a failing verdict: for each size of the line that a designer chooses, the smallest change, in steps
 * that it is made in, with which the same check holds. Found by judging the vessel with that size.
 */
export function otherSizes(verdict: Verdict, judgement: Judgement): Route[] {
  const rule = findRule(verdict.rule);
  const line = lineOf(verdict, judgement.vessel);
  if (!rule || !line || verdict.outcome !== 'fails') return [];
  const outcome = (fact: Fact<unknown>, value: Value): Verdict | undefined => {
    const home = homeOfFact(fact);
    const other = home
      ? declareFact({ ...fact, value, written: value.written ?? '' }, home)
      : { ...fact, value };
    const vessel = vesselWith(judgement.vessel, line, fact, other);
    const said = judgeVessel(vessel, judgement.catalogue, judgement.today, [rule]).filter(
      one => one.rule === verdict.rule && one.subject === verdict.subject,
    );
    return said.find(one => one.outcome !== 'holds') ?? said[0];
  };
  return chosenIn(line).flatMap(chosen => {
    const found = leastChange(chosen, value => outcome(chosen.fact, value));
    return found ? [routeFor(chosen, found.size, found.verdict)] : [];
  });
}

function chosenIn({ chain }: ShaftLine): Chosen[] {
  return chain.flatMap(part =>
    (KNOBS[part.role] ?? []).flatMap(knob => factsOf(part, knob).map(fact => ({ part, knob, fact }))),
  );
}

/** The facts of that name, of the part and of the blocks inside it. */
function factsOf(part: Part, { of, field }: Knob): Fact<Value>[] {
  const holders: object[] = of === part.role ? [part] : [];
  const lists: Readonly<Record<string, string>> = {
    bearing: 'bearings',
    'collar bearing': 'bearings',
    key: 'keys',
    section: 'sections',
  };
  const list = lists[of] && (part as unknown as Record<string, unknown>)[lists[of]];
  if (Array.isArray(list)) holders.push(...list);
  return holders.flatMap(holder => {
    const fact = (holder as Record<string, Fact<Value> | undefined>)[field];
    return fact?.value && 'si' in fact.value ? [fact] : [];
  });
}

/** How far a size is changed at most, either way. */
const REACH = 2.5;
const STRIDES = 12;

/** The smallest change of a size, up or down, with which the check holds. */
function leastChange(
  { fact, knob }: Chosen,
  outcome: (value: Value) => Verdict | undefined,
): { readonly size: Size; readonly verdict: Verdict } | undefined {
  const now = fact.value!;
  if (!(now.si > 0)) return undefined;
  const found = ([1, -1] as const).flatMap(way => {
    let short = now.si;
    for (let stride = 1; stride <= STRIDES; stride += 1) {
      const size = sizeBeyond(now, now.si * REACH ** ((way * stride) / STRIDES), knob);
      if (!size || size.value.si === short) continue;
      if (outcome(size.value)?.outcome !== 'holds') short = size.value.si;
      else return [nearest(now, short, size, knob, outcome)];
    }
    return [];
  });
  const best = found.sort((a, b) => distance(a.value, now) - distance(b.value, now))[0];
  const verdict = best && outcome(best.value);
  return best && verdict?.outcome === 'holds' ? { size: best, verdict } : undefined;
}

function distance(one: Value, now: Value): number {
  return Math.abs(Math.log(one.si / now.si));
}

/** Between a size that does not do and one that does: the one nearest to the size now that does. */
function nearest(
  now: Value,
  short: number,
  enough: Size,
  knob: Knob,
  outcome: (value: Value) => Verdict | undefined,
): Size {
  let low = short;
  let best = enough;
  for (let step = 0; step < 8; step += 1) {
    const middle = sizeBeyond(now, (low + best.value.si) / 2, knob);
    if (!middle || middle.value.si === best.value.si || middle.value.si === low) break;
    if (outcome(middle.value)?.outcome === 'holds') best = middle;
    else low = middle.value.si;
  }
  return best;
}

function routeFor({ part, knob, fact }: Chosen, { written }: Size, then: Verdict): Route {
  const home = homeOfFact(fact);
  const margin = then.margin === undefined ? 'it holds' : `margin ${percent(then.margin)}`;
  const follows = knob.follows ? `; ${knob.follows}` : '';
  return {
    title: `Make the ${home?.property ?? knob.field} of the ${knob.of} ${written} instead of ${fact.written}: ${margin}${follows}`,
    edits: editFor(part, fact, written),
    kind: 'changes the design',
  };
}

/** A kept part of another size is another part. */
function editFor(part: Part, fact: Fact<Value>, written: string): ModelEdit[] {
  if (part.change !== 'retained' && part.change !== 'modified')
    return [{ do: 'replace', at: fact.origin, text: written }];
  const text = replacementFor(part, fact, written);
  return text ? [{ do: 'replace', at: part.origin, text }] : [];
}
