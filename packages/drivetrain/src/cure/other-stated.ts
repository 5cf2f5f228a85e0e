import type { Value } from '@tailshaft/mechanics';
import { amount, spell } from '@tailshaft/vocabulary';
import { homeOfFact } from '../model/declared-fact.js';
import type { Engine } from '../model/engine.js';
import type { Fact } from '../model/fact.js';
import type { Gear } from '../model/gear.js';
import type { Part } from '../model/part.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { chosenOf, isOfEntry } from './chosen.js';
import type { Knob } from './knobs.js';
import { leastChange, type Reach, type Settling } from './least-change.js';
import { dutyOfEngine, dutyOfGear } from './other-duty.js';
import { copiesFor, type Limit, limitsOf, otherWords, type Swap } from './stated-facts.js';
import { otherFact, quantityAs } from './swap.js';
import type { OtherStated, Trial } from './trial.js';

/** A rating is raised to so many times itself at most: beyond, another kind of part is wanted. */
const REACH = 30;

/** One fact after the other of a bought part, and those that it must share with its neighbours together. */
export function otherStated(part: Part, line: ShaftLine, vessel: Vessel, trial: Trial): OtherStated[] {
  const found: OtherStated[] = [];
  const says = trial(new Map()).verdict?.message;
  if (part.role === 'engine') found.push(...dutyOfEngine(part as Engine, vessel, trial));
  if (part.role === 'gear') found.push(...dutyOfGear(part as Gear, vessel, trial));
  if (found.length > 0) return found;
  for (const limit of limitsOf(part)) found.push(...otherLimit(limit, trial, says));
  for (const { knob, fact } of chosenOf(part))
    if (isOfEntry(fact, part)) found.push(...otherMake(fact, knob, trial, says));
  const groups = [...copiesFor(part, line), ...otherWords(part)];
  for (const swaps of groups) found.push(...all(swaps, trial));
  if (found.length === 0 && groups.length > 1) found.push(...all(groups.flat(), trial));
  return found;
}

function otherLimit(
  { fact, also = [], way, says, further }: Limit,
  trial: Trial,
  now?: string,
): OtherStated[] {
  const reach: Reach = { times: REACH, ways: [way], strides: 8 };
  const settling = leastChange(
    fact.value!,
    { metric: 0.005, inch: 1 / 8 },
    reach,
    value => trial(new Map([fact, ...also].map(one => [one, quantityAs(one, value)])), further),
    now,
  );
  return settling ? [statedAs([fact, ...also], settling, says)] : [];
}

function statedAs(facts: readonly Fact<Value>[], { size, tried }: Settling, says?: string): OtherStated {
  const words = says ?? homeOfFact(facts[0]!)?.property ?? '';
  return {
    says: `${words} ${size.written}`.trim(),
    settled: tried,
    changes: facts.map(one => ({ at: one.origin, value: amount(size.quantity) })),
  };
}

/** Made in another size, whichever way. */
function otherMake(fact: Fact<Value>, knob: Knob, trial: Trial, now?: string): OtherStated[] {
  const settling = leastChange(
    fact.value!,
    knob,
    { times: knob.times ?? 2.5, ways: [1, -1], strides: 8 },
    value => trial(new Map([[fact, quantityAs(fact, value)]])),
    now,
  );
  return settling ? [statedAs([fact], settling)] : [];
}

function all(swaps: readonly Swap[], trial: Trial): OtherStated[] {
  const others = new Map(swaps.map(({ fact, value, as }) => [fact, otherFact(fact, value, spell(as))]));
  const settled = trial(others);
  if (!settled.settles) return [];
  return [
    {
      says: swaps.map(({ fact, as }) => `${homeOfFact(fact)?.property} ${spell(as)}`).join(', '),
      settled,
      changes: swaps.map(({ fact, as }) => ({ at: fact.origin, value: as })),
    },
  ];
}
