import { outputPower, type Value } from '@tailshaft/mechanics';
import { gearEfficiency } from '../../analysis/efficiencies.js';
import { ratingOf } from '../../analysis/engine-points.js';
import type { LineContext } from '../../judge/context.js';
import type { Needs } from '../../judge/needs.js';
import type { Engine } from '../../model/engine.js';

/**
 * A rating of which nobody says where it was measured is taken at the propeller shaft, which loads the parts more. A propeller
 * that is too much for its engine would pass by that: measured at the crankshaft, the gear takes its loss of it.
 */
export function surelyDelivered(
  available: Value<'power'>,
  { line, vessel }: LineContext,
  open: Needs,
): Value<'power'> {
  const unsaid = line.chain
    .flatMap(part => (part.role === 'engine' ? (ratingOf(part as Engine) ?? []) : []))
    .filter(rating => rating.measuredAt?.value === undefined);
  if (!line.gear || unsaid.length === 0) return available;
  for (const rating of unsaid)
    open.miss(
      {
        what: `point of measurement of the ${rating.duty} rating`,
        host: rating.origin,
        property: 'measured at',
      },
      rating.measuredAt?.origin,
    );
  return outputPower({ inputPower: available, efficiency: gearEfficiency(line.gear, vessel) });
}
