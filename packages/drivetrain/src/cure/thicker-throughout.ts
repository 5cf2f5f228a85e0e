import type { Value } from '@tailshaft/mechanics';
import { amount } from '@tailshaft/vocabulary';
import { percent } from '../analysis/telling.js';
import type { Route } from '../judge/route.js';
import type { Fact } from '../model/fact.js';
import type { Shaft } from '../model/shafting.js';
import type { ShaftLine } from '../model/vessel.js';
import { leastChange } from './least-change.js';
import { rewrite } from './rewrite.js';
import { sizeBeyond } from './sizes.js';
import { quantityAs } from './swap.js';
import type { Trial } from './trial.js';

const STEPS = { metric: 0.005, inch: 1 / 8 };

/** A shaft that is too thin at several places, made no thinner anywhere than what settles the check. */
export function thickerThroughout({ shafts }: ShaftLine, trial: Trial): Route[] {
  return shafts.flatMap(shaft => {
    const facts = thicknesses(shaft);
    const thinnest = [...facts].sort((a, b) => a.value!.si - b.value!.si)[0];
    if (!thinnest || facts.length < 2) return [];
    const atLeast = (least: Value) =>
      new Map(
        facts.flatMap(fact => {
          const now = fact.value!;
          const size = now.si < least.si - 1e-9 ? sizeBeyond(now, least.si, STEPS) : undefined;
          return size ? [[fact, size] as const] : [];
        }),
      );
    const found = leastChange(thinnest.value!, STEPS, { times: 4, ways: [1], strides: 12 }, least =>
      trial(new Map([...atLeast(least)].map(([fact, size]) => [fact, quantityAs(fact, size.value)]))),
    );
    if (!found) return [];
    const sizes = atLeast(found.size.value);
    const margin = found.tried.verdict?.margin;
    const then = margin === undefined ? 'it holds' : `margin ${percent(margin)}`;
    return [
      {
        title: `Make the shaft no thinner than ${found.size.written} anywhere: ${then}; bearings, seal, coupling and propeller bore follow`,
        edits: rewrite(shaft, new Map([...sizes].map(([fact, { quantity }]) => [fact, amount(quantity)]))),
        kind: 'changes the design',
      },
    ];
  });
}

function thicknesses({ diameter, couplingEnd, sections }: Shaft): Fact<Value>[] {
  return [diameter, couplingEnd, ...(sections ?? []).map(one => one.diameter)].filter(
    one => one?.value !== undefined,
  ) as Fact<Value>[];
}
