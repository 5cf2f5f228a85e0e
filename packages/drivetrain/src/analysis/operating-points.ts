import { renamed, shaftSpeedThroughGear, tipSpeed, type Value } from '@tailshaft/mechanics';
import { nameOf, type Part } from '../model/part.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import {
  type FullLoadPoint,
  fullLoadPoints,
  governedSpeed,
  idleSpeed,
  peakTorquePoint,
  ratedPoint,
} from './engine-points.js';
import { asternClutchOf } from './gear-data.js';
import { loadsAlong } from './loads.js';
import { type Direction, gearRatio, transferRatio } from './speeds.js';

/** What turns how fast at one speed of the engine, with what it carries where that is known. */
export interface OperatingPoint {
  /** `idle ahead`, `full load 1400 rpm`, `rated power`, `peak torque`, `governed maximum`, `idle astern`, ... */
  readonly name: string;
  readonly direction: Direction;
  readonly engineSpeed: Value<'rotational speed'>;
  readonly stations: readonly Station[];
  /** Torque and power of the propeller shaft at full load. */
  readonly shaftTorque: Value<'torque'> | undefined;
  readonly shaftPower: Value<'power'> | undefined;
  readonly tipSpeed: Value<'speed'> | undefined;
}

/** Speed where the power leaves a part; the last one is that of the propeller shaft. */
export interface Station {
  readonly part: Part;
  readonly name: string;
  readonly speed: Value<'rotational speed'>;
}

/** Every operating point that the declared facts give, ahead by rising speed, then astern. */
export function operatingPoints(line: ShaftLine, vessel: Vessel): OperatingPoint[] {
  const idle = idleSpeed(line).value;
  const governed = governedSpeed(line).value;
  const rated = ratedPoint(line, vessel).value;
  const peak = peakTorquePoint(line, vessel).value;
  const curve = fullLoadPoints(line).filter(one => one.speed.si !== peak?.speed.si);
  const hasAstern =
    line.motor !== undefined || (line.gear !== undefined && asternClutchOf(line.gear) !== undefined);
  const points: OperatingPoint[] = [];
  const add = (
    name: string,
    direction: Direction,
    at: FullLoadPoint | Value<'rotational speed'> | undefined,
  ) => {
    if (at) points.push(operatingPoint(line, vessel, name, direction, at));
  };
  add('idle ahead', 'ahead', idle);
  for (const point of curve) add('full load', 'ahead', point);
  add('peak torque', 'ahead', peak);
  add('rated power', 'ahead', rated);
  add('governed maximum', 'ahead', governed);
  if (hasAstern) {
    add('idle astern', 'astern', idle);
    add('rated power astern', 'astern', rated);
  }
  return points;
}

function operatingPoint(
  line: ShaftLine,
  vessel: Vessel,
  name: string,
  direction: Direction,
  at: FullLoadPoint | Value<'rotational speed'>,
): OperatingPoint {
  const load = 'torque' in at ? loadsAlong(line, vessel, at, direction).shaft : undefined;
  const engineSpeed = 'torque' in at ? at.speed : at;
  const stations = stationsAt(line, engineSpeed, direction);
  const last = stations.at(-1);
  const through = last && last.part === line.propeller ? last.speed : undefined;
  const diameter = line.propeller?.diameter?.value;
  return {
    name,
    direction,
    engineSpeed,
    stations,
    shaftTorque: load?.torque,
    shaftPower: load?.power,
    tipSpeed:
      through && diameter && tipSpeed({ shaftSpeed: through, diameter: renamed(diameter, 'diameter', 'D') }),
  };
}

function stationsAt(
  line: ShaftLine,
  engineSpeed: Value<'rotational speed'>,
  direction: Direction,
): Station[] {
  const stations: Station[] = [];
  let speed: Value<'rotational speed'> | undefined = engineSpeed;
  for (const part of line.chain) {
    const transfer = line.transfers.find(one => one === part);
    const ratio: Value<'ratio'> | undefined =
      part === line.gear
        ? gearRatio(line.gear, direction).value?.value
        : transfer && transferRatio(transfer).value?.value;
    if (part === line.gear || transfer)
      speed = ratio && speed && shaftSpeedThroughGear({ engineSpeed: speed, ratio });
    if (!speed) break;
    stations.push({ part, name: nameOf(part), speed });
  }
  return stations;
}
