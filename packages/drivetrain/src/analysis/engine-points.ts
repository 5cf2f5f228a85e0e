import { greatestOf, powerFromTorque, renamed, torqueFromPower, type Value } from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Engine, EngineRating, Motor } from '../model/engine.js';
import { home, nameOf } from '../model/part.js';
import type { Mode, ShaftLine, Vessel } from '../model/vessel.js';
import { type Derived, derive } from './derived.js';
import { crankshaftPower } from './efficiencies.js';

/** What the engine or motor can put out at one speed, at its own output flange. */
export interface FullLoadPoint {
  /** `rated power`, `peak torque`, `full load`. */
  readonly name: 'rated power' | 'peak torque' | 'full load';
  readonly speed: Value<'rotational speed'>;
  readonly torque: Value<'torque'>;
  readonly power: Value<'power'>;
}

/** The rating that the line uses: the one named after `at`, or the only one there is. */
export function ratingOf(engine: Engine): EngineRating | undefined {
  if (engine.rating) return engine.rating;
  return engine.ratedAt === undefined && engine.ratings.length === 1 ? engine.ratings[0] : undefined;
}

/** Rated power and speed at the crankshaft, whatever point the rating was measured at. */
export function ratedPoint(line: ShaftLine, vessel: Vessel): Derived<FullLoadPoint> {
  return derive(needs => {
    if (line.engine) return engineRatedPoint(line.engine, line, vessel, needs);
    return line.motor && motorRatedPoint(line.motor, needs, line.mode);
  });
}

function engineRatedPoint(
  engine: Engine,
  line: ShaftLine,
  vessel: Vessel,
  needs: Needs,
): FullLoadPoint | undefined {
  const rating = ratingOf(engine);
  if (!rating) {
    return engine.ratedAt?.value === undefined
      ? needs.miss(
          { what: `the duty at which ${nameOf(engine)} is used`, host: engine.origin, property: 'at' },
          engine.ratedAt?.origin,
        )
      : needs.miss({
          what: `a rating ${engine.ratedAt.value} of ${nameOf(engine)}`,
          host: home(engine),
          property: `rating ${engine.ratedAt.value}`,
        });
  }
  const declared = needs.fact(rating.power, {
    what: `${rating.duty} power of ${nameOf(engine)}`,
    host: rating.origin,
    property: 'power',
  });
  if (!declared) return undefined;
  const speed = renamed(declared.x, 'rated speed', 'ω');
  const power = crankshaftPower(renamed(declared.y, 'rated power', 'P'), rating, line, vessel);
  return {
    name: 'rated power',
    speed,
    power,
    torque: renamed(torqueFromPower({ power, speed }), 'engine torque at rated power', 'T'),
  };
}

function motorRatedPoint(motor: Motor, needs: Needs, mode?: Mode): FullLoadPoint | undefined {
  const declared = needs.fact(motor.power, {
    what: `continuous power of ${nameOf(motor)}`,
    host: home(motor),
    property: 'power',
  });
  if (!declared) return undefined;
  const speed = renamed(declared.x, 'rated speed', 'ω');
  const held = mode?.motorPower?.value;
  const power = renamed(held && held.si < declared.y.si ? held : declared.y, 'rated power', 'P');
  const byPower = renamed(torqueFromPower({ power, speed }), 'motor torque at rated power', 'T');
  const limit = motor.torque?.value;
  if (!limit || limit.si >= byPower.si) return { name: 'rated power', speed, power, torque: byPower };
  // A motor gives no more than its torque, at whatever speed its power is stated.
  const torque = renamed(limit, 'torque of the motor', 'T');
  return {
    name: 'rated power',
    speed,
    torque,
    power: renamed(powerFromTorque({ torque, speed }), 'power at the torque of the motor', 'P'),
  };
}

/** The point of greatest torque: as declared, or the greatest of the full-load curve; never below rated torque. */
export function peakTorquePoint(line: ShaftLine, vessel: Vessel): Derived<FullLoadPoint> {
  return derive(needs => {
    const { engine, motor } = line;
    if (!engine) return motor && motorPeakTorque(motor, needs);
    const known = fullLoadPoints(line);
    if (known.length === 0) {
      return needs.miss(
        { what: `peak torque of ${nameOf(engine)}`, host: home(engine), property: 'peak torque' },
        engine.peakTorque?.origin,
      );
    }
    const rated = ratedPoint(line, vessel).value;
    const points = rated ? [...known, rated] : known;
    const greatest = points.reduce((one, other) => (other.torque.si > one.torque.si ? other : one));
    const torque = greatestOf(points.map(one => one.torque))!;
    return { ...greatest, name: 'peak torque', torque: renamed(torque, 'peak torque of the engine', 'T') };
  });
}

function motorPeakTorque(motor: Motor, needs: Needs): FullLoadPoint | undefined {
  const rated = motorRatedPoint(motor, needs);
  const torque = motor.torque?.value;
  const speed = motor.baseSpeed?.value ?? rated?.speed;
  if (!torque || !speed) return rated && { ...rated, name: 'peak torque' };
  return {
    name: 'peak torque',
    speed,
    torque: renamed(torque, 'torque of the motor', 'T'),
    power: powerFromTorque({ torque, speed }),
  };
}

/** Every declared point of the full-load curve, slowest first. */
export function fullLoadPoints(line: ShaftLine): FullLoadPoint[] {
  const engine = line.engine;
  if (!engine) return [];
  const points: FullLoadPoint[] = [];
  for (const fact of [engine.peakTorque, ...engine.torqueCurve]) {
    if (!fact?.value) continue;
    const speed = renamed(fact.value.x, 'engine speed', 'ω');
    const torque = renamed(fact.value.y, 'full-load torque', 'T');
    points.push({ name: 'full load', speed, torque, power: powerFromTorque({ torque, speed }) });
  }
  for (const fact of engine.powerCurve) {
    if (!fact.value) continue;
    const speed = renamed(fact.value.x, 'engine speed', 'ω');
    const power = renamed(fact.value.y, 'full-load power', 'P');
    points.push({ name: 'full load', speed, power, torque: torqueFromPower({ power, speed }) });
  }
  return points.sort((one, other) => one.speed.si - other.speed.si);
}

/** Governed minimum speed of the engine. */
export function idleSpeed(line: ShaftLine): Derived<Value<'rotational speed'>> {
  return derive(needs => {
    const { engine } = line;
    if (!engine) return undefined;
    const idle = needs.fact(engine.lowIdle, {
      what: `low idle of ${nameOf(engine)}`,
      host: home(engine),
      property: 'low idle',
    });
    return idle && renamed(idle, 'low idle', 'ω');
  });
}

/** The fastest that the governor, or the motor's own limit, lets the input of the gear turn. */
export function governedSpeed(line: ShaftLine): Derived<Value<'rotational speed'>> {
  return derive(needs => {
    const { engine, motor } = line;
    if (engine) {
      const high = needs.fact(engine.highIdle, {
        what: `high idle of ${nameOf(engine)}`,
        host: home(engine),
        property: 'high idle',
      });
      return high && renamed(high, 'governed speed', 'ω');
    }
    if (!motor) return undefined;
    const top = needs.fact(motor.topSpeed, {
      what: `top speed of ${nameOf(motor)}`,
      host: home(motor),
      property: 'top speed',
    });
    return top && renamed(top, 'top speed', 'ω');
  });
}
