import { percent, tipClearanceAfterChange } from '@tailshaft/mechanics';
import { amount, quantityOf } from '@tailshaft/vocabulary';
import { bestPropeller, isSized, pitchFor, type SizedPropeller } from '../analysis/propulsion/best-size.js';
import type { Route } from '../judge/route.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { roundedGap, writePropeller } from '../rules/propeller/propeller-edits.js';
import { demandWords } from '../rules/propeller/run-words.js';
import { writeInPlace } from '../rules/rotation/edits.js';
import { NOTHING_SUITS, type Suiting } from './suiting.js';

/**
 * Sizes of a propeller that absorb the rated power of its engine: the pitch for its diameter, the diameter for its pitch, and
 * the two together that do so with the best efficiency within the opening.
 */
export function suitingPropellers(line: ShaftLine, vessel: Vessel): Suiting {
  const propeller = line.propeller;
  if (!propeller) return NOTHING_SUITS;
  const diameter = propeller.diameter?.value;
  const pitch = propeller.pitch?.value;
  const routes: Suiting['routes'][number][] = [];
  if (diameter && !pitch && !propeller.effectivePitch) {
    const found = pitchFor(line, vessel, diameter);
    if (found)
      routes.push({
        title: `Take a pitch of ${found.pitch.written}, which absorbs the rated power at this diameter: ${demandWords(found.propulsion)}`,
        edits: [writeInPlace(propeller, 'pitch', amount(quantityOf(found.pitch)))],
        workings: found.workings,
      });
  }
  const best = bestPropeller(line, vessel);
  if (isSized(best)) routes.push({ ...routeOfBest(line, vessel, best), workings: best.workings });
  return { routes, ...(isSized(best) ? { missing: [] } : best) };
}

/** The propeller of best efficiency as a route, with what it gains over the pitch that absorbs the power at the present diameter. */
function routeOfBest(
  line: ShaftLine,
  vessel: Vessel,
  { diameter, pitch, propulsion, bounded }: SizedPropeller,
): Route {
  const propeller = line.propeller!;
  const now = propeller.diameter?.value && pitchFor(line, vessel, propeller.diameter.value);
  const room = bounded ? 'the largest that the opening allows' : 'smaller than the opening allows';
  const gain = now
    ? `, against ${percent(now.propulsion.rated.efficiency.si)} of ${now.diameter.written} by ${now.pitch.written}`
    : '';
  const gap = propeller.tipClearance?.value;
  const clearance =
    gap && propeller.diameter?.value
      ? {
          'tip clearance': roundedGap(
            tipClearanceAfterChange({
              clearance: gap,
              diameter: propeller.diameter.value,
              newDiameter: diameter,
            }),
            gap,
          ),
        }
      : {};
  return {
    title: `Take ${diameter.written} by ${pitch.written}, of best efficiency at this shaft speed and ${room}: ${percent(propulsion.rated.efficiency.si)} in open water${gain}; it absorbs ${demandWords(propulsion)}`,
    edits: writePropeller(propeller, {
      diameter: amount(quantityOf(diameter)),
      pitch: amount(quantityOf(pitch)),
      ...clearance,
    }),
  };
}
