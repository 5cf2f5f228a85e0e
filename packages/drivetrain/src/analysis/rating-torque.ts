import { renamed, torqueFromPower, torqueOfCapacity, type Value } from '@tailshaft/mechanics';
import type { GearRating } from '../model/gear.js';
import { isSaid } from '../model/reads.js';

/** The input torque that a rating stands for, in whichever way it is written; undefined when it is left open. */
export function ratingTorque(rating: GearRating): Value<'torque'> | undefined {
  const torque = isSaid(() => rating.torque) && rating.torque?.value;
  if (torque) return renamed(torque, 'torque allowed', 'T');
  const capacity = isSaid(() => rating.powerPerSpeed) && rating.powerPerSpeed?.value;
  if (capacity)
    return renamed(
      torqueOfCapacity({ capacity: renamed(capacity, 'power per speed', 'K') }),
      'torque allowed',
    );
  const point = rating.power?.value;
  if (!point) return undefined;
  const power = renamed(point.y, 'power allowed', 'P');
  return renamed(torqueFromPower({ power, speed: renamed(point.x, 'input speed', 'ω') }), 'torque allowed');
}

/** The rating in the words of its sheet: `0.112 kW/rpm, medium duty`. */
export function ratingWords(rating: GearRating): string {
  const forms = [() => rating.powerPerSpeed, () => rating.torque, () => rating.power];
  const fact = forms.find(isSaid)?.();
  return `${fact ? `${fact.written}, ` : ''}${rating.duty} duty`;
}
