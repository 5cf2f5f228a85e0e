import type { Value } from '@tailshaft/mechanics';
import { homeOfFact } from '../model/declared-fact.js';
import type { Fact } from '../model/fact.js';
import type { Part } from '../model/part.js';
import { KNOBS, type Knob } from './knobs.js';

/** The sizes of a part that somebody chose, or that it is made in. */
export function chosenOf(part: Part): { readonly knob: Knob; readonly fact: Fact<Value> }[] {
  return (KNOBS[part.role] ?? []).flatMap(knob => factsOf(part, knob).map(fact => ({ knob, fact })));
}

/** What the catalogue says of a bought part is not for this vessel to change. */
export function isOfEntry(fact: Fact<unknown>, { entry }: Part): boolean {
  return entry !== undefined && homeOfFact(fact)?.host === entry.origin;
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
