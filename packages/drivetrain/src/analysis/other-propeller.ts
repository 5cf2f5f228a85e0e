import { DIAMETER_EXPONENT, demandAtDiameter, demandAtPitch, given, type Value } from '@tailshaft/mechanics';
import { known } from '../model/fact.js';
import type { Propeller } from '../model/shafting.js';

/** Between what a power lies; an end that nothing bounds is absent. */
export interface Bounds {
  readonly low?: Value<'power'>;
  readonly high?: Value<'power'>;
}

/** Facts that decide what power a propeller asks at one speed. */
export const POWER_RESTS_ON = [
  'diameter',
  'pitch',
  'effectivePitch',
  'blades',
  'areaRatio',
  'cup',
  'kind',
] as const;

const SCALED: readonly string[] = ['diameter', 'pitch'];

/** Equal pitch ratios within this share make two propellers similar. */
const SIMILAR = 0.01;

/**
 * What a modified propeller asks at the speed at which it asked this before: by the laws of diameter and pitch. Without
 * them, as for another number of blades, nothing bounds it, and `unscaled` names the facts.
 */
export function demandOfModified(
  asked: Bounds,
  was: Propeller,
  is: Propeller,
  changed: readonly string[],
): Bounds & { readonly unscaled: readonly string[] } {
  const unscaled = changed.filter(one => !SCALED.includes(one) || !bothKnown(was, is, one));
  if (unscaled.length > 0) return { unscaled };
  const { low, high } = changed.includes('diameter') ? byDiameter(asked, was, is) : asked;
  if (!changed.includes('pitch') || areSimilar(was, is)) return { ...ends(low, high), unscaled };
  const [pitch, referencePitch] = [is.pitch!.value!, was.pitch!.value!];
  const more = pitch.si > referencePitch.si;
  const scaled = (end: Value<'power'> | undefined) =>
    end && demandAtPitch({ referencePower: end, referencePitch, pitch });
  return { ...(more ? ends(scaled(low), undefined) : ends(undefined, scaled(high))), unscaled };
}

function byDiameter({ low, high }: Bounds, was: Propeller, is: Propeller): Bounds {
  const [diameter, referenceDiameter] = [is.diameter!.value!, was.diameter!.value!];
  const by = (end: Value<'power'> | undefined, m: number) =>
    end &&
    demandAtDiameter({
      referencePower: end,
      referenceDiameter,
      diameter,
      exponent: given('exponent of the diameter', 'm', 'ratio', m, {
        assumed:
          'the third power if the blades only lift, the fifth if they only drag or the propellers are similar',
      }),
    });
  const larger = diameter.si > referenceDiameter.si;
  if (areSimilar(was, is))
    return ends(by(low, DIAMETER_EXPONENT.similar), by(high, DIAMETER_EXPONENT.similar));
  const [least, most] = [DIAMETER_EXPONENT['same pitch, least'], DIAMETER_EXPONENT['same pitch, most']];
  return ends(by(low, larger ? least : most), by(high, larger ? most : least));
}

function areSimilar(was: Propeller, is: Propeller): boolean {
  const [d, d0, h, h0] = [is.diameter, was.diameter, is.pitch, was.pitch].map(one => known(one)?.si);
  if (!d || !d0 || !h || !h0 || d === d0) return false;
  return Math.abs(h / d / (h0 / d0) - 1) <= SIMILAR;
}

function bothKnown(was: Propeller, is: Propeller, field: string): boolean {
  return [was, is].every(one => known(one[field as 'diameter' | 'pitch']) !== undefined);
}

function ends(low: Value<'power'> | undefined, high: Value<'power'> | undefined): Bounds {
  return { ...(low ? { low } : {}), ...(high ? { high } : {}) };
}
