import type { ArrangementReading, LineReading, PartReading } from '../reading/arrangement.js';
import type { BlockReading, FactReading } from '../reading/place.js';
import type { VesselReading } from '../reading/vessel.js';
import type { Writing } from './dimension.js';

/** The vessel as it would be read with other values in these places. What does not change is the same. */
export function readingWith(
  vessel: VesselReading,
  arrangement: ArrangementReading,
  writings: readonly Writing[],
): VesselReading {
  const blocks = new Map<BlockReading, FactReading[]>();
  const names = new Map<PartReading, string>();
  for (const writing of writings) {
    if ('name' in writing) names.set(writing.place.part, writing.name);
    else {
      const { facts } = writing.place;
      blocks.set(facts, [...(blocks.get(facts) ?? []), writing.found]);
    }
  }
  const block = (one: BlockReading) => {
    const found = blocks.get(one);
    return found ? blockWith(one, found) : one;
  };
  const part = (one: PartReading): PartReading => {
    const facts = block(one.facts);
    const name = names.get(one);
    if (facts === one.facts && name === undefined) return one;
    return { ...one, facts, ...(name === undefined ? {} : { name }) };
  };
  const line = (one: LineReading): LineReading => ({
    ...one,
    facts: block(one.facts),
    parts: one.parts.map(part),
  });
  const { hull } = vessel.settings;
  return {
    ...vessel,
    studies: [],
    settings: hull && blocks.has(hull) ? { ...vessel.settings, hull: block(hull) } : vessel.settings,
    arrangements: vessel.arrangements.map(one =>
      one === arrangement ? { ...one, lines: one.lines.map(line) } : one,
    ),
  };
}

/** A block with other facts in the place of those of the same property, or beside the others. */
function blockWith(block: BlockReading, found: readonly FactReading[]): BlockReading {
  const fields = { ...block.fields };
  const facts = [...block.facts];
  for (const one of found) {
    fields[one.row.field] = one.fact;
    const at = facts.findIndex(other => other.row === one.row || other.row.words === one.row.words);
    if (at < 0) facts.push(one);
    else facts[at] = one;
  }
  return { ...block, fields, facts };
}
