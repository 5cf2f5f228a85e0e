import {
  type CarriedShare,
  given,
  powerFromTorque,
  renamed,
  torqueFromPower,
  torqueOfShare,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Clutch, Gear } from '../model/gear.js';
import { nameOf } from '../model/part.js';
import { trainOf } from './train-of-clutch.js';
import { carriedInTrain } from './train-ratio.js';

/** What a clutch or brake of the gear carries over the torque that enters the gear, for each member it holds or locks. */
export function sharesOf(gear: Gear, clutch: Clutch): readonly CarriedShare[] {
  const train = trainOf(gear, clutch);
  const holds = new Set((clutch.holds ?? []).map(one => one.value));
  const locks = new Set((clutch.locks ?? []).map(({ value }) => value && `${value.one} ${value.other}`));
  if (!train || holds.size + locks.size === 0) return [];
  return carriedInTrain(train).filter(({ by, members }) =>
    (by === 'held' ? holds : locks).has(members.join(' ')),
  );
}

/**
 * Torque that the plates of a clutch have to hold: by its place in the train where tooth counts say so, or else that of
 * a clutch on the input, or behind a mesh at the speed that is given.
 */
export function torqueAtClutch(
  gear: Gear,
  clutch: Clutch,
  input: Value<'torque'> | undefined,
  needs: Needs,
): Value<'torque'> | undefined {
  if (!input) return undefined;
  if ((clutch.holds?.length ?? 0) + (clutch.locks?.length ?? 0) > 0) {
    const [first, ...rest] = sharesOf(gear, clutch);
    if (!first) {
      const what = `tooth counts that settle what clutch ${clutch.name} of ${nameOf(gear)} carries`;
      return needs.miss({ what, host: gear.variant?.train?.origin ?? clutch.origin, property: 'mesh' });
    }
    const most = rest.reduce((a, b) => (Math.abs(b.share.si) > Math.abs(a.share.si) ? b : a), first);
    return renamed(torqueOfShare({ share: most.share, inputTorque: input }), 'torque at the clutch');
  }
  return behindMesh(clutch, input);
}

/** A clutch behind a mesh turns at another speed than the input, and carries torque in inverse proportion. */
function behindMesh(clutch: Clutch, input: Value<'torque'>): Value<'torque'> | undefined {
  const factor = clutch.speedFactor?.value;
  if (clutch.speedFactor && !factor) return undefined;
  if (!factor) return renamed(input, 'torque at the clutch');
  const inputSpeed = given('input speed', 'ω', 'rotational speed', 1, {
    assumed: 'any: only the ratio counts',
  });
  const clutchSpeed = given('clutch speed', 'ω_c', 'rotational speed', factor.si, {
    assumed: `${factor.written ?? factor.si} of the input speed`,
  });
  const torque = torqueFromPower({
    power: powerFromTorque({ torque: input, speed: inputSpeed }),
    speed: clutchSpeed,
  });
  return renamed(torque, 'torque at the clutch');
}
