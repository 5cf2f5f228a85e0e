import {
  outputTorque,
  powerFromTorque,
  renamed,
  shaftSpeedThroughGear,
  torqueTogether,
  type Value,
} from '@tailshaft/mechanics';
import { Needs } from '../judge/needs.js';
import type { Missing } from '../judge/verdict.js';
import { type SecondInput, secondInput } from '../model/gear-in-mode.js';
import type { Part } from '../model/part.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { gearEfficiency, transferEfficiency } from './efficiencies.js';
import type { FullLoadPoint } from './engine-points.js';
import { isSameSpeed, joinedTorque, missOneSpeed, withJoined } from './joined.js';
import { type Direction, gearRatio, transferRatio } from './speeds.js';

/** What a part is loaded with where the power enters it. */
export interface Load {
  readonly speed: Value<'rotational speed'>;
  readonly torque: Value<'torque'>;
  readonly power: Value<'power'>;
}

/** Speed, torque and power along the chain for one point of the engine. */
export interface LineLoads {
  readonly point: FullLoadPoint;
  readonly direction: Direction;
  /** At the input of each part, as far along as it can be told. */
  readonly entering: ReadonlyMap<Part, Load>;
  /** Behind the last gear or transfer; undefined when a ratio before it is not known. */
  readonly shaft: Load | undefined;
  /** Why nothing is known further along. */
  readonly missing: readonly Missing[];
}

/**
 * Carries a full-load point through the line: torque × ratio × efficiency at every stage. The whole output of the
 * engine is carried, as if any power take-off were off: that is what the parts must stand.
 */
export function loadsAlong(
  line: ShaftLine,
  vessel: Vessel,
  point: FullLoadPoint,
  direction: Direction,
): LineLoads {
  const entering = new Map<Part, Load>();
  const needs = new Needs();
  let load: Load | undefined = { speed: point.speed, torque: point.torque, power: point.power };
  const primary = line.engine ?? line.motor;
  const other = secondInput(line);
  const second = other && load && enteringBeside(line, other, load, needs);
  for (const part of primary ? line.chain.slice(line.chain.indexOf(primary)) : line.chain) {
    if (other?.parts.has(part)) {
      if (second) entering.set(part, second);
      continue;
    }
    if (load && part !== other?.engine && line.joined?.some(one => one === part))
      load = withJoined(line, part, load, point.torque, needs);
    if (part.role === 'engine' || part.role === 'motor') continue;
    if (load) entering.set(part, load);
    if (part === line.gear) {
      const ratio = needs.take(gearRatio(line.gear, direction));
      load = load && ratio && through(load, ratio.value, gearEfficiency(line.gear, vessel));
      if (other) load = load && second && withSecondInput(load, second, other, vessel, direction, needs);
    }
    const transfer = line.transfers.find(one => one === part);
    if (transfer) {
      const ratio = needs.take(transferRatio(transfer));
      load = load && ratio && through(load, ratio.value, transferEfficiency(transfer, vessel));
    }
  }
  const shaft = load && {
    speed: renamed(load.speed, 'shaft speed', 'ω'),
    torque: renamed(load.torque, 'shaft torque', 'T'),
    power: renamed(load.power, 'power at the propeller shaft', 'P'),
  };
  return { point, direction, entering, shaft, missing: needs.missing };
}

function through(load: Load, ratio: Value<'ratio'>, efficiency: Value<'ratio'>): Load {
  const speed = shaftSpeedThroughGear({ engineSpeed: load.speed, ratio });
  const torque = outputTorque({ inputTorque: load.torque, ratio, efficiency });
  return { speed, torque, power: powerFromTorque({ torque, speed }) };
}

/** What the second engine gives by an input of its own: it turns as fast as the first, and gives what that gives. */
function enteringBeside(line: ShaftLine, other: SecondInput, load: Load, needs: Needs): Load | undefined {
  const torque = joinedTorque(line, other.engine, load.speed, load.torque, needs);
  return torque && { speed: load.speed, torque, power: powerFromTorque({ torque, speed: load.speed }) };
}

/** The output of the gear with what comes by the other input. */
function withSecondInput(
  first: Load,
  second: Load,
  other: SecondInput,
  vessel: Vessel,
  direction: Direction,
  needs: Needs,
): Load | undefined {
  const ratio = needs.take(gearRatio(other.gear, direction));
  if (!ratio) return undefined;
  const out = through(second, ratio.value, gearEfficiency(other.gear, vessel));
  if (!isSameSpeed(out.speed, first.speed)) return missOneSpeed(other.gear, needs);
  const torque = torqueTogether({
    first: renamed(first.torque, 'output torque from the first input', 'T1'),
    second: renamed(out.torque, 'output torque from the second input', 'T2'),
  });
  return { speed: first.speed, torque, power: powerFromTorque({ torque, speed: first.speed }) };
}
