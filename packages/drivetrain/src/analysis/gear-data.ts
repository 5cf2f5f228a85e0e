import type { Value } from '@tailshaft/mechanics';
import type { Clutch, Gear, GearFacts, GearRating, RatioVariant } from '../model/gear.js';
import { meaningOf } from '../model/meaning.js';
import { aside, KeptBy } from '../model/reads.js';

/** The clutches of a ratio: those declared for every ratio, overlaid by what the ratio itself says of them. */
export function clutchesOf(
  gear: Pick<GearFacts, 'clutches'>,
  variant: RatioVariant | undefined,
): readonly Clutch[] {
  if (!variant || variant.clutches.length === 0) return gear.clutches;
  if (gear.clutches.length === 0) return variant.clutches;
  const { clutches } = gear;
  const kept = LAID_OVER.once(variant, () => new KeptBy<readonly Clutch[]>());
  return kept.once(clutches, () => {
    const own = new Map(variant.clutches.map(one => [one.name, one]));
    const general = clutches.map(one => laidOver(one, own.get(one.name)));
    return [...general, ...variant.clutches.filter(one => !clutches.some(two => two.name === one.name))];
  });
}

/** Half of the checks on a gear ask for them. */
const LAID_OVER = new KeptBy<RatioVariant>();

/** A list that the ratio leaves empty is not said anew. */
function laidOver(general: Clutch, own: Clutch | undefined): Clutch {
  const said = Object.entries(own ?? {}).filter(([, value]) => !(Array.isArray(value) && value.length === 0));
  return { ...general, ...Object.fromEntries(said) };
}

/** The ratings of a ratio: its own, and those that hold for every ratio for whatever its own do not speak of. */
export function ratingsOf(
  gear: Pick<GearFacts, 'ratings'>,
  variant: RatioVariant | undefined,
): readonly GearRating[] {
  const own = variant?.ratings ?? [];
  if (own.length === 0 || gear.ratings.length === 0) return own.length > 0 ? own : gear.ratings;
  // Which of them counts is asked of those that are left.
  const isSaidAnew = (general: GearRating) => own.some(one => aside(() => speaksOf(one, general)));
  return [...own, ...gear.ratings.filter(one => !isSaidAnew(one))];
}

/** Whether a rating is for all that the other one is for. */
function speaksOf(one: GearRating, other: GearRating): boolean {
  const covers = (general: unknown, narrow: unknown) =>
    general === undefined || (narrow !== undefined && meaningOf(general) === meaningOf(narrow));
  return (
    one.duty === other.duty &&
    covers(one.direction, other.direction) &&
    covers(one.fuel, other.fuel) &&
    covers(one.speeds, other.speeds)
  );
}

/** The clutch that the line runs ahead in; a gear with one clutch leaves no choice. */
export function aheadClutchOf(gear: Gear): Clutch | undefined {
  const clutches = clutchesOf(gear, gear.variant);
  const named = gear.aheadClutch?.value;
  if (named !== undefined) return clutches.find(one => one.name === named);
  return gear.aheadClutch === undefined && clutches.length === 1 ? clutches[0] : undefined;
}

/** The other clutch of a gear that has two. */
export function asternClutchOf(gear: Gear): Clutch | undefined {
  const ahead = aheadClutchOf(gear);
  const clutches = clutchesOf(gear, gear.variant);
  return ahead && clutches.length === 2 ? clutches.find(one => one.name !== ahead.name) : undefined;
}

/** The offered ratio that a written one names, by its nominal value or by an exact one of its own or of a clutch. */
export function findVariant(
  variants: readonly RatioVariant[],
  used: Value<'ratio'>,
): RatioVariant | undefined {
  const is = (ratio: Value<'ratio'> | undefined) =>
    ratio !== undefined && Math.abs(ratio.si - used.si) < 1e-9;
  return (
    variants.find(one => is(one.nominal)) ??
    variants.find(one => is(one.exact?.value) || one.clutches.some(clutch => is(clutch.exact?.value)))
  );
}
