import type { Value } from '@tailshaft/mechanics';
import { Needs } from '../judge/needs.js';
import type { GearRating } from '../model/gear.js';
import { home, nameOf } from '../model/part.js';
import type { FullLoadPoint } from './engine-points.js';
import { ratingsOf } from './gear-data.js';
import type { LineAnalysis } from './line.js';
import { ratingTorque } from './rating-torque.js';
import { chooseRating, type RatingGap } from './ratings.js';
import type { Direction } from './speeds.js';

/** One full-load point against the rating that holds there. */
export interface InputTorque {
  readonly point: FullLoadPoint;
  readonly demand: Value<'torque'>;
  readonly capacity: Value<'torque'>;
  readonly rating: GearRating;
  /** The rating is for a heavier duty than the vessel's. */
  readonly heavier: boolean;
  /** capacity ÷ demand − 1 */
  readonly margin: number;
}

/** What the gear's input is loaded with, at rated power and at peak torque, and what could not be compared. */
export interface InputTorques {
  readonly compared: readonly InputTorque[];
  readonly needs: Needs;
  readonly gaps: readonly RatingGap[];
}

/** Compares the torque that enters the gear with its rating at this ratio, for this duty, fuel and direction. */
export function inputTorques(analysis: LineAnalysis, duty: string, direction: Direction): InputTorques {
  const needs = new Needs();
  const { line } = analysis;
  const gear = line.gear!;
  const ratings = ratingsOf(gear, gear.variant);
  const compared: InputTorque[] = [];
  const gaps: RatingGap[] = [];
  for (const point of [needs.take(analysis.rated), needs.take(analysis.peakTorque)]) {
    if (!point) continue;
    const loads = analysis.loads(point, direction);
    const load = loads.entering.get(gear);
    // A point at which nobody knows what enters is no reason to go by the others alone.
    if (!load) {
      needs.take({ value: undefined, missing: loads.missing });
      continue;
    }
    const { torque: demand, speed } = load;
    const choice = chooseRating(ratings, { duty, fuel: line.engine?.fuel?.value, direction, speed });
    if ('gap' in choice) {
      gaps.push(choice.gap);
      const open =
        choice.gap === 'speed' ? choice.nearest.find(one => one.speeds && !one.speeds.value) : undefined;
      if (open) {
        const what = `speeds of the ${open.duty} rating of ${nameOf(gear)}`;
        needs.miss({ what, host: open.origin, property: 'from' }, open.speeds?.origin);
        continue;
      }
      missRating(analysis, choice.gap, duty, direction, speed, needs);
      continue;
    }
    const { rating, heavier } = choice;
    const capacity = ratingTorque(rating);
    if (capacity) {
      compared.push({ point, demand, capacity, rating, heavier, margin: capacity.si / demand.si - 1 });
    } else {
      const at = (rating.powerPerSpeed ?? rating.torque ?? rating.power)?.origin;
      const property = rating.torque ? 'torque' : rating.power ? 'power' : 'power per speed';
      needs.miss({ what: `${rating.duty} rating of ${nameOf(gear)}`, host: rating.origin, property }, at);
    }
  }
  return { compared: compared.sort((a, b) => a.margin - b.margin), needs, gaps };
}

function missRating(
  { line, tell }: LineAnalysis,
  gap: RatingGap,
  duty: string,
  direction: Direction,
  speed: Value<'rotational speed'>,
  needs: Needs,
): void {
  const gear = line.gear!;
  const host = gear.variant?.origin ?? home(gear);
  const ratio = gear.variant?.nominalFact.written ?? gear.ratioUsed?.written;
  const name = `${nameOf(gear)}${ratio ? ` at ${ratio}` : ''}`;
  if (gap === 'fuel' && line.engine && line.engine.fuel?.value === undefined) {
    needs.miss(
      { what: `fuel of ${nameOf(line.engine)}`, host: home(line.engine), property: 'fuel' },
      line.engine.fuel?.origin,
    );
    return;
  }
  const special: Record<RatingGap, string> = {
    none: '',
    duty: '',
    direction: ` ${direction}`,
    fuel: ` behind a ${line.engine?.fuel?.value ?? 'motor'} engine`,
    speed: ` at ${tell(speed)}`,
  };
  needs.miss({ what: `${duty} rating of ${name}${special[gap]}`, host, property: `rated ${duty}` });
}
