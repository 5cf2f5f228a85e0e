import {
  given,
  motorTorque,
  powerFromTorque,
  ratioInSeries,
  renamed,
  shaftSpeedThroughGear,
  torqueFromPower,
  torqueReferred,
  torqueTogether,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Motor } from '../model/engine.js';
import type { Gear } from '../model/gear.js';
import { secondInput } from '../model/gear-in-mode.js';
import { home, nameOf, type Part } from '../model/part.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { type Derived, derive } from './derived.js';
import { gearEfficiency, transferEfficiency } from './efficiencies.js';
import { type FullLoadPoint, ratedPoint } from './engine-points.js';
import { gearRatio, transferRatio } from './speeds.js';

/** Torque that a mover beside the engine gives to the shaft that it sits on, at the speed of that shaft. */
export function joinedTorque(
  line: ShaftLine,
  part: Part,
  speed: Value<'rotational speed'>,
  engineTorque: Value<'torque'>,
  needs: Needs,
): Value<'torque'> | undefined {
  // Two engines side by side are of one entry, so the second gives what the first does.
  if (part.role === 'engine') return renamed(engineTorque, 'torque of the second engine', 'T2');
  const motor = part as Motor;
  const name = nameOf(motor);
  const power = needs.fact(motor.power, {
    what: `continuous power of ${name}`,
    host: home(motor),
    property: 'power',
  });
  const top = needs.fact(motor.topSpeed, {
    what: `top speed of ${name}`,
    host: home(motor),
    property: 'top speed',
  });
  if (!power || !top) return undefined;
  const own = renamed(power.y, 'power of the motor', 'P_max');
  const held = line.mode?.motorPower?.value;
  const torque = motorTorque({
    powerLimit: held && held.si < own.si ? renamed(held, 'power of the motor in this mode', 'P_max') : own,
    torqueLimit: motor.torque?.value
      ? renamed(motor.torque.value, 'torque of the motor', 'T_max')
      : renamed(torqueFromPower({ power: power.y, speed: power.x }), 'torque of the motor', 'T_max'),
    greatestSpeed: renamed(top, 'top speed of the motor', 'ω_max'),
    speed,
  });
  return renamed(torque, 'torque of the motor beside the engine', 'T2');
}

/** Whether both engines of a gear with two inputs turn alike: with ratios of their own they are at two places of their curves. */
function isOneSpeed(line: ShaftLine, needs: Needs): boolean {
  const other = secondInput(line);
  if (!other) return true;
  const first = needs.take(gearRatio(line.gear!, 'ahead'));
  const second = needs.take(gearRatio(other.gear, 'ahead'));
  if (!first || !second) return false;
  if (!isSameSpeed(first.value, second.value)) missOneSpeed(other.gear, needs);
  return isSameSpeed(first.value, second.value);
}

/** The same but for what is lost in writing it. */
export function isSameSpeed(one: Value, other: Value): boolean {
  return Math.abs(one.si / other.si - 1) < 1e-6;
}

export function missOneSpeed(gear: Gear, needs: Needs): undefined {
  return needs.miss({
    what: `what each engine gives where the two inputs of ${nameOf(gear)} have ratios of their own`,
    host: gear.variant?.origin ?? home(gear),
    property: 'exact',
  });
}

/** Whatever is given to the shaft at this part, added to what comes along. */
export function withJoined(
  line: ShaftLine,
  part: Part,
  at: { readonly speed: Value<'rotational speed'>; readonly torque: Value<'torque'> },
  engineTorque: Value<'torque'>,
  needs: Needs,
) {
  const second = joinedTorque(line, part, at.speed, engineTorque, needs);
  if (!second) return undefined;
  const torque = torqueTogether({ first: renamed(at.torque, 'torque that comes along', 'T1'), second });
  return { speed: at.speed, torque, power: powerFromTorque({ torque, speed: at.speed }) };
}

/** Torque of all that drives, as if it were given at the engine: what a balance with the propeller starts from. */
export function torqueAtEngine(
  line: ShaftLine,
  vessel: Vessel,
  speed: Value<'rotational speed'>,
  engineTorque: Value<'torque'>,
  needs: Needs,
  besideTorque: Value<'torque'> = engineTorque,
): Value<'torque'> | undefined {
  let torque: Value<'torque'> | undefined = engineTorque;
  if (!isOneSpeed(line, needs)) return undefined;
  for (const part of line.joined ?? []) {
    const before = stagesBefore(line, vessel, part, needs);
    if (!before) return undefined;
    const here = shaftSpeedThroughGear({ engineSpeed: speed, ratio: before.ratio });
    const own = joinedTorque(line, part, here, besideTorque, needs);
    if (!own) return undefined;
    const second = torqueReferred({ torque: own, ...before });
    torque = torqueTogether({ first: renamed(torque, 'torque of the engine', 'T1'), second });
  }
  return torque;
}

/** Ratio and efficiency of the stages between the engine and a part. */
export function stagesBefore(line: ShaftLine, vessel: Vessel, part: Part, needs: Needs) {
  const ahead = line.chain.slice(0, line.chain.indexOf(part));
  const gear = line.gear && ahead.includes(line.gear) ? line.gear : undefined;
  const boxes = line.transfers.filter(one => ahead.includes(one));
  const found = [
    ...(gear ? [needs.take(gearRatio(gear, 'ahead'))] : []),
    ...boxes.map(one => needs.take(transferRatio(one))),
  ];
  if (found.some(one => one === undefined)) return undefined;
  const ratios = found.map(one => one!.value);
  const efficiencies = [
    ...(gear ? [gearEfficiency(gear, vessel)] : []),
    ...boxes.map(one => transferEfficiency(one, vessel)),
  ];
  const plain = (label: string, symbol: string) =>
    given(label, symbol, 'ratio', 1, { assumed: 'it sits on the shaft of the engine' });
  const ratio = ratios.reduce(
    (first, second) => ratioInSeries({ first, second }),
    plain('ratio ahead of the motor', 'i'),
  );
  const si = efficiencies.reduce((product, one) => product * one.si, 1);
  return {
    ratio,
    efficiency:
      si === 1
        ? plain('efficiency ahead of the motor', 'η')
        : given('efficiency ahead of the motor', 'η', 'ratio', si, {
            assumed: 'the stages between engine and motor',
          }),
  };
}

/** The rated point with what drives beside the engine referred to it; the engine's own where nothing does. */
export function ratedTogether(line: ShaftLine, vessel: Vessel): Derived<FullLoadPoint> {
  return derive(needs => {
    const rated = needs.take(ratedPoint(line, vessel));
    if (!rated || !line.joined) return rated;
    const torque = torqueAtEngine(line, vessel, rated.speed, rated.torque, needs);
    return torque && { ...rated, torque, power: powerFromTorque({ torque, speed: rated.speed }) };
  });
}
