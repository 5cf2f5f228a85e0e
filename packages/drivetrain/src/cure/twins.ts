import type { Engine } from '../model/engine.js';
import type { Part } from '../model/part.js';
import type { ShaftLine } from '../model/vessel.js';

/** The other engines of a line that are of the same entry at the same rating: two that differ do not add up. */
export function twinsOf(part: Part, { chain }: ShaftLine): Engine[] {
  const { entry, ratedAt } = part as Engine;
  if (part.role !== 'engine' || !entry) return [];
  const engines = chain.filter(one => one.role === 'engine') as Engine[];
  return engines.filter(
    one => one !== part && one.entry?.name === entry.name && one.ratedAt?.value === ratedAt?.value,
  );
}
