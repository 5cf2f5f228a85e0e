import type { Source, Value } from '@tailshaft/mechanics';
import type { GearRating } from '../model/gear.js';
import { isSaid } from '../model/reads.js';
import { compareDuty, lighterFirst } from './duty-class.js';

/** What a gear rating must be for. */
export interface RatingWanted {
  readonly duty: string;
  readonly fuel: 'petrol' | 'diesel' | 'gas' | undefined;
  readonly direction: 'ahead' | 'astern';
  readonly speed: Value<'rotational speed'>;
}

/** What the ratings that come nearest do not meet. */
export type RatingGap = 'none' | 'direction' | 'duty' | 'fuel' | 'speed';

export type RatingChoice =
  | { readonly rating: GearRating; readonly heavier: boolean }
  | { readonly gap: RatingGap; readonly nearest: readonly GearRating[] };

/** Ratings by torque or power per speed do not depend on speed as long as the gear may turn that fast. */
export const RATING_BELOW_SPEED: Source = {
  title: 'a gear rating given at one speed is compared by torque at lower speeds, never at higher ones',
  confidence: 'common practice',
};

/**
 * The rating to judge by: of the wanted duty, else the lightest heavier one; never a lighter one, one for another fuel
 * or direction, or one outside its stated speeds.
 */
export function chooseRating(ratings: readonly GearRating[], wanted: RatingWanted): RatingChoice {
  let left = ratings;
  let gap: RatingGap = 'none';
  for (const [name, keeps] of FILTERS) {
    const kept = left.filter(rating => keeps(rating, wanted));
    if (kept.length === 0) return { gap: left.length === 0 ? gap : name, nearest: left };
    left = kept;
    gap = name;
  }
  const rating = [...left].sort(
    (one, other) => rank(one, wanted) - rank(other, wanted) || narrowness(other) - narrowness(one),
  )[0]!;
  return { rating, heavier: compareDuty(rating.duty, wanted.duty) === 'heavier' };
}

const FILTERS: readonly (readonly [RatingGap, (rating: GearRating, wanted: RatingWanted) => boolean])[] = [
  ['direction', (rating, { direction }) => !rating.direction || rating.direction.value === direction],
  ['duty', (rating, { duty }) => ['same', 'heavier'].includes(compareDuty(rating.duty, duty))],
  ['fuel', (rating, { fuel }) => !rating.fuel || (fuel !== undefined && rating.fuel.value === fuel)],
  ['speed', (rating, { speed }) => holdsAt(rating, speed)],
];

/** Whether a rating is stated for this input speed. */
export function holdsAt(rating: GearRating, speed: Value<'rotational speed'>): boolean {
  if (rating.speeds) {
    const span = rating.speeds.value;
    return (
      span !== undefined &&
      speed.si >= span.low.si * (1 - ROUNDING) &&
      speed.si <= span.high.si * (1 + ROUNDING)
    );
  }
  if (isSaid(() => rating.torque) || isSaid(() => rating.powerPerSpeed) || !rating.power) return true;
  return rating.power.value !== undefined && speed.si <= rating.power.value.x.si * (1 + ROUNDING);
}

/** Speeds written in different units may differ in the last bits. */
const ROUNDING = 1e-9;

/** A rating for one fuel, direction or range of speeds goes before one for all, in whatever order they are written. */
function narrowness(rating: GearRating): number {
  const said = [() => rating.direction, () => rating.fuel, () => rating.speeds];
  return said.filter(isSaid).length;
}

function rank(rating: GearRating, wanted: RatingWanted): number {
  if (compareDuty(rating.duty, wanted.duty) === 'same') return -1;
  return lighterFirst(rating.duty, wanted.duty);
}
