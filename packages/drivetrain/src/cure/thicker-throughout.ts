import type { Value } from '@tailshaft/mechanics';
import { percent } from '@tailshaft/mechanics';
import { amount } from '@tailshaft/vocabulary';
import type { ModelEdit, Route } from '../judge/route.js';
import type { Fact } from '../model/fact.js';
import type { Shaft } from '../model/shafting.js';
import type { ShaftLine } from '../model/vessel.js';
import { marginOf } from './judgement.js';
import { leastChange } from './least-change.js';
import { rewrite } from './rewrite.js';
import { type Size, sizeBeyond } from './sizes.js';
import { quantityAs } from './swap.js';
import type { Trial } from './trial.js';

const STEPS = { metric: 0.005, inch: 1 / 8 };

/** A shaft that is too thin at several places, made no thinner anywhere than what settles the check. */
export function thickerThroughout({ shafts }: ShaftLine, trial: Trial): Route[] {
  const alone = shafts.flatMap(shaft => thicker([shaft], trial));
  // Where each of several shafts is too thin, no one of them settles it.
  return alone.length > 0 || shafts.length < 2 ? alone : thicker(shafts, trial);
}

function thicker(shafts: readonly Shaft[], trial: Trial): Route[] {
  const facts = shafts.flatMap(thicknesses);
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
  const what = shafts.length > 1 ? 'each shaft' : 'the shaft';
  const margin = marginOf(found.tried);
  const then = margin === undefined ? 'it holds' : `margin ${percent(margin)}`;
  return [
    {
      title: `Make ${what} no thinner than ${found.size.written} anywhere: ${then}; bearings, seal, coupling and propeller bore follow`,
      edits: shafts.flatMap(shaft => rewritten(shaft, sizes)),
      kind: 'changes the design',
    },
  ];
}

function rewritten(shaft: Shaft, sizes: ReadonlyMap<Fact<Value>, Size>): ModelEdit[] {
  const own = new Set(thicknesses(shaft));
  const changed = [...sizes].filter(([fact]) => own.has(fact));
  if (changed.length === 0) return [];
  return rewrite(shaft, new Map(changed.map(([fact, { quantity }]) => [fact, amount(quantity)])));
}

function thicknesses({ diameter, couplingEnd, sections }: Shaft): Fact<Value>[] {
  return [diameter, couplingEnd, ...(sections ?? []).map(one => one.diameter)].filter(
    one => one?.value !== undefined,
  ) as Fact<Value>[];
}
