import { asSpelling } from '@tailshaft/vocabulary';
import type { ArrangementReading, LineReading, PartReading } from '../reading/arrangement.js';
import type { BlockReading } from '../reading/place.js';
import type { VesselReading } from '../reading/vessel.js';

/** Where an option is written: a part of a line as it is stated there, the line itself, or the hull. */
export type OptionPlace =
  | {
      readonly at: 'part';
      readonly line: LineReading;
      readonly part: PartReading;
      readonly facts: BlockReading;
    }
  | { readonly at: 'line'; readonly line: LineReading; readonly facts: BlockReading }
  | { readonly at: 'hull'; readonly facts: BlockReading };

/**
 * The places that state a property of a part. A line that mirrors another follows it, unless it states the property itself;
 * the first line that states the part states it for all that mirror it.
 */
export function placesOf(
  vessel: VesselReading,
  arrangement: ArrangementReading,
  of: string,
  property: string | undefined,
): readonly OptionPlace[] {
  if (asSpelling(of) === 'hull') {
    const facts = vessel.settings.hull;
    return facts ? [{ at: 'hull', facts }] : [];
  }
  return arrangement.lines.flatMap((line): OptionPlace[] => {
    if (property !== undefined && asSpelling(property) === 'ahead clutch' && states(line.facts, property))
      return [{ at: 'line', line, facts: line.facts }];
    const parts = line.parts.filter(one => one.role === of && one.action !== 'remove');
    const stated = line.mirrors
      ? parts.filter(one => (property === undefined ? one.name !== undefined : states(one.facts, property)))
      : parts;
    return stated.map(part => ({ at: 'part', line, part, facts: part.facts }));
  });
}

function states({ facts }: BlockReading, property: string): boolean {
  return facts.some(one => one.row.words === property);
}
