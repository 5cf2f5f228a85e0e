import {
  outputPower,
  powerFromTorque,
  powerLessTakeOff,
  powerReferred,
  renamed,
  torqueFromPower,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Engine } from '../model/engine.js';
import type { Fact } from '../model/fact.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { powerAtPlace } from './ambient.js';
import { type Derived, derive } from './derived.js';
import { gearEfficiency, transferEfficiency } from './efficiencies.js';
import { type FullLoadPoint, ratedPoint } from './engine-points.js';
import { stagesBefore, torqueAtEngine } from './joined.js';

/**
 * Power that reaches the propeller at rated speed: what the engine gives in its air and coolant, less a take-off that
 * counts as running, through the efficiency of every stage. Parts must stand more: the whole power of the engine.
 */
export function propellerPower(line: ShaftLine, vessel: Vessel): Derived<Value<'power'>> {
  return derive(needs => {
    const rated = needs.take(ratedPoint(line, vessel));
    if (!rated) return undefined;
    const atPlace = line.engine ? needs.take(powerAtPlace(line.engine, rated.power, vessel)) : rated.power;
    if (!atPlace) return undefined;
    const efficiencies = [
      ...(line.gear ? [gearEfficiency(line.gear, vessel)] : []),
      ...line.transfers.map(transfer => transferEfficiency(transfer, vessel)),
    ];
    const given = withOthers(line, vessel, rated, lessTakeOff(line, line.engine, atPlace), needs);
    const power =
      given &&
      efficiencies.reduce((inputPower, efficiency) => outputPower({ inputPower, efficiency }), given);
    return power && renamed(power, 'power at the propeller', 'P');
  });
}

/** With what else drives in this mode, as if it were given at the engine, and without what the motor takes to charge. */
function withOthers(
  line: ShaftLine,
  vessel: Vessel,
  rated: FullLoadPoint,
  power: Value<'power'>,
  needs: Needs,
): Value<'power'> | undefined {
  const load = line.mode?.generatorLoad;
  const charging =
    load && needs.fact(load, { what: 'generator load', host: line.mode!.origin, property: 'generator load' });
  if (load && !charging) return undefined;
  const motor = line.chain.find(one => one.role === 'motor');
  const before = motor && stagesBefore(line, vessel, motor, needs);
  if (charging && !before) return undefined;
  const left =
    charging && before
      ? powerLessTakeOff({
          power,
          takeOff: renamed(
            powerReferred({ power: charging, efficiency: before.efficiency }),
            'generator load at the engine',
            'P_t',
          ),
        })
      : power;
  if (!line.joined) return left;
  const first = torqueFromPower({ power: left, speed: rated.speed });
  const second = line.joined.find(one => one.role === 'engine') as Engine | undefined;
  const atPlace = second && needs.take(powerAtPlace(second, rated.power, vessel));
  if (second && !atPlace) return undefined;
  const beside =
    atPlace && torqueFromPower({ power: lessTakeOff(line, second, atPlace), speed: rated.speed });
  const torque = torqueAtEngine(line, vessel, rated.speed, first, needs, beside);
  return torque && powerFromTorque({ torque, speed: rated.speed });
}

/** Power of an engine that goes on to the gear when its take-off counts as running. */
function lessTakeOff(line: ShaftLine, engine: Engine | undefined, power: Value<'power'>): Value<'power'> {
  const takeOff = engine?.takeOff?.value;
  if (!takeOff || takeOffState(line, engine)?.value !== 'on') return power;
  return powerLessTakeOff({ power, takeOff: renamed(takeOff, 'power take-off', 'P_t') });
}

/** Whether a take-off of the engine counts as running: as the mode says, or else the engine in its line. */
export function takeOffState(
  { mode }: ShaftLine,
  engine: Engine | undefined,
): Fact<'on' | 'off'> | undefined {
  return mode?.takeOffState ?? engine?.takeOffState;
}
