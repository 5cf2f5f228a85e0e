import { outputPower, powerLessTakeOff, renamed, type Value } from '@tailshaft/mechanics';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { powerAtPlace } from './ambient.js';
import { type Derived, derive } from './derived.js';
import { gearEfficiency, transferEfficiency } from './efficiencies.js';
import { ratedPoint } from './engine-points.js';

/**
 * Power that reaches the propeller at rated speed: what the engine gives in its air and coolant, less a take-off that
 * counts as running, through the efficiency of every stage. Parts must stand more: the whole power of the engine.
 */
export function propellerPower(line: ShaftLine, vessel: Vessel): Derived<Value<'power'>> {
  return derive(needs => {
    const rated = needs.take(ratedPoint(line, vessel));
    if (!rated) return undefined;
    const atPlace = line.engine ? needs.take(powerAtPlace(line.engine, rated.power)) : rated.power;
    if (!atPlace) return undefined;
    const left = lessTakeOff(line, atPlace);
    const efficiencies = [
      ...(line.gear ? [gearEfficiency(line.gear, vessel)] : []),
      ...line.transfers.map(transfer => transferEfficiency(transfer, vessel)),
    ];
    const power = efficiencies.reduce(
      (inputPower, efficiency) => outputPower({ inputPower, efficiency }),
      left,
    );
    return renamed(power, 'power at the propeller', 'P');
  });
}

/** Engine power that goes on to the gear when the take-off counts as running. */
function lessTakeOff(line: ShaftLine, power: Value<'power'>): Value<'power'> {
  const takeOff = line.engine?.takeOff?.value;
  if (!takeOff || line.engine?.takeOffState?.value !== 'on') return power;
  return powerLessTakeOff({ power, takeOff: renamed(takeOff, 'power take-off', 'P_t') });
}
