import { given, renamed, shaftSpeedThroughGear, speedFromSlip, type Value } from '@tailshaft/mechanics';
import { home, nameOf } from '../model/part.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { type Derived, derive } from './derived.js';
import { assumedOf } from './efficiencies.js';
import { idleSpeed } from './engine-points.js';
import { overallRatio } from './speeds.js';

/** Slip taken at idle where the vessel assumes no other. */
const USUAL_IDLE_SLIP = 0.3;
const USUAL_IDLE_SLIP_REASON =
  '30 %, an estimate from memory: write "assume slip ... because ..." for what a trial of this or a sister hull showed';

/** Propeller shaft speed with the engine at low idle and the ahead clutch in. */
export function idleShaftSpeed(line: ShaftLine): Derived<Value<'rotational speed'>> {
  return derive(needs => {
    const engineSpeed = needs.take(idleSpeed(line));
    const ratio = needs.take(overallRatio(line, 'ahead'));
    if (!engineSpeed || !ratio) return undefined;
    return renamed(shaftSpeedThroughGear({ engineSpeed, ratio }), 'shaft speed at idle', 'ω');
  });
}

/** Slip for the estimate of speed at idle. */
export function idleSlip(vessel: Vessel): Value<'ratio'> {
  const assumed = assumedOf(vessel, 'slip', 'ratio');
  return assumed
    ? renamed(assumed, 'slip', 's')
    : given('slip', 's', 'ratio', USUAL_IDLE_SLIP, {
        assumed: USUAL_IDLE_SLIP_REASON,
        replaceWith: 'assume slip',
      });
}

/** Speed of the vessel in gear at idle, as its pitch and an assumed slip make it. An estimate. */
export function idleVesselSpeed(line: ShaftLine, vessel: Vessel): Derived<Value<'speed'>> {
  return derive(needs => {
    const shaftSpeed = needs.take(idleShaftSpeed(line));
    const { propeller } = line;
    const pitch =
      propeller &&
      needs.fact(propeller.pitch, {
        what: `pitch of ${nameOf(propeller)}`,
        host: home(propeller),
        property: 'pitch',
      });
    if (!shaftSpeed || !pitch) return undefined;
    const speed = speedFromSlip({ pitch: renamed(pitch, 'pitch', 'p'), shaftSpeed, slip: idleSlip(vessel) });
    return renamed(speed, 'estimated speed at idle', 'V');
  });
}
