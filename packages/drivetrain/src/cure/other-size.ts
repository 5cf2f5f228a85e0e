import type { Value } from '@tailshaft/mechanics';
import { percent } from '@tailshaft/mechanics';
import { amount } from '@tailshaft/vocabulary';
import type { Route } from '../judge/route.js';
import type { Verdict } from '../judge/verdict.js';
import { homeOfFact } from '../model/declared-fact.js';
import type { Fact } from '../model/fact.js';
import type { Part } from '../model/part.js';
import type { ShaftLine } from '../model/vessel.js';
import { findRule } from '../rules/index.js';
import { chosenOf, isOfEntry } from './chosen.js';
import { type Judgement, lineOf, marginOf, sameCheck, type Tried } from './judgement.js';
import type { Knob } from './knobs.js';
import { leastChange, type Reach } from './least-change.js';
import { rewrite } from './rewrite.js';
import type { Size } from './sizes.js';
import { quantityAs } from './swap.js';
import { thickerThroughout } from './thicker-throughout.js';
import { vesselWith } from './with-fact.js';

/** A size of a part that somebody chose, and could choose otherwise. */
interface Chosen {
  readonly part: Part;
  readonly knob: Knob;
  readonly fact: Fact<Value>;
}

interface Found {
  readonly route: Route;
  /** 1 where other sizes follow from it. */
  readonly follows: 0 | 1;
  /** How far the size is changed: the logarithm of its share. */
  readonly change: number;
}

/**
 * Other sizes that settle a failing verdict: for each size of the line that a designer chooses, the smallest change, in steps
 * that it is made in, with which the same check holds. Found by judging the vessel with that size.
 */
export function otherSizes(verdict: Verdict, judgement: Judgement): Route[] {
  const rule = findRule(verdict.rule);
  const line = lineOf(verdict, judgement.vessel);
  // No size turns a shaft the other way.
  if (!rule || !line || verdict.outcome !== 'fails' || verdict.rule.startsWith('rotation/')) return [];
  // Of two figures that contradict each other only the thing itself tells which is right.
  if (verdict.disputes) return [];
  const outcome = (fact: Fact<Value>, value: Value): Tried =>
    sameCheck(
      verdict,
      vesselWith(judgement.vessel, line, new Map([[fact, quantityAs(fact, value)]])),
      judgement,
      [rule],
    );
  const says = sameCheck(verdict, judgement.vessel, judgement, [rule]).verdict?.message;
  const alone = chosenIn(line).flatMap((chosen): Found[] => {
    const found = leastChange(
      chosen.fact.value!,
      chosen.knob,
      { ...REACH, times: chosen.knob.times ?? REACH.times },
      value => outcome(chosen.fact, value),
      says,
      verdict.needed?.find(one => one.at === chosen.fact.value!.origin)?.si,
    );
    if (!found) return [];
    const follows = chosen.knob.follows ? 1 : 0;
    const change = Math.abs(Math.log(found.size.value.si / chosen.fact.value!.si));
    return [{ follows, change, route: routeFor(chosen, found.size, marginOf(found.tried)) }];
  });
  // Whoever tries but the first few has tried those that change least, and nothing else with it.
  if (alone.length > 0)
    return alone.sort((a, b) => a.follows - b.follows || a.change - b.change).map(one => one.route);
  return thickerThroughout(line, others =>
    sameCheck(verdict, vesselWith(judgement.vessel, line, others), judgement, [rule]),
  );
}

function chosenIn({ chain }: ShaftLine): Chosen[] {
  return chain.flatMap(part =>
    chosenOf(part)
      .filter(one => !isOfEntry(one.fact, part))
      .map(one => ({ part, ...one })),
  );
}

/** How far a size of a part is changed at most, either way. */
const REACH: Reach = { times: 2.5, ways: [1, -1], strides: 12 };

function routeFor(
  { part, knob, fact }: Chosen,
  { written, quantity }: Size,
  left: number | undefined,
): Route {
  const home = homeOfFact(fact);
  const margin = left === undefined ? 'it holds' : `margin ${percent(left)}`;
  const follows = knob.follows ? `; ${knob.follows}` : '';
  return {
    title: `Make the ${home?.property ?? knob.field} of the ${knob.of} ${written} instead of ${fact.written}: ${margin}${follows}`,
    edits: rewrite(part, new Map([[fact, amount(quantity)]])),
    kind: 'changes the design',
  };
}
